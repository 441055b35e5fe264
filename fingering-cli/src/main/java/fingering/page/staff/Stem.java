package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Tremolo;

/** Notes that share a stem, or a rest. */
final class Stem {
  private static final double SMALL = 0.65;

  /** The notes, lowest first; a rest is alone. */
  final ImmutableList<PrintedNote> notes;

  /** Steps of each note above the lowest line of the staff. */
  final ImmutableList<Integer> steps;

  /** Whether the stem goes up. */
  boolean up;

  /** The y at which the stem ends, with the top line of the staff at 0. */
  double tip;

  Stem(ImmutableList<PrintedNote> notes, ImmutableList<Integer> steps) {
    this.notes = notes;
    this.steps = steps;
  }

  PrintedNote lead() {
    return notes.get(0);
  }

  boolean rest() {
    return lead().rest();
  }

  boolean grace() {
    return lead().grace();
  }

  /** Whether it is a cue, which is printed small. */
  boolean cue() {
    return lead().cue();
  }

  /** The scale of noteheads and flags: 1 for normal notes. */
  double scale() {
    return grace() || cue() ? SMALL : 1;
  }

  /** Whether there is a stem at all. */
  boolean stemmed() {
    return !rest() && lead().value().part() >= 2;
  }

  /** The tremolo of any of its notes. */
  Tremolo tremolo() {
    return notes.stream()
        .map(PrintedNote::tremolo)
        .filter(tremolo -> tremolo.strokes() > 0)
        .findFirst()
        .orElse(Tremolo.NONE);
  }

  int lowest() {
    return steps.get(0);
  }

  int highest() {
    return steps.get(steps.size() - 1);
  }

  /** The y of a step, with the top line of the staff at 0. */
  static double y(int step) {
    return (8 - step) * Glyphs.SPACE / 2;
  }

  /** How far a note is moved to the right in its column, because it is a second from another. */
  double headOffset(int index) {
    int run = 0;
    if (up) {
      for (int i = index; i > 0 && steps.get(i) - steps.get(i - 1) <= 1; i--) {
        run++;
      }
      return run % 2 == 1 ? 2 * Glyphs.HEAD - 0.6 : 0;
    }
    for (int i = index; i + 1 < steps.size() && steps.get(i + 1) - steps.get(i) <= 1; i++) {
      run++;
    }
    return run % 2 == 1 ? -2 * Glyphs.HEAD + 0.6 : 0;
  }
}
