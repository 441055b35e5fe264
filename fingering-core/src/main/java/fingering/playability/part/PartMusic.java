package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.print.PrintedText;
import fingering.musicxml.reading.PartInfo;
import fingering.playability.Forces;
import fingering.tables.Instrument;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Function;

/**
 * A part as the rules see it: read, divided among its players, and planned once for all rules.
 *
 * <p>Indices of moments in this class, {@link Players} and {@link MovementStarts} count the moments
 * of the whole part. Those of a {@link PlayerLine} count only the moments of that line.
 *
 * @param info the part
 * @param passage all its music
 * @param forces who plays from it
 * @param texts the printed words and dynamics, in order of time
 * @param scoreWords the meanings of words
 * @param prints the printed form of its notes
 * @param players who plays each moment
 * @param movementStarts the indices of the moments that begin a movement
 * @param playable each moment without its notes out of range; empty if no note is left
 * @param grips every grip of each playable moment; an empty list if no note is left
 * @param lines the line of each player, the upper line first; empty if nothing can be played
 * @param gripFinder finds every grip of any other moment on this instrument
 */
public record PartMusic(
    PartInfo info,
    Passage passage,
    Forces forces,
    ImmutableList<PrintedText> texts,
    ScoreWords scoreWords,
    PrintedNoteIndex prints,
    Players players,
    BitSet movementStarts,
    ImmutableList<Optional<Moment>> playable,
    ImmutableList<ImmutableList<Grip>> grips,
    ImmutableList<PlayerLine> lines,
    Function<Moment, ImmutableList<Grip>> gripFinder) {

  /** Returns the instrument. */
  public Instrument instrument() {
    return passage.instrument();
  }

  /** Returns all moments of the part, with notes out of range. */
  public ImmutableList<Moment> moments() {
    return passage.moments();
  }

  /** Returns the moment of an index. */
  public Moment moment(int m) {
    return passage.moments().get(m);
  }

  /** Returns whether a section plays from the part. */
  public boolean section() {
    return forces == Forces.SECTION;
  }

  /** Returns the meanings of a text; empty if it is a dynamic or a sign. */
  public ImmutableSet<ScoreWords.Kind> meanings(PrintedText text) {
    return text.kind() == PrintedText.Kind.WORDS ? scoreWords.read(text.text()) : ImmutableSet.of();
  }
}
