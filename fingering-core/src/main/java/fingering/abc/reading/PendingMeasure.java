package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.BarLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** A measure while it is read. */
final class PendingMeasure {
  final List<Supplier<MeasureItem>> items = new ArrayList<>();
  AbcMeter meter;
  int line;
  BigFraction length = BigFraction.ZERO;
  Optional<String> ending = Optional.empty();
  boolean endsEnding;
  boolean begins;
  Optional<BarLine> bar = Optional.empty();
  private final List<PendingNote> sounds = new ArrayList<>();

  PendingMeasure(AbcMeter meter) {
    this.meter = meter;
  }

  void add(PendingNote draft, AbcMeter inForce) {
    if (sounds.isEmpty()) {
      line = draft.start.line().number();
      meter = inForce;
    }
    sounds.add(draft);
    items.add(draft::finished);
  }

  /** Whether nothing in it takes time. */
  boolean empty() {
    return sounds.isEmpty();
  }

  /** The last note, chord or rest that takes time. */
  Optional<PendingNote> lastTimed() {
    for (int i = sounds.size() - 1; i >= 0; i--) {
      if (!sounds.get(i).grace) {
        return Optional.of(sounds.get(i));
      }
    }
    return Optional.empty();
  }

  /** Ends it; nothing changes its lengths any more. */
  void end() {
    for (PendingNote sound : sounds) {
      length = length.add(sound.time());
    }
  }

  ImmutableList<MeasureItem> finished() {
    return items.stream().map(Supplier::get).collect(ImmutableList.toImmutableList());
  }

  /** Whether the bar line that ends it is no more than one. */
  boolean endsPlain() {
    return bar.map(BarLine::plain).orElse(false);
  }
}
