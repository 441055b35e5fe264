package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.AbcTempo;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.NoteValue;
import fingering.tables.Pitch;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/** What stands in a measure. */
public sealed interface MeasureItem {

  /**
   * A note, a chord or a rest.
   *
   * @param heads its notes; none for a rest
   * @param values the values that, tied together, make it; empty for a rest of a whole measure
   * @param length its length in quarter notes, 0 for a grace note
   * @param tuplet its tuplet, if it stands in one
   * @param grace whether it is a grace note
   * @param slashed whether it is a grace note with a stroke
   * @param signs the signs that stand at it as a whole
   * @param above how the note above it is altered, where that has to be printed
   * @param slurStops numbers of the slurs that end at it
   * @param slurStarts numbers of the slurs that begin at it
   * @param joined whether it is typed together with the note before
   */
  record Sound(
      ImmutableList<Head> heads,
      ImmutableList<NoteValue> values,
      BigFraction length,
      Optional<Tuplet> tuplet,
      boolean grace,
      boolean slashed,
      ImmutableList<Decoration> signs,
      OptionalInt above,
      ImmutableList<Integer> slurStops,
      ImmutableList<Integer> slurStarts,
      boolean joined)
      implements MeasureItem {

    /** Whether it is a rest. */
    public boolean rest() {
      return heads.isEmpty();
    }

    /** Index of its highest note. */
    public int highest() {
      int highest = 0;
      for (int i = 1; i < heads.size(); i++) {
        if (heads.get(i).pitch.midi() > heads.get(highest).pitch.midi()) {
          highest = i;
        }
      }
      return highest;
    }
  }

  /**
   * A note of a chord, or a single one.
   *
   * @param pitch its pitch as it stands in the score
   * @param accidental whether its accidental is printed
   * @param tieStop whether a tie ends at it
   * @param tieStart whether a tie begins at it
   * @param signs what the left hand is told
   */
  record Head(
      Pitch pitch,
      boolean accidental,
      boolean tieStop,
      boolean tieStart,
      ImmutableList<Decoration> signs) {}

  /**
   * A note's part in a tuplet.
   *
   * @param actual so many notes ...
   * @param normal ... in the time of so many
   * @param first whether the tuplet begins with it
   * @param last whether the tuplet ends with it
   */
  record Tuplet(int actual, int normal, boolean first, boolean last) {}

  /** Another key signature, meter or clef. */
  record Change(Optional<AbcKey> key, Optional<AbcMeter> meter, Optional<AbcClef> clef)
      implements MeasureItem {}

  /** Words over the staff, or below it. */
  record Words(String text, boolean below) implements MeasureItem {}

  /** A tempo. */
  record TempoMark(AbcTempo tempo) implements MeasureItem {}

  /** A sign at the staff. */
  record StaffSign(Decoration sign) implements MeasureItem {}

  /** The name of a part of the tune, which serves as a rehearsal mark. */
  record Label(String text) implements MeasureItem {}
}
