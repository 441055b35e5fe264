package fingering.scoring;

import com.google.common.primitives.Ints;
import fingering.music.Moment;
import fingering.music.Note;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The music between one moment and the next, whatever the fingering: all that a {@link
 * TransitionRule} may know of it. Passings that are equal but for times and pace cost the same
 * between the same grips, so that the search reckons them once, and adds what {@link
 * TimedTransitionRule haste} and {@link PacedTransitionRule pace} cost.
 *
 * @param sinceMicros microseconds from the beginning of the one moment to the beginning of the
 *     other, to the nearest half millisecond, and no more than {@value #ENOUGH}
 * @param freeMicros microseconds the hand has for a shift without being heard: the rest, and the
 *     end of the note left where it is detached; to the half millisecond above, and no more than
 *     {@value #ENOUGH}
 * @param quick whether less than a fifth of a second lies between the two beginnings
 * @param slurred whether one bow joins them
 * @param repeated whether the same single note is struck again
 * @param respelled whether the same key is struck again under another letter
 * @param rest whether a rest lies between
 * @param acrossRest whether a rest of half a second or more lies between: the hand begins anew
 * @param plucked whether the string is plucked at the moment reached
 * @param offBeat whether the moment reached is no beat of its measure
 * @param rises semitones from the highest note struck before to the highest struck now; below 0
 *     where the line falls; no further than {@value #LEAP} either way
 * @param held the notes that sound on
 * @param slowness how slow the music around is: {@link Slowness#slowness}
 */
public record Transition(
    long sinceMicros,
    long freeMicros,
    boolean quick,
    boolean slurred,
    boolean repeated,
    boolean respelled,
    boolean rest,
    boolean acrossRest,
    boolean plucked,
    boolean offBeat,
    int rises,
    HeldNotes held,
    long slowness) {
  /** More time than any movement of the hand takes, in microseconds. */
  public static final long ENOUGH = 1_000_000;

  /** More than a step of the scale, in semitones. */
  public static final int LEAP = 3;

  /** Notes shorter than this make a crossing quick, in microseconds (common practice). */
  private static final long QUICK = 200_000;

  /** A detached note gives up this share of its length to the hand (common practice). */
  private static final int DETACHED_SHARE = 4;

  /** Under a slur only the last tenth of a note hides a movement (common practice). */
  private static final int SLURRED_SHARE = 10;

  /** After such a rest the hand begins anew, in microseconds (common practice). */
  private static final long NEW_BEGINNING = 500_000;

  /** Times are told in multiples of this, in microseconds: half a millisecond. */
  private static final long TICK = 500;

  /** The passing between two neighbouring moments. */
  public static Transition between(Moment before, Moment now) {
    boolean single = before.starting().size() == 1 && now.starting().size() == 1;
    Note left = before.starting().get(0);
    Note reached = now.starting().get(0);
    boolean same = single && left.midi() == reached.midi();
    boolean spelled = same && left.sounding().equals(reached.sounding());
    long share = before.soundMicros() / (now.slurred() ? SLURRED_SHARE : DETACHED_SHARE);
    long since = now.startMicros() - before.startMicros() + TICK / 2;
    long free = now.restMicros() + share + TICK - 1;
    return new Transition(
        told(since),
        told(free),
        told(since) < QUICK,
        now.slurred(),
        spelled,
        same && !spelled,
        now.restMicros() > 0,
        now.restMicros() >= NEW_BEGINNING,
        now.pizzicato(),
        offBeat(now),
        Ints.constrainToRange(top(now) - top(before), -LEAP, LEAP),
        HeldNotes.between(before, now),
        Slowness.slowness(now));
  }

  private static long told(long micros) {
    return Math.min(ENOUGH, micros / TICK * TICK);
  }

  private static boolean offBeat(Moment moment) {
    BigFraction beat = moment.place().beat();
    return beat.getDenominator().bitLength() > 1;
  }

  private static int top(Moment moment) {
    return moment.starting().get(moment.starting().size() - 1).midi();
  }

  /** Microseconds there are to leave a grip: an open string is left as soon as it is struck. */
  public long micros(boolean open) {
    return open ? sinceMicros : freeMicros;
  }

  /** The same but for times and pace: as if there were time enough, and the music did not sing. */
  public Transition atLeisure() {
    return new Transition(
        ENOUGH,
        ENOUGH,
        quick,
        slurred,
        repeated,
        respelled,
        rest,
        acrossRest,
        plucked,
        offBeat,
        rises,
        held,
        0);
  }

  /** A number for all of it but times, pace and {@link #held}; equal numbers mean equal. */
  public int code() {
    int code = rises + LEAP;
    code = code << 1 | (quick ? 1 : 0);
    code = code << 1 | (slurred ? 1 : 0);
    code = code << 1 | (repeated ? 1 : 0);
    code = code << 1 | (respelled ? 1 : 0);
    code = code << 1 | (rest ? 1 : 0);
    code = code << 1 | (acrossRest ? 1 : 0);
    code = code << 1 | (plucked ? 1 : 0);
    return code << 1 | (offBeat ? 1 : 0);
  }
}
