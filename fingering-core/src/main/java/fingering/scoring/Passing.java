package fingering.scoring;

import fingering.music.Moment;
import fingering.music.Note;

/**
 * The music between one moment and the next, whatever the fingering.
 *
 * @param before the moment left
 * @param now the moment reached
 * @param sinceMicros microseconds from the beginning of the one to the beginning of the other
 * @param freeMicros microseconds the hand has for a shift without being heard: the rest, and the
 *     end of the note left where it is detached
 * @param slurred whether one bow joins them
 * @param repeated whether the same single note is struck again
 * @param respelled whether the same key is struck again under another letter
 */
public record Passing(
    Moment before,
    Moment now,
    long sinceMicros,
    long freeMicros,
    boolean slurred,
    boolean repeated,
    boolean respelled) {
  /** A detached note gives up this share of its length to the hand (common practice). */
  private static final int DETACHED_SHARE = 4;

  /** Under a slur only the last tenth of a note hides a movement (common practice). */
  private static final int SLURRED_SHARE = 10;

  /** The passing between two neighbouring moments. */
  public static Passing between(Moment before, Moment now) {
    boolean single = before.struck().size() == 1 && now.struck().size() == 1;
    Note left = before.struck().get(0);
    Note reached = now.struck().get(0);
    boolean same = single && left.midi() == reached.midi();
    boolean spelled = left.sounding().equals(reached.sounding());
    long share = before.soundMicros() / (now.slurred() ? SLURRED_SHARE : DETACHED_SHARE);
    return new Passing(
        before,
        now,
        now.startMicros() - before.startMicros(),
        now.restMicros() + share,
        now.slurred(),
        same && spelled,
        same && !spelled);
  }

  /** Whether a rest of half a second or more lies between: the hand begins anew. */
  public boolean acrossRest() {
    return now.restMicros() >= 500_000;
  }
}
