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

/** An item of a measure. */
public sealed interface MeasureItem {

  /**
   * A note, a chord or a rest.
   *
   * @param heads its notes; empty for a rest
   * @param values the note values that make its length when tied together; empty for a rest of a
   *     whole measure
   * @param length length in quarter notes, 0 for a grace note
   * @param tuplet its tuplet, if it is in one
   * @param grace whether it is a grace note
   * @param slashed whether it is a grace note with a slash
   * @param signs decorations of the whole chord
   * @param above alteration of the upper note of its trill, if it must be printed
   * @param slurStops numbers of the slurs that end at it
   * @param slurStarts numbers of the slurs that begin at it
   * @param joined whether it is typed without a blank after the previous note
   */
  record NoteOrRest(
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

    /** Returns whether it is a rest. */
    public boolean rest() {
      return heads.isEmpty();
    }

    /** Returns the index of its highest note. */
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
   * A note of a chord, or a single note.
   *
   * @param pitch its written pitch in the score
   * @param accidental whether its accidental is printed
   * @param tieStop whether a tie ends at it
   * @param tieStart whether a tie begins at it
   * @param signs decorations for the left hand
   */
  record Head(
      Pitch pitch,
      boolean accidental,
      boolean tieStop,
      boolean tieStart,
      ImmutableList<Decoration> signs) {}

  /**
   * The position of a note in a tuplet.
   *
   * @param actual number of notes in the tuplet ratio: 3 in 3:2
   * @param normal number of normal notes that take the same time: 2 in 3:2
   * @param first whether the tuplet begins with it
   * @param last whether the tuplet ends with it
   */
  record Tuplet(int actual, int normal, boolean first, boolean last) {

    /** Returns this position as the last of the tuplet. */
    Tuplet asLast() {
      return new Tuplet(actual, normal, first, true);
    }
  }

  /** A change of key signature, meter or clef. */
  record Change(Optional<AbcKey> key, Optional<AbcMeter> meter, Optional<AbcClef> clef)
      implements MeasureItem {}

  /** Words above or below the staff. */
  record Words(String text, boolean below) implements MeasureItem {}

  /** A tempo mark. */
  record TempoMark(AbcTempo tempo) implements MeasureItem {}

  /** A decoration of the staff. */
  record StaffSign(Decoration sign) implements MeasureItem {}

  /** The label of a section (field P), which becomes a rehearsal mark. */
  record Label(String text) implements MeasureItem {}
}
