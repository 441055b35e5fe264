package fingering.scoring;

import com.google.common.primitives.Ints;
import fingering.music.Moment;
import fingering.music.Note;

/**
 * The music between two successive moments as a {@link TransitionRule} sees it. Equal transitions
 * cost the same between the same grips, so the search computes each cost once. It does not include
 * the time; see {@link TimedTransition}.
 *
 * @param quick whether the later moment begins less than a fifth of a second after the earlier one
 * @param slurred whether a slur joins them
 * @param repeated whether the same single note is struck again
 * @param respelled whether the same single pitch is struck again with another spelling
 * @param chromatic whether two single notes share a letter and differ in pitch: F, F♯
 * @param rest whether there is a rest between them
 * @param acrossRest whether there is a rest of half a second or more, after which the hand starts
 *     anew
 * @param plucked whether the later moment is plucked
 * @param offBeat whether the later moment is not on a beat of its measure
 * @param rises semitones from the highest note struck before to the highest note struck now,
 *     negative where the line falls, limited to {@value #LEAP} in either direction
 * @param pace the pace of the music at the later moment
 * @param singing how much the line sings at the later moment, 0 to 2
 * @param grace whether either moment has grace notes
 * @param held the notes that are held
 */
public record Transition(
    boolean quick,
    boolean slurred,
    boolean repeated,
    boolean respelled,
    boolean chromatic,
    boolean rest,
    boolean acrossRest,
    boolean plucked,
    boolean offBeat,
    int rises,
    Pace pace,
    int singing,
    boolean grace,
    HeldNotes held) {
  /** The limit on {@link #rises}, in semitones: more than a step of the scale. */
  public static final int LEAP = 3;

  /** A crossing after a shorter time is quick, in microseconds (common practice). */
  private static final long QUICK_MICROS = 200_000;

  /** After a rest of this length the hand starts anew, in microseconds (common practice). */
  private static final long LONG_REST_MICROS = 500_000;

  /** The transition between two successive moments. */
  public static Transition between(Moment before, Moment now) {
    return between(before, now, TransitionTime.between(before, now));
  }

  static Transition between(Moment before, Moment now, TransitionTime time) {
    boolean single = before.starting().size() == 1 && now.starting().size() == 1;
    Note left = before.starting().get(0);
    Note reached = now.starting().get(0);
    boolean samePitch = single && left.midi() == reached.midi();
    boolean sameSpelling = samePitch && left.sounding().equals(reached.sounding());
    return new Transition(
        time.sinceMicros() < QUICK_MICROS,
        now.slurred(),
        sameSpelling,
        samePitch && !sameSpelling,
        single && !samePitch && left.sounding().letterNumber() == reached.sounding().letterNumber(),
        now.restMicros() > 0,
        now.restMicros() >= LONG_REST_MICROS,
        now.pizzicato(),
        !LineContext.onBeat(now),
        Ints.constrainToRange(top(now) - top(before), -LEAP, LEAP),
        Pace.of(now.surroundings().paceMicros()),
        Singing.of(now),
        before.grace() || now.grace(),
        HeldNotes.between(before, now));
  }

  /**
   * The transition as rules see it that look only at the hand: with what matters to its way alone,
   * which is slur, long rest, beat and pace.
   */
  Transition ofHand() {
    return new Transition(
        false,
        slurred,
        false,
        false,
        false,
        false,
        acrossRest,
        false,
        offBeat,
        0,
        pace,
        0,
        false,
        HeldNotes.NONE);
  }

  private static int top(Moment moment) {
    return moment.starting().get(moment.starting().size() - 1).midi();
  }

  /**
   * A number for everything except {@link #held}: two transitions have the same number only if the
   * rest is equal.
   */
  public int code() {
    int code = rises + LEAP;
    code = code << 2 | pace.level();
    code = code << 2 | singing;
    code = code << 1 | (grace ? 1 : 0);
    code = code << 1 | (quick ? 1 : 0);
    code = code << 1 | (slurred ? 1 : 0);
    code = code << 1 | (repeated ? 1 : 0);
    code = code << 1 | (respelled ? 1 : 0);
    code = code << 1 | (chromatic ? 1 : 0);
    code = code << 1 | (rest ? 1 : 0);
    code = code << 1 | (acrossRest ? 1 : 0);
    code = code << 1 | (plucked ? 1 : 0);
    return code << 1 | (offBeat ? 1 : 0);
  }
}
