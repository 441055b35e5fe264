package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PrintedText;
import fingering.musicxml.reading.PartInfo;
import fingering.playability.Forces;
import fingering.tables.Instrument;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Function;

/**
 * A part as the rules see it: read, shared out among the players and planned once for all rules.
 *
 * @param info the part
 * @param passage all its music
 * @param forces how many play from it
 * @param texts what is printed in letters, in order of time
 * @param words what words tell
 * @param prints how its notes are printed
 * @param players who plays each moment
 * @param movements the moments with which a movement begins
 * @param playable the moments of the passage without the notes out of range, in the same order;
 *     empty where no note is left
 * @param ways every grip of each of these; empty where no note is left
 * @param lines what each player has of it, the upper line first; empty where nothing can be played
 * @param grips every grip of any other moment for the instrument
 */
public record PartMusic(
    PartInfo info,
    Passage passage,
    Forces forces,
    ImmutableList<PrintedText> texts,
    ScoreWords words,
    PrintedNoteIndex prints,
    Players players,
    BitSet movements,
    ImmutableList<Optional<Moment>> playable,
    ImmutableList<ImmutableList<Grip>> ways,
    ImmutableList<PlayerLine> lines,
    Function<Moment, ImmutableList<Grip>> grips) {

  public Instrument instrument() {
    return passage.instrument();
  }

  public ImmutableList<Moment> moments() {
    return passage.moments();
  }

  public Moment moment(int m) {
    return passage.moments().get(m);
  }

  public boolean section() {
    return forces == Forces.SECTION;
  }

  /** What the words of a text tell; nothing where it is of another kind. */
  public ImmutableSet<ScoreWords.Kind> told(PrintedText text) {
    return text.kind() == PrintedText.Kind.WORDS ? words.read(text.text()) : ImmutableSet.of();
  }
}
