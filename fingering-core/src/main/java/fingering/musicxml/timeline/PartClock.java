package fingering.musicxml.timeline;

import fingering.music.Measure;
import fingering.music.Place;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.element.Meter;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
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

  private final String name;
  private final Map<BigDecimal, BigFraction> durations = new HashMap<>();
  private final ExactSum sums = new ExactSum();
  private BigFraction divisions = BigFraction.ONE;
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
   * @param name the part's name, for messages
   */
  public PartClock(String name) {
    this.name = name;
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
    BigFraction length = reached.signum() > 0 ? reached : measureMeter.length();
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
    start = divisible(start.add(length), "measure");
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
   * Sets the number of divisions of a quarter note from here on.
   *
   * @throws UnreadableScoreException if it is not above 0, or out of range
   */
  public void divisions(BigDecimal perQuarter) {
    if (perQuarter.signum() <= 0) {
      throw unreadable("is not above 0", "number of divisions");
    }
    checkRange(perQuarter, "number of divisions");
    divisions = fraction(perQuarter);
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
   * Converts a duration to quarter notes.
   *
   * @param duration a number of divisions; null if the file has none
   * @param what the element with this duration, for messages
   * @throws UnreadableScoreException if the duration is missing, negative or too long
   */
  public BigFraction length(@Nullable BigDecimal duration, String what) {
    if (duration == null || duration.signum() < 0) {
      throw unreadable("has no readable duration", what);
    }
    checkRange(duration, what);
    BigFraction length = durations.computeIfAbsent(duration, d -> fraction(d).divide(divisions));
    if (Quarters.value(length) > MOST_QUARTERS) {
      throw unreadable("is longer than %d quarter notes".formatted(MOST_QUARTERS), what);
    }
    return length;
  }

  /**
   * Returns the position this many divisions from here, not before the start of the measure.
   *
   * @param offset divisions; negative for an earlier position
   */
  public BigFraction offset(BigDecimal offset) {
    checkRange(offset, "direction");
    BigFraction at = here.add(fraction(offset).divide(divisions));
    return at.signum() < 0 ? ZERO : at;
  }

  /** Moves back by a number of divisions, at most to the start of the measure. */
  public void backup(@Nullable BigDecimal duration) {
    move(length(duration, "backup").negate(), "backup");
  }

  /** Moves forward by a number of divisions. */
  public void forward(@Nullable BigDecimal duration) {
    move(length(duration, "forward"), "forward");
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
      move(length, "note");
    }
  }

  private void move(BigFraction by, String what) {
    BigFraction to = divisible(sums.of(here, by), what);
    here = to.signum() < 0 ? ZERO : to;
    reached = max(reached, here);
  }

  // Durations without a common division make fractions longer and sums slower with every note.
  private BigFraction divisible(BigFraction time, String what) {
    if (time.getDenominator().bitLength() > MOST_BITS) {
      throw unreadable(
          "has a duration without a common division with the durations before it", what);
    }
    return time;
  }

  private static BigFraction max(BigFraction a, BigFraction b) {
    return Quarters.compare(a, b) >= 0 ? a : b;
  }

  private static BigFraction fraction(BigDecimal value) {
    return value.scale() <= 0
        ? BigFraction.of(value.toBigIntegerExact())
        : BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
  }

  /** Refuses a number such as 1e999999999, which would fill the memory in calculations. */
  public void checkRange(BigDecimal value, String what) {
    if (TempoMark.isOutOfRange(value)) {
      throw unreadable("contains a number that is out of range", what);
    }
  }

  /**
   * Returns the exception for an unreadable element at the current position.
   *
   * @param fault the fault, as a predicate
   * @param what the element
   */
  public UnreadableScoreException unreadable(String fault, String what) {
    BigFraction beat = here.divide(measureMeter.beat()).add(BigFraction.ONE);
    Place place = new Place(measure, number, here, beat);
    return new UnreadableScoreException(
        "A %s in %s, %s, %s: fix that measure in your notation program and export the score again."
            .formatted(what, name, place, fault));
  }
}
