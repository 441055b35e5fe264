package fingering.scoring;

import com.google.common.primitives.ImmutableIntArray;
import fingering.music.Moment;
import fingering.music.Surroundings;

/**
 * The line around a single note as the {@link Habit} sees it.
 *
 * @param intervals semitones to the notes two before, one before, one after and two after; see
 *     {@link Surroundings#intervals}
 * @param pace the pace of the measure
 * @param length the length of the note compared with the pace: 0 shorter, 1 about the same, 2
 *     longer
 * @param slurred whether a slur joins the note to the one before
 * @param slursOn whether a slur joins the note to the next one
 * @param slursPrinted whether the passage has slurs at all
 * @param onBeat whether the note begins on a beat
 */
public record LineContext(
    ImmutableIntArray intervals,
    Pace pace,
    int length,
    boolean slurred,
    boolean slursOn,
    boolean slursPrinted,
    boolean onBeat) {
  private static final double SHORTER = 0.7;
  private static final double LONGER = 1.4;

  /** The line around a moment. */
  static LineContext of(Moment moment) {
    Surroundings around = moment.surroundings();
    double share =
        around.paceMicros() == 0 ? 1 : (double) moment.soundMicros() / around.paceMicros();
    return new LineContext(
        around.intervals(),
        Pace.of(around.paceMicros()),
        share < SHORTER ? 0 : share > LONGER ? 2 : 1,
        moment.slurred(),
        around.slursOn(),
        around.slursPrinted(),
        onBeat(moment));
  }

  /** Whether a moment is on a beat of its measure. */
  static boolean onBeat(Moment moment) {
    return moment.place().beat().getDenominator().bitLength() == 1;
  }
}
