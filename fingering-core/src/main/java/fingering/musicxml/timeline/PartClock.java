package fingering.musicxml.timeline;

import fingering.music.Measure;
import fingering.music.Place;
import fingering.musicxml.element.Meter;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Counts time while a part is read: the length of a division, the position in the measure, and the
 * onset of the next note. All times are exact, in quarter notes.
 */
public final class PartClock {
  private static final BigFraction ZERO = BigFraction.ZERO;

  /** The longest permitted note or rest, in quarter notes. A whole opera is shorter. */
  private static final int MOST_QUARTERS = 100_000;

  /**
   * The longest permitted denominator, in bits. Common divisions of real music have fewer than 64.
   */
  private static final int MOST_BITS = 512;

  private final Faults faults;
  private final Map<BigDecimal, BigFraction> durations = new HashMap<>();
  private final ExactSum sums = new ExactSum();
  private BigFraction divisions = BigFraction.ONE;
  private boolean divisionsKnown;
  private Meter meter = Meter.COMMON;

  private int measure;
  private String number = "";
  private BigFraction start = ZERO;
  private Meter measureMeter = Meter.COMMON;
  private BigFraction here = ZERO;
  private BigFraction reached = ZERO;
  private BigFraction chordOnset = ZERO;

  /**
   * Starts before the first measure, with one division to a quarter note and a 4/4 meter.
   *
   * @param faults receives what cannot be read
   */
  public PartClock(Faults faults) {
    this.faults = faults;
  }

  /**
   * Moves to the start of the next measure.
   *
   * @param number the printed number of the measure
   */
  public void beginMeasure(String number) {
    this.number = number;
    here = ZERO;
    reached = ZERO;
    chordOnset = ZERO;
    measureMeter = meter;
  }

  /** Ends the measure. Its length is that of its content, or a full measure if it is empty. */
  public Measure endMeasure(int fifths, String rehearsal) {
    boolean countable = reached.signum() > 0 && divisible(start.add(reached));
    if (reached.signum() > 0 && !countable) {
      fault(Fault.MEASURE_LENGTH);
    }
    BigFraction length = countable ? reached : measureMeter.length();
    Measure ended =
        new Measure(
            measure,
            number,
            start,
            length,
            fifths,
            measureMeter.beats(),
            measureMeter.beatType(),
            rehearsal);
    start = start.add(length);
    measure++;
    return ended;
  }

  /** Returns the index of the measure, from 0. */
  public int measure() {
    return measure;
  }

  /** Returns the printed number of the measure. */
  public String number() {
    return number;
  }

  /** Returns the quarter notes from the start of the part to the start of the measure. */
  public BigFraction start() {
    return start;
  }

  /** Returns the current position, in quarter notes from the start of the measure. */
  public BigFraction here() {
    return here;
  }

  /** Returns whether the position is the start of the measure. */
  public boolean atMeasureStart() {
    return here.signum() == 0;
  }

  /**
   * Sets the number of divisions of a quarter note from here on. A number that is not above 0, or
   * out of range, is derived from the next note that {@linkplain #suggests shows its length}.
   */
  public void divisions(BigDecimal perQuarter) {
    divisionsKnown = perQuarter.signum() > 0 && !TempoMark.isOutOfRange(perQuarter);
    if (divisionsKnown) {
      setDivisions(fraction(perQuarter));
    }
  }

  /**
   * Derives the number of divisions from a note, if the part does not state it.
   *
   * @param duration divisions of the note; null if the file has none
   * @param shown the length that the note shows
   */
  public void suggests(@Nullable BigDecimal duration, BigFraction shown) {
    Optional<BigDecimal> stated = readable(duration).filter(length -> length.signum() > 0);
    if (!divisionsKnown && stated.isPresent() && shown.signum() > 0) {
      divisionsKnown = true;
      fault(Fault.DIVISIONS);
      setDivisions(fraction(stated.get()).divide(shown));
    }
  }

  private void setDivisions(BigFraction perQuarter) {
    divisions = perQuarter;
    durations.clear();
  }

  /** Sets the meter from here on; at the start of a measure, for that measure too. */
  public void meter(Meter meter) {
    this.meter = meter;
    if (atMeasureStart()) {
      measureMeter = meter;
    }
  }

  /**
   * Converts a duration to quarter notes. Empty if it is missing, negative or too long.
   *
   * @param duration a number of divisions; null if the file has none
   */
  public Optional<BigFraction> length(@Nullable BigDecimal duration) {
    return readable(duration)
        .map(stated -> durations.computeIfAbsent(stated, d -> fraction(d).divide(divisions)))
        .filter(length -> Quarters.value(length) <= MOST_QUARTERS);
  }

  // A number such as 1e999999999 would fill the memory in calculations.
  private static Optional<BigDecimal> readable(@Nullable BigDecimal duration) {
    return Optional.ofNullable(duration)
        .filter(stated -> stated.signum() >= 0 && !TempoMark.isOutOfRange(stated));
  }

  /**
   * Returns the position this many divisions from here, not before the start of the measure.
   *
   * @param offset divisions; negative for an earlier position
   */
  public BigFraction offset(BigDecimal offset) {
    if (TempoMark.isOutOfRange(offset)) {
      fault(Fault.OFFSET);
      return here;
    }
    BigFraction at = here.add(fraction(offset).divide(divisions));
    return at.signum() < 0 ? ZERO : at;
  }

  /**
   * Moves back by a number of divisions, at most to the start of the measure; there too if the
   * number cannot be read, because most voices begin there.
   */
  public void backup(@Nullable BigDecimal duration) {
    Optional<BigFraction> length = length(duration);
    if (length.isEmpty()) {
      fault(Fault.BACKUP);
    }
    move(length.orElse(here).negate());
  }

  /** Moves forward by a number of divisions; not at all if the number cannot be read. */
  public void forward(@Nullable BigDecimal duration) {
    Optional<BigFraction> length = length(duration);
    if (length.isEmpty()) {
      fault(Fault.FORWARD);
    }
    move(length.orElse(ZERO));
  }

  /**
   * Returns the onset of the next note: the current position, or the onset of the previous note if
   * both are in one chord.
   */
  public BigFraction onset(boolean chord) {
    return chord ? chordOnset : here;
  }

  /** Moves past a note or a rest. Further notes of a chord take no time. */
  public void note(BigFraction length, boolean chord) {
    if (chord) {
      reached = max(reached, sums.of(chordOnset, length));
    } else {
      chordOnset = here;
      move(length);
    }
  }

  private void move(BigFraction by) {
    BigFraction to = sums.of(here, by);
    if (!divisible(to)) {
      fault(Fault.NO_COMMON_DIVISION);
      return;
    }
    here = to.signum() < 0 ? ZERO : to;
    reached = max(reached, here);
  }

  // Durations without a common division make fractions longer and sums slower with every note.
  private static boolean divisible(BigFraction time) {
    return time.getDenominator().bitLength() <= MOST_BITS;
  }

  private static BigFraction max(BigFraction a, BigFraction b) {
    return Quarters.compare(a, b) >= 0 ? a : b;
  }

  private static BigFraction fraction(BigDecimal value) {
    return value.scale() <= 0
        ? BigFraction.of(value.toBigIntegerExact())
        : BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
  }

  /** Adds a fault at the current position. */
  public void fault(Fault fault) {
    BigFraction beat = here.divide(measureMeter.beat()).add(BigFraction.ONE);
    faults.add(fault, new Place(measure, number, here, beat));
  }
}
