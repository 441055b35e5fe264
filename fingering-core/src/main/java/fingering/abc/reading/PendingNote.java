package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.MeasureItem.Head;
import fingering.abc.reading.MeasureItem.NoteOrRest;
import fingering.abc.reading.MeasureItem.Tuplet;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.NoteValue;
import fingering.abc.syntax.Repairs;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/** A note, chord or rest while its measure is being read. The text after it may still change it. */
final class PendingNote {

  /** A single note of it. */
  static final class PendingHead {
    final Pitch pitch;
    final boolean accidental;
    boolean tieStop;
    boolean tieStart;
    final List<Decoration> signs = new ArrayList<>();

    PendingHead(Pitch pitch, boolean accidental) {
      this.pitch = pitch;
      this.accidental = accidental;
    }
  }

  /** Its position in the text. */
  final LineCursor start;

  final List<PendingHead> heads = new ArrayList<>();
  final List<Decoration> signs = new ArrayList<>();
  final List<Integer> slurStops = new ArrayList<>();
  final List<Integer> slurStarts = new ArrayList<>();

  /** Its printed length in quarter notes, without the effect of a tuplet. */
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

  /** Returns whether it is a rest. */
  boolean rest() {
    return heads.isEmpty();
  }

  /** Returns its highest pitch. */
  Pitch highest() {
    return heads.stream()
        .map(head -> head.pitch)
        .max(Comparator.comparingInt(Pitch::midi))
        .orElseThrow();
  }

  /** Returns its duration in quarter notes. */
  BigFraction time() {
    if (grace) {
      return BigFraction.ZERO;
    }
    return tuplet
        .map(part -> length.multiply(BigFraction.of(part.normal(), part.actual())))
        .orElse(length);
  }

  /** Rounds its length to a note value, if no note values make it. */
  void round(Repairs repairs) {
    if (!wholeMeasure && NoteValue.of(length).isEmpty()) {
      repairs.add(
          start,
          "no note value has the length %s of a whole note; the nearest was read"
              .formatted(NoteValue.fraction(length)));
      length = NoteValue.nearest(length).quarters();
    }
  }

  /** Returns the finished item. */
  NoteOrRest finished() {
    ImmutableList<NoteValue> values = wholeMeasure ? ImmutableList.of() : values();
    return new NoteOrRest(
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
    // A grace note takes no time, so nothing can be tied to it.
    return grace ? values.subList(0, 1) : values;
  }
}
