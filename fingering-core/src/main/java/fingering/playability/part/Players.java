package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.PrintedText;
import fingering.playability.Forces;
import java.util.BitSet;
import java.util.List;

/**
 * Who plays each moment of a part.
 *
 * @param solo the moments that one player has
 * @param divided those at which the section is told to divide
 * @param doubleStops those at which each is told to play all notes
 * @param voices those whose notes stand in several voices
 */
public record Players(BitSet solo, BitSet divided, BitSet doubleStops, BitSet voices) {

  /** Reads who plays. */
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
      ImmutableSet<ScoreWords.Kind> told = words.read(text.text());
      if (told.isEmpty()) {
        continue;
      }
      int at = TextPlaces.momentAt(moments, text);
      solo.set(from, at, alone);
      divided.set(from, at, divides);
      doubleStops.set(from, at, doubles);
      from = at;
      if (forces == Forces.SECTION) {
        alone = (alone || told.contains(ScoreWords.Kind.SOLO)) && !tutti(told);
      }
      if (told.contains(ScoreWords.Kind.DIVIDED)) {
        divides = true;
        doubles = false;
      } else if (told.contains(ScoreWords.Kind.DOUBLE_STOP)) {
        divides = false;
        doubles = true;
      } else if (told.contains(ScoreWords.Kind.TOGETHER) || tutti(told)) {
        divides = false;
        doubles = false;
      }
    }
    solo.set(from, moments.size(), alone);
    divided.set(from, moments.size(), divides);
    doubleStops.set(from, moments.size(), doubles);
    return new Players(solo, divided, doubleStops, voices);
  }

  private static boolean tutti(ImmutableSet<ScoreWords.Kind> told) {
    return told.contains(ScoreWords.Kind.TUTTI);
  }

  /** Whether the notes of a moment may be shared out among players. */
  public boolean canDivide(int m) {
    return !solo.get(m) && !doubleStops.get(m);
  }

  /** Whether the part itself shows that they are. */
  public boolean divides(int m) {
    return canDivide(m) && (divided.get(m) || voices.get(m));
  }

  /** Whether the part says in words how to take several notes. */
  boolean told(int m) {
    return solo.get(m) || divided.get(m) || doubleStops.get(m);
  }

  /** The moments at which several notes sound in several voices. */
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
