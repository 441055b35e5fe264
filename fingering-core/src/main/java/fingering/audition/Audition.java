package fingering.audition;

import com.google.common.collect.ImmutableList;

/**
 * A planned audition.
 *
 * @param pieces the pieces with their plans, in the order given
 * @param skills the required skills, in the order given
 */
public record Audition(ImmutableList<PlannedPiece> pieces, ImmutableList<RequiredSkill> skills) {
  /** The points of all plans above the cheapest plans of the pieces, 0 or more. */
  public long extraCost() {
    return pieces.stream().mapToLong(PlannedPiece::extraCost).sum();
  }

  /** Whether all required skills are shown. */
  public boolean met() {
    return skills.stream().allMatch(RequiredSkill::met);
  }
}
