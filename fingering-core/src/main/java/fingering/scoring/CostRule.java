package fingering.scoring;

import fingering.tables.Instrument.HandKind;

/**
 * A rule by which a teacher would judge a fingering. A rule measures an amount; the cost is the
 * amount times the rule's weight.
 *
 * <p>A rule is of exactly one of four kinds. {@link NoteRule} charges for one grip, {@link
 * ComparingRule} for one grip compared with the others of its moment, {@link TransitionRule} for
 * two successive grips, and {@link TimedTransitionRule} for missing time. Rules see the pace of the
 * music in classes only, and no time; the scoring adds it. A rule must be deterministic and
 * stateless, because its results are cached.
 */
public sealed interface CostRule
    permits NoteRule, ComparingRule, TransitionRule, TimedTransitionRule {
  /**
   * The id in weight files and data: lower case letters and digits, in words joined by hyphens. It
   * must differ from the ids of all other rules of a scoring; docs/scoring.md lists those of the
   * library.
   */
  String id();

  /** The name in print. */
  String name();

  /** One sentence that explains the charge. */
  String explanation();

  /** One unit of the amount, in the singular: shift, millimetre, note. */
  String unit();

  /**
   * The number of earlier moments that the rule needs to see. The search remembers one, and refuses
   * rules that look back further.
   */
  int lookBack();

  /** Whether the rule never charges anything, so that the search can skip it. */
  default boolean idle() {
    return false;
  }

  /** Whether the rule never charges that kind of hand anything. */
  default boolean idle(HandKind hand) {
    return idle();
  }
}
