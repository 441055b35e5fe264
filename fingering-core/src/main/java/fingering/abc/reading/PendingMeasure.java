package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** A measure while it is being read. */
final class PendingMeasure {
  final List<Supplier<MeasureItem>> items = new ArrayList<>();
  AbcMeter meter;
  int line;
  BigFraction length = BigFraction.ZERO;
  Optional<String> ending = Optional.empty();
  boolean endsEnding;
  boolean begins;
  Optional<BarLine> bar = Optional.empty();
  private final List<PendingNote> notes = new ArrayList<>();

  PendingMeasure(AbcMeter meter) {
    this.meter = meter;
  }

  /** Adds a note, chord or rest. */
  void add(PendingNote pending, AbcMeter current) {
    if (notes.isEmpty()) {
      line = pending.start.line().number();
      meter = current;
    }
    notes.add(pending);
    items.add(pending::finished);
  }

  /** Returns whether it has no note, chord or rest. */
  boolean empty() {
    return notes.isEmpty();
  }

  /** Returns the position of its first note, chord or rest, of which it has at least one. */
  LineCursor start() {
    return notes.get(0).start;
  }

  /** Returns the last note, chord or rest that is not a grace note. */
  Optional<PendingNote> lastTimed() {
    for (int i = notes.size() - 1; i >= 0; i--) {
      if (!notes.get(i).grace) {
        return Optional.of(notes.get(i));
      }
    }
    return Optional.empty();
  }

  /** Ends the measure and adds up its length. */
  void end(Repairs repairs) {
    for (PendingNote sound : notes) {
      sound.round(repairs);
      length = length.add(sound.time());
    }
  }

  /** Returns its items. */
  ImmutableList<MeasureItem> finished() {
    return items.stream().map(Supplier::get).collect(ImmutableList.toImmutableList());
  }

  /** Returns whether it ends with a plain single bar line. */
  boolean endsWithPlainBar() {
    return bar.map(BarLine::plain).orElse(false);
  }
}
