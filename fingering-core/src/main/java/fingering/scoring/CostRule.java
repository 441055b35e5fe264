package fingering.scoring;

/**
 * A rule by which a teacher would judge a fingering. A rule measures an amount; the cost is the
 * amount times the rule's weight.
 *
 * <p>A rule is of exactly one of five kinds. {@link NoteRule} and {@link TransitionRule} charge for
 * one grip and for two successive grips. {@link PacedNoteRule} and {@link PacedTransitionRule} do
 * the same in proportion to how slow the music is, and {@link TimedTransitionRule} charges for
 * missing time. No rule sees the time or the pace itself; the scoring adds them. A rule must be
 * deterministic and stateless, because its results are cached.
 */
public sealed interface CostRule
    permits NoteRule, PacedNoteRule, TransitionRule, TimedTransitionRule, PacedTransitionRule {
  /** The id in weight files and data: lower case, words joined by hyphens. */
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
}
