package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.NoteValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Collects the measures of a tune, and counts them in the end. */
final class MeasureCollector {
  private static final int TOLD = 4;

  /** The smallest part of a whole note in which the length of a measure is told. */
  private static final int SMALLEST = 64;

  private final List<PendingMeasure> closed = new ArrayList<>();
  private PendingMeasure current;
  private boolean inEnding;

  MeasureCollector(AbcMeter meter) {
    current = new PendingMeasure(meter);
  }

  /** The measure that is being read. */
  PendingMeasure current() {
    return current;
  }

  /** Index of the measure that is being read. */
  int index() {
    return closed.size();
  }

  /** Takes a bar line; several with nothing between them are one. */
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
    current.end();
    closed.add(current);
    current = new PendingMeasure(current.meter);
  }

  private void endEnding() {
    if (inEnding && !closed.isEmpty()) {
      closed.get(closed.size() - 1).endsEnding = true;
    }
    inEnding = false;
  }

  /** Begins an ending of a repeat. */
  void ending(String numbers, LineCursor start) {
    if (!current.empty()) {
      throw start.wrong(
          "an ending begins in the middle of a measure here: put a bar line before it.");
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
      // What stands behind the last bar line, such as Fine, belongs before it.
      closed.get(closed.size() - 1).items.addAll(current.items);
    }
    endEnding();
  }

  /** How many there are. */
  int size() {
    return closed.size();
  }

  /** The measures, numbered. */
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
              numbers.get(i) == 0 || (i > 0 && numbers.get(i).equals(numbers.get(i - 1))),
              one.finished(),
              one.begins,
              one.ending,
              one.bar,
              one.endsEnding ? ending : Optional.empty()));
    }
    return all.build();
  }

  /** A pickup is measure 0; what completes a measure over a repeat has the number of that. */
  private List<Integer> numbers() {
    List<Integer> numbers = new ArrayList<>();
    int number = hasPickup() ? -1 : 0;
    BigFraction filled = BigFraction.ZERO;
    for (int i = 0; i < closed.size(); i++) {
      PendingMeasure one = closed.get(i);
      BigFraction together = filled.add(one.length);
      if (i > 0 && number > 0 && mayContinue(i) && fits(together, one)) {
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
    return !closed.get(i - 1).endsPlain() && closed.get(i).ending.isEmpty();
  }

  /** Which measures do not fill their meter; an incomplete one beside a repeat or the end may. */
  Optional<String> remark() {
    List<Integer> numbers = numbers();
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < closed.size(); i++) {
      PendingMeasure one = closed.get(i);
      boolean inside = i > 0 && closed.get(i - 1).endsPlain() && one.endsPlain();
      boolean tooLong = one.meter.length().isPresent() && !fits(one.length, one);
      if (tooLong || (inside && one.ending.isEmpty() && isShort(one))) {
        wrong.add(
            "%d (%s in %s, line %d)".formatted(numbers.get(i), inBeats(one), one.meter, one.line));
      }
    }
    if (wrong.isEmpty()) {
      return Optional.empty();
    }
    String told = String.join(", ", wrong.subList(0, Math.min(TOLD, wrong.size())));
    int untold = wrong.size() - TOLD;
    return Optional.of(
        "%s not filled as the meter asks and %s read as typed: %s%s"
            .formatted(
                wrong.size() == 1 ? "one measure is" : wrong.size() + " measures are",
                wrong.size() == 1 ? "is" : "are",
                told,
                untold > 0 ? " and %d more".formatted(untold) : ""));
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
