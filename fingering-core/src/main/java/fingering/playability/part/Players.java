package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.print.PrintedText;
import fingering.playability.Forces;
import java.util.BitSet;
import java.util.List;

/**
 * Who plays each moment of a part, as sets of indices of moments.
 *
 * @param solo the moments for one player
 * @param divided the moments marked for a divided section
 * @param doubleStops the moments at which each player is to play all notes
 * @param voices the moments with notes in several voices
 */
public record Players(BitSet solo, BitSet divided, BitSet doubleStops, BitSet voices) {

  /** Reads who plays from the words in the part. */
  public static Players of(
      Forces forces,
      List<Moment> moments,
      List<PrintedText> texts,
      ScoreWords words,
      BitSet voices) {
    BitSet solo = new BitSet();
    BitSet divided = new BitSet();
    BitSet doubleStops = new BitSet();
    boolean alone = forces == Forces.ONE_PLAYER;
    boolean divides = false;
    boolean doubles = false;
    int from = 0;
    for (PrintedText text : texts) {
      if (text.kind() != PrintedText.Kind.WORDS) {
        continue;
      }
      ImmutableSet<ScoreWords.Kind> meanings = words.read(text.text());
      if (meanings.isEmpty()) {
        continue;
      }
      int at = TextPlaces.momentAt(moments, text);
      solo.set(from, at, alone);
      divided.set(from, at, divides);
      doubleStops.set(from, at, doubles);
      from = at;
      if (forces == Forces.SECTION) {
        alone = (alone || meanings.contains(ScoreWords.Kind.SOLO)) && !tutti(meanings);
      }
      if (meanings.contains(ScoreWords.Kind.DIVIDED)) {
        divides = true;
        doubles = false;
      } else if (meanings.contains(ScoreWords.Kind.DOUBLE_STOP)) {
        divides = false;
        doubles = true;
      } else if (meanings.contains(ScoreWords.Kind.TOGETHER) || tutti(meanings)) {
        divides = false;
        doubles = false;
      }
    }
    solo.set(from, moments.size(), alone);
    divided.set(from, moments.size(), divides);
    doubleStops.set(from, moments.size(), doubles);
    return new Players(solo, divided, doubleStops, voices);
  }

  private static boolean tutti(ImmutableSet<ScoreWords.Kind> meanings) {
    return meanings.contains(ScoreWords.Kind.TUTTI);
  }

  /** Returns whether the notes of a moment may be divided among players. */
  public boolean canDivide(int m) {
    return !solo.get(m) && !doubleStops.get(m);
  }

  /** Returns whether the part says that they are, by words or by voices. */
  public boolean divides(int m) {
    return canDivide(m) && (divided.get(m) || voices.get(m));
  }

  /** Returns the indices of the moments with notes in several voices. */
  public static BitSet voices(ImmutableList<Moment> moments, PrintedNoteIndex prints) {
    BitSet several = new BitSet();
    for (int m = 0; m < moments.size(); m++) {
      Moment moment = moments.get(m);
      if (moment.starting().size() + moment.held().size() > 1) {
        String first = prints.voice(moment.starting().get(0));
        several.set(
            m,
            moment.starting().stream().anyMatch(note -> !prints.voice(note).equals(first))
                || moment.held().stream().anyMatch(note -> !prints.voice(note).equals(first)));
      }
    }
    return several;
  }
}
