package fingering.plan;

import com.google.common.collect.ImmutableSet;
import fingering.search.Requirement;
import fingering.tables.Position;

/**
 * What a plan must respect.
 *
 * @param name what to call the plan
 * @param positions the positions allowed; empty for all
 * @param strict whether a note outside the allowed positions makes the plan impossible; otherwise
 *     notes that cannot be reached in them, and those close by, may lie outside, and of all others
 *     as few as can be
 * @param requirement what the plan must show
 * @param keepPrinted whether fingerings and strings printed in the part are kept
 */
public record Brief(
    String name,
    ImmutableSet<Position> positions,
    boolean strict,
    Requirement requirement,
    boolean keepPrinted) {

  /** The cheapest plan, free of conditions. */
  public static Brief free(String name) {
    return new Brief(name, ImmutableSet.of(), true, Requirement.NONE, false);
  }

  /** The cheapest plan in these positions alone. */
  public static Brief within(String name, ImmutableSet<Position> positions) {
    return new Brief(name, positions, true, Requirement.NONE, false);
  }

  /** The cheapest plan in these positions as far as they reach. */
  public static Brief preferring(String name, ImmutableSet<Position> positions) {
    return new Brief(name, positions, false, Requirement.NONE, false);
  }

  /** The same brief with something the plan must show. */
  public Brief showing(Requirement shown) {
    return new Brief(name, positions, strict, shown, keepPrinted);
  }

  /** The same brief, keeping what is printed or not. */
  public Brief keepingPrinted(boolean keep) {
    return new Brief(name, positions, strict, requirement, keep);
  }

  /** The same brief by another name. */
  public Brief named(String other) {
    return new Brief(other, positions, strict, requirement, keepPrinted);
  }

  /** Whether the brief allows stopped notes in that position. */
  public boolean allows(Position position) {
    return positions.isEmpty() || positions.contains(position);
  }
}
