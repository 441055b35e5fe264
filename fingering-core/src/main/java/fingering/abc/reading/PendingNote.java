package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.MeasureItem.Head;
import fingering.abc.reading.MeasureItem.Sound;
import fingering.abc.reading.MeasureItem.Tuplet;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.NoteValue;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/** A note, chord or rest while its measure is read: what stands behind it may still change it. */
final class PendingNote {

  /** A note of it. */
  static final class DraftHead {
    final Pitch pitch;
    final boolean accidental;
    boolean tieStop;
    boolean tieStart;
    final List<Decoration> signs = new ArrayList<>();

    DraftHead(Pitch pitch, boolean accidental) {
      this.pitch = pitch;
      this.accidental = accidental;
    }
  }

  /** Where it is typed. */
  final LineCursor start;

  final List<DraftHead> heads = new ArrayList<>();
  final List<Decoration> signs = new ArrayList<>();
  final List<Integer> slurStops = new ArrayList<>();
  final List<Integer> slurStarts = new ArrayList<>();

  /** Its printed length in quarter notes, apart from what a tuplet makes of it. */
  BigFraction length = BigFraction.ZERO;

  Optional<Tuplet> tuplet = Optional.empty();
  OptionalInt above = OptionalInt.empty();
  boolean grace;
  boolean slashed;
  boolean wholeMeasure;
  boolean joined;

  PendingNote(LineCursor start) {
    this.start = start;
  }

  boolean rest() {
    return heads.isEmpty();
  }

  /** Its highest note. */
  Pitch highest() {
    return heads.stream()
        .map(head -> head.pitch)
        .max(Comparator.comparingInt(Pitch::midi))
        .orElseThrow();
  }

  /** The time it takes, in quarter notes. */
  BigFraction time() {
    if (grace) {
      return BigFraction.ZERO;
    }
    return tuplet
        .map(part -> length.multiply(BigFraction.of(part.normal(), part.actual())))
        .orElse(length);
  }

  /** What stands in the measure in the end. */
  Sound finished() {
    ImmutableList<NoteValue> values = wholeMeasure ? ImmutableList.of() : values();
    return new Sound(
        heads.stream()
            .map(
                head ->
                    new Head(
                        head.pitch,
                        head.accidental,
                        head.tieStop,
                        head.tieStart,
                        ImmutableList.copyOf(head.signs)))
            .collect(ImmutableList.toImmutableList()),
        values,
        time(),
        tuplet,
        grace,
        slashed,
        ImmutableList.copyOf(signs),
        above,
        ImmutableList.copyOf(slurStops),
        ImmutableList.copyOf(slurStarts),
        joined);
  }

  private ImmutableList<NoteValue> values() {
    ImmutableList<NoteValue> values = NoteValue.of(length);
    if (values.isEmpty()) {
      throw start.wrong(
          "no note values make %s of a whole note: write another length, or a tuplet such as (3DEF."
              .formatted(NoteValue.fraction(length)));
    }
    // A grace note takes no time, so nothing can be tied to it.
    return grace ? values.subList(0, 1) : values;
  }
}
