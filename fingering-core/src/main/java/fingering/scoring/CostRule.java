package fingering.scoring;

/**
 * A rule by which a teacher would judge a fingering. A rule measures how much of something a note
 * has; what that costs is the amount times the rule's weight. Implement {@link NoteRule} or {@link
 * TransitionRule}.
 */
public interface CostRule {
  /** Short name in weight files and data: lower case, words joined by hyphens. */
  String id();

  /** The name in print. */
  String name();

  /** One sentence that says what is charged. */
  String explanation();

  /** What one unit of the amount is, in the singular: shift, millimetre, note. */
  String unit();

  /**
   * How many moments before the charged one the rule must see. The search keeps one, so a rule that
   * looks back further is refused.
   */
  int lookBack();

  /** Whether it never charges anything, so that the search can leave it out. */
  default boolean idle() {
    return false;
  }
}
