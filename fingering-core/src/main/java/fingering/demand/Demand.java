package fingering.demand;

/** A condition on a plan: something that it must keep, avoid or show. Immutable. */
public sealed interface Demand permits GripDemand, Skill {
  /** The demand as a verb phrase after 'must': {@code stay in 3rd position, m. 6–11}. */
  String text();
}
