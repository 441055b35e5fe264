package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.BitSet;

/**
 * A limit of your own: a plan uses only grips that pass a test.
 *
 * <pre>{@code
 * OwnLimit.of(
 *     "stop long notes",
 *     (moment, grip) -> moment.soundMicros() < 1_000_000 || !grip.open());
 * }</pre>
 *
 * <p>A placement gives its string as a number, 1 for the highest; {@link
 * fingering.tables.StringNames} finds a string by its name, such as G or sul G.
 *
 * @param words what the plan must do, to follow 'the plan must': {@code stop long notes}
 * @param span the measures in which it applies
 * @param soft whether it does not apply to moments where no grip passes
 * @param allowed the test
 */
public record OwnLimit(String words, MeasureSpan span, boolean soft, GripTest allowed)
    implements GripDemand {
  /**
   * Checks the components.
   *
   * @throws FingeringException if there are no words
   */
  public OwnLimit {
    if (words.isBlank()) {
      throw new FingeringException("a limit needs words, such as 'stop long notes'");
    }
  }

  /**
   * A limit that applies everywhere and without exception.
   *
   * @param words what the plan must do, to follow 'the plan must'
   * @param allowed whether a grip may be used
   * @throws FingeringException if there are no words
   */
  public static OwnLimit of(String words, GripTest allowed) {
    return new OwnLimit(words, MeasureSpan.WHOLE, false, allowed);
  }

  /** The same limit in these measures only. */
  public OwnLimit in(MeasureSpan measures) {
    return new OwnLimit(words, measures, soft, allowed);
  }

  /** The same limit, but only at moments where some grip passes. */
  public OwnLimit wherePossible() {
    return new OwnLimit(words, span, true, allowed);
  }

  @Override
  public BitSet moments(Passage passage) {
    return span.moments(passage);
  }

  @Override
  public boolean allows(Moment moment, Grip grip) {
    return allowed.test(moment, grip);
  }

  @Override
  public String text() {
    return words + (soft ? " where possible" : "") + span.suffix();
  }
}
