package fingering.musicxml.element;

import fingering.music.Measure;
import fingering.music.Place;
import fingering.musicxml.UnreadableScoreException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Keeps count of the time while a part is walked through: what a division is worth, how far the
 * measure has come, and where the next note begins. All times are in quarter notes and exact.
 */
public final class PartClock {
  private static final BigFraction ZERO = BigFraction.ZERO;

  /** No note and no rest is longer; a whole opera is not. In quarter notes. */
  private static final int MOST_QUARTERS = 100_000;

  /** The common division of real music has fewer than 64 bits. */
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
   * Stands before the first measure, where a division is a quarter note and the meter 4/4.
   *
   * @param name the part's name, for messages
   */
  public PartClock(String name) {
    this.name = name;
  }

  /** Goes to the start of the next measure, which has that number in print. */
  public void beginMeasure(String number) {
    this.number = number;
    here = ZERO;
    reached = ZERO;
    chordOnset = ZERO;
    measureMeter = meter;
  }

  /**
   * Ends the measure. It is as long as what was met in it goes, or a full measure where that is
   * nothing.
   */
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

  /** Index of the measure, from 0. */
  public int measure() {
    return measure;
  }

  /** Number of the measure in print. */
  public String number() {
    return number;
  }

  /** Quarter notes from the start of the part to the start of the measure. */
  public BigFraction start() {
    return start;
  }

  /** Quarter notes from the start of the measure. */
  public BigFraction here() {
    return here;
  }

  /** Whether nothing of the measure has passed. */
  public boolean atMeasureStart() {
    return here.signum() == 0;
  }

  /** Says how many divisions a quarter note has from here on. */
  public void divide(BigDecimal quarter) {
    if (quarter.signum() <= 0) {
      throw unreadable("does not divide by a number above 0", "change of divisions");
    }
    refuseWild(quarter, "change of divisions");
    divisions = fraction(quarter);
    durations.clear();
  }

  /** Sets the meter from here on; that of this measure too, where nothing of it has passed. */
  public void meter(Meter meter) {
    this.meter = meter;
    if (atMeasureStart()) {
      measureMeter = meter;
    }
  }

  /**
   * So many divisions in quarter notes.
   *
   * @param duration divisions; null where the score tells none, which cannot be read
   * @param what what lasts so long, for messages
   */
  public BigFraction length(@Nullable BigDecimal duration, String what) {
    if (duration == null || duration.signum() < 0) {
      throw unreadable("has no length that can be read", what);
    }
    refuseWild(duration, what);
    BigFraction length = durations.computeIfAbsent(duration, d -> fraction(d).divide(divisions));
    if (Quarters.value(length) > MOST_QUARTERS) {
      throw unreadable("is longer than %d quarter notes".formatted(MOST_QUARTERS), what);
    }
    return length;
  }

  /** The place so many divisions away, before here where below 0; no earlier than the measure. */
  public BigFraction away(BigDecimal duration) {
    refuseWild(duration, "direction");
    BigFraction at = here.add(fraction(duration).divide(divisions));
    return at.signum() < 0 ? ZERO : at;
  }

  /** Goes back so many divisions, no further than to the start of the measure. */
  public void backup(@Nullable BigDecimal duration) {
    move(length(duration, "backup").negate(), "backup");
  }

  /** Goes on so many divisions. */
  public void forward(@Nullable BigDecimal duration) {
    move(length(duration, "forward"), "forward");
  }

  /**
   * Where the next note begins: here, or with the note before it where it joins that one's chord.
   */
  public BigFraction onset(boolean chord) {
    return chord ? chordOnset : here;
  }

  /** Goes past a note or a rest of that length; a further note of a chord takes no time. */
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

  // Lengths without a common division make ever longer fractions, and each sum takes longer.
  private BigFraction divisible(BigFraction time, String what) {
    if (time.getDenominator().bitLength() > MOST_BITS) {
      throw unreadable("has a length that fits no common division with those before", what);
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

  /** Refuses a number such as 1e999999999, which would fill the memory once reckoned with. */
  public void refuseWild(BigDecimal value, String what) {
    if (TempoMark.isWild(value)) {
      throw unreadable("has a number out of all range", what);
    }
  }

  /** Says that what stands here cannot be read. */
  public UnreadableScoreException unreadable(String fault, String what) {
    BigFraction beat = here.divide(measureMeter.beat()).add(BigFraction.ONE);
    Place place = new Place(measure, number, here, beat);
    return new UnreadableScoreException(
        "A %s in %s, %s, %s: mend that measure in your notation program and export the score again."
            .formatted(what, name, place, fault));
  }
}
