package fingering.audition;

import com.google.common.collect.ImmutableList;

/**
 * An audition, planned.
 *
 * @param pieces the pieces in their order, with their plans
 * @param skills what is asked for, in its order
 */
public record Audition(ImmutableList<PlannedPiece> pieces, ImmutableList<RequiredSkill> skills) {
  /** Points of all pieces above their own cheapest plans together, 0 or more. */
  public long extra() {
    return pieces.stream().mapToLong(PlannedPiece::extra).sum();
  }

  /** Whether everything that is asked for is shown. */
  public boolean met() {
    return skills.stream().allMatch(RequiredSkill::met);
  }
}
