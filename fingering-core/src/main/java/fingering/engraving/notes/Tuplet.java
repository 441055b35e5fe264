package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedPart;

/**
 * Chords and rests under one number.
 *
 * @param printed what is printed: numbers, bracket, side
 * @param chords the chords in order of time
 * @param beamed whether one beam joins exactly these, so that no bracket is needed
 */
public record Tuplet(PrintedPart.Tuplet printed, ImmutableList<Chord> chords, boolean beamed) {
  /** Whether it has a bracket: as printed, or unless a beam joins its notes. */
  public boolean bracketed() {
    return printed.bracket().orElse(!beamed);
  }
}
