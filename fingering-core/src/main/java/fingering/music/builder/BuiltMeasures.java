package fingering.music.builder;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Place;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;

/** The measures of a passage built in code, and the current place in them. */
final class BuiltMeasures {
  private static final int MAX_FIFTHS = 7;
  private static final int MAX_BEATS = 99;
  private static final int MAX_BEAT_TYPE = 64;

  private final List<Measure> full = new ArrayList<>();
  private int fifths;
  private int beats = 4;
  private int beatType = 4;

  /** The length of an incomplete first measure; 0 if there is none. */
  private BigFraction pickup = BigFraction.ZERO;

  /** The start of the current measure, and the place in it, in quarter notes. */
  private BigFraction start = BigFraction.ZERO;

  private BigFraction here = BigFraction.ZERO;

  /** Sets the key signature of the current and later measures. */
  void key(int newFifths) {
    requireBarLine("the key signature");
    if (Math.abs(newFifths) > MAX_FIFTHS) {
      throw refusal("a key signature of %d sharps or flats; give -7 to 7".formatted(newFifths));
    }
    fifths = newFifths;
  }

  /** Sets the meter of the current and later measures. */
  void meter(int newBeats, int newBeatType) {
    requireBarLine("the meter");
    if (newBeats < 1
        || newBeats > MAX_BEATS
        || newBeatType < 1
        || newBeatType > MAX_BEAT_TYPE
        || Integer.bitCount(newBeatType) != 1) {
      throw refusal(
          "%d/%d is not a meter; give 1 to 99 beats, and 1, 2, 4, 8, 16, 32 or 64 below"
              .formatted(newBeats, newBeatType));
    }
    if (inPickup()) {
      requirePickup(pickup, BigFraction.of(4L * newBeats, newBeatType));
    }
    beats = newBeats;
    beatType = newBeatType;
  }

  /** Makes the first measure an incomplete one. */
  void pickup(BigFraction length) {
    requirePickup(length, meterLength());
    pickup = length;
  }

  private void requirePickup(BigFraction length, BigFraction meter) {
    if (length.compareTo(meter) >= 0) {
      throw refusal(
          "a pickup of %s is not shorter than a measure; set the meter before the pickup"
              .formatted(quarters(length)));
    }
  }

  private void requireBarLine(String what) {
    if (here.signum() > 0) {
      throw refusal("%s can change only at the start of a measure".formatted(what));
    }
  }

  private boolean inPickup() {
    return full.isEmpty() && pickup.signum() > 0;
  }

  private BigFraction meterLength() {
    return BigFraction.of(4L * beats, beatType);
  }

  private BigFraction left() {
    return (inPickup() ? pickup : meterLength()).subtract(here);
  }

  /** Whether no note or rest is in the passage yet. */
  boolean empty() {
    return full.isEmpty() && here.signum() == 0;
  }

  /**
   * Checks that there is room for a note or rest.
   *
   * @param what how to call it
   * @param remedy what to do if there is no room
   */
  void requireRoom(BigFraction length, String what, String remedy) {
    if (length.compareTo(left()) > 0) {
      throw refusal(
          "%s does not fit, because %s; %s, or change the meter"
              .formatted(what, missing(), remedy));
    }
  }

  /** Checks that a bar line is here. */
  void requireFull() {
    if (here.signum() > 0) {
      throw refusal("no bar line is here, because %s; add notes or rests".formatted(missing()));
    }
  }

  /** Checks that a pickup is full. */
  void requirePickupFull() {
    if (inPickup()) {
      throw refusal("the pickup is not full, because %s; add notes or rests".formatted(missing()));
    }
  }

  private String missing() {
    return "the %s has %s left"
        .formatted(
            inPickup() ? "pickup" : "measure of " + beats + "/" + beatType, quarters(left()));
  }

  private static String quarters(BigFraction length) {
    boolean whole = length.getDenominator().bitLength() == 1;
    String number =
        whole
            ? length.getNumerator().toString()
            : length.getNumerator() + "/" + length.getDenominator();
    return number + (length.compareTo(BigFraction.ONE) <= 0 ? " quarter" : " quarters");
  }

  /** Moves on by the length of a note or rest that fits. */
  void advance(BigFraction length) {
    here = here.add(length);
    if (left().signum() == 0) {
      BigFraction end = start.add(here);
      full.add(current());
      start = end;
      here = BigFraction.ZERO;
    }
  }

  private Measure current() {
    return new Measure(index(), number(), start, here, fifths, beats, beatType, "");
  }

  /** The measures up to here; the last may be short. */
  ImmutableList<Measure> all() {
    ImmutableList.Builder<Measure> all = ImmutableList.<Measure>builder().addAll(full);
    if (here.signum() > 0) {
      all.add(current());
    }
    return all.build();
  }

  /** The index of the current measure, from 0. */
  int index() {
    return full.size();
  }

  private String number() {
    return Integer.toString(pickup.signum() > 0 ? full.size() : full.size() + 1);
  }

  /** The current time in quarter notes from the start of the passage. */
  BigFraction time() {
    return start.add(here);
  }

  /** The current place. */
  Place place() {
    BigFraction missing = inPickup() ? meterLength().subtract(pickup) : BigFraction.ZERO;
    BigFraction beat = here.add(missing).divide(BigFraction.of(4, beatType));
    return new Place(index(), number(), here, beat.add(BigFraction.ONE));
  }

  /** A value; if it is refused, the message names the current place. */
  <T> T placed(Supplier<T> value) {
    try {
      return value.get();
    } catch (FingeringException e) {
      throw new FingeringException(sentence(e.getMessage()), e);
    }
  }

  /** An error at the current place. */
  FingeringException refusal(String what) {
    return new FingeringException(sentence(what));
  }

  private String sentence(String what) {
    Place place = place();
    return "Measure %s, beat %s: %s%s"
        .formatted(place.measure(), place.beatText(), what, what.endsWith(".") ? "" : ".");
  }
}
