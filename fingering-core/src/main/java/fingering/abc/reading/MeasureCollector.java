package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.NoteValue;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.TuneFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Collects the measures of a tune and numbers them. */
final class MeasureCollector {
  private static final int LISTED = 4;

  /** The shortest note value in which the length of a measure is given, as part of a whole note. */
  private static final int SMALLEST = 64;

  /** Divides a measure where an ending begins. */
  private static final BarLine UNPRINTED = new BarLine("none", 0, false);

  private final int first;
  private final TuneSize size;
  private final Repairs repairs;
  private final List<PendingMeasure> closed = new ArrayList<>();
  private PendingMeasure current;
  private boolean inEnding;

  /**
   * Begins a voice.
   *
   * @param first the number of the first full measure
   */
  MeasureCollector(AbcMeter meter, int first, TuneSize size, Repairs repairs) {
    this.first = first;
    this.size = size;
    this.repairs = repairs;
    current = new PendingMeasure(meter);
  }

  /** Returns the current measure. */
  PendingMeasure current() {
    return current;
  }

  /** Returns the index of the current measure. */
  int index() {
    return closed.size();
  }

  /** Adds a bar line. Successive bar lines are combined. */
  void bar(BarLine sign) {
    if (!current.empty()) {
      current.bar = Optional.of(sign);
      close();
    } else if (!closed.isEmpty()) {
      PendingMeasure before = closed.get(closed.size() - 1);
      before.bar = Optional.of(before.bar.map(bar -> bar.and(sign)).orElse(sign));
    }
    current.begins |= sign.begins();
    if (sign.endsEnding()) {
      endEnding();
    }
  }

  private void close() {
    size.measure(current.start());
    current.end(repairs);
    closed.add(current);
    current = new PendingMeasure(current.meter);
  }

  private void endEnding() {
    if (inEnding && !closed.isEmpty()) {
      closed.get(closed.size() - 1).endsEnding = true;
    }
    inEnding = false;
  }

  /** Begins an ending of a repeat. If it begins within a measure, this divides the measure. */
  void ending(String numbers) {
    if (!current.empty()) {
      bar(UNPRINTED);
    }
    endEnding();
    current.ending = Optional.of(numbers);
    inEnding = true;
  }

  /** Ends the tune. */
  void finish() {
    if (!current.empty()) {
      close();
    } else if (!closed.isEmpty()) {
      // Items after the last bar line, such as Fine, belong before it.
      closed.get(closed.size() - 1).items.addAll(current.items);
    }
    endEnding();
  }

  /** Returns the measures with their numbers. */
  ImmutableList<TuneMeasure> finished() {
    ImmutableList.Builder<TuneMeasure> all = ImmutableList.builder();
    List<Integer> numbers = numbers();
    Optional<String> ending = Optional.empty();
    for (int i = 0; i < closed.size(); i++) {
      PendingMeasure one = closed.get(i);
      ending = one.ending.isPresent() ? one.ending : ending;
      all.add(
          new TuneMeasure(
              Integer.toString(numbers.get(i)),
              numbers.get(i) < first || (i > 0 && numbers.get(i).equals(numbers.get(i - 1))),
              place(i, numbers.get(i)),
              one.finished(),
              one.begins,
              one.ending,
              one.bar,
              one.endsEnding ? ending : Optional.empty()));
    }
    return all.build();
  }

  /**
   * A pickup is the measure before the first; the second part of a measure divided by a repeat
   * keeps its number.
   */
  private List<Integer> numbers() {
    List<Integer> numbers = new ArrayList<>();
    int number = hasPickup() ? first - 2 : first - 1;
    BigFraction filled = BigFraction.ZERO;
    for (int i = 0; i < closed.size(); i++) {
      PendingMeasure one = closed.get(i);
      BigFraction together = filled.add(one.length);
      if (i > 0 && number >= first && mayContinue(i) && fits(together, one)) {
        filled = together;
      } else {
        number++;
        filled = one.length;
      }
      numbers.add(number);
    }
    return numbers;
  }

  private boolean hasPickup() {
    return closed.size() > 1 && isShort(closed.get(0)) && !closed.get(0).ending.isPresent();
  }

  private static boolean isShort(PendingMeasure one) {
    return one.meter.length().map(full -> one.length.compareTo(full) < 0).orElse(false);
  }

  private static boolean fits(BigFraction together, PendingMeasure one) {
    return one.meter.length().map(full -> together.compareTo(full) <= 0).orElse(false);
  }

  private boolean mayContinue(int i) {
    PendingMeasure before = closed.get(i - 1);
    boolean divided = before.bar.map(bar -> bar.equals(UNPRINTED)).orElse(false);
    return divided || (!before.endsWithPlainBar() && closed.get(i).ending.isEmpty());
  }

  /**
   * Returns a remark on measures that do not fill their meter; next to a repeat or at the end they
   * need not.
   */
  Optional<String> remark() {
    List<Integer> numbers = numbers();
    List<String> misfits = new ArrayList<>();
    for (int i = 0; i < closed.size(); i++) {
      PendingMeasure one = closed.get(i);
      if (isMisfit(i)) {
        misfits.add(
            "%d (%s in %s, line %d)".formatted(numbers.get(i), inBeats(one), one.meter, one.line));
      }
    }
    if (misfits.isEmpty()) {
      return Optional.empty();
    }
    String listed = String.join(", ", misfits.subList(0, Math.min(LISTED, misfits.size())));
    int more = misfits.size() - LISTED;
    return Optional.of(
        "%s not filled as the meter requires and %s read as typed: %s%s"
            .formatted(
                misfits.size() == 1 ? "one measure is" : misfits.size() + " measures are",
                misfits.size() == 1 ? "is" : "are",
                listed,
                more > 0 ? " and %d more".formatted(more) : ""));
  }

  private boolean isMisfit(int i) {
    PendingMeasure one = closed.get(i);
    boolean inside = i > 0 && closed.get(i - 1).endsWithPlainBar() && one.endsWithPlainBar();
    boolean tooLong = one.meter.length().isPresent() && !fits(one.length, one);
    return tooLong || (inside && one.ending.isEmpty() && isShort(one));
  }

  /** Where a measure was typed, and what is wrong with its length. */
  private TuneFault place(int i, int number) {
    PendingMeasure one = closed.get(i);
    LineCursor start = one.start();
    return new TuneFault(
        start.line().number(),
        start.line().column(start.at()),
        isMisfit(i) ? "measure %d has %s".formatted(number, Beats.of(one.length, one.meter)) : "");
  }

  private static String inBeats(PendingMeasure one) {
    int below = one.meter.beatType();
    BigFraction count = one.length.multiply(below).divide(4);
    while (count.getDenominatorAsInt() > 1 && below < SMALLEST) {
      below *= 2;
      count = count.multiply(2);
    }
    return count.getDenominatorAsInt() == 1
        ? count.getNumeratorAsInt() + "/" + below
        : NoteValue.fraction(one.length);
  }
}
