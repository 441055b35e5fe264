package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.AllRequirements;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.demand.GripDemand;
import fingering.demand.MeasureSpan;
import fingering.demand.Skill;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.Position;

/**
 * The constraints on a plan. Immutable.
 *
 * @param name the name of the plan
 * @param preferred the preferred positions. As few notes as possible are outside them: only notes
 *     that are out of reach there, and notes close to those. Empty for no preference
 * @param returning whether the hand comes back to the preferred positions after a note out of reach
 *     as soon as the next notes are worth a shift. Otherwise it may stay away for the whole figure
 * @param demands what the plan must keep, avoid and show
 * @param requirement a further requirement on the whole path
 * @param keepPrinted whether the plan keeps printed fingers, strings and positions where a grip for
 *     them exists
 */
public record Brief(
    String name,
    ImmutableSet<Position> preferred,
    boolean returning,
    ImmutableList<Demand> demands,
    Requirement requirement,
    boolean keepPrinted) {

  /** A brief for the cheapest plan without constraints. */
  public static Brief free(String name) {
    return builder(name).build();
  }

  /** A brief for the cheapest plan in these positions only; an empty set allows all positions. */
  public static Brief within(String name, ImmutableSet<Position> positions) {
    Builder builder = builder(name);
    return positions.isEmpty()
        ? builder.build()
        : builder.addDemand(new AllowPositions(positions, MeasureSpan.WHOLE)).build();
  }

  /** A brief for the cheapest plan that leaves these positions for as few notes as possible. */
  public static Brief preferring(String name, ImmutableSet<Position> positions) {
    return builder(name).withPreferred(positions).build();
  }

  /**
   * A brief for the cheapest plan that is mainly in one position. A teacher would say: play all of
   * it in third. Leave only for notes that you cannot reach there. Then come back for the next
   * notes if there are three or more and they take a second or more; if not, come back in the next
   * rest. In quick music you may leave a note early and come back a note late. Open strings count
   * neither as in the position nor as outside.
   */
  public static Brief mainlyIn(String name, Position position) {
    return builder(name).withPreferred(ImmutableSet.of(position)).withReturning(true).build();
  }

  /** A builder of a brief without constraints. */
  public static Builder builder(String name) {
    return new Builder(name);
  }

  /** A builder that starts with the values of this brief. */
  public Builder toBuilder() {
    Builder builder =
        builder(name)
            .withPreferred(preferred)
            .withReturning(returning)
            .withRequirement(requirement);
    demands.forEach(builder::addDemand);
    return builder.withKeepPrinted(keepPrinted);
  }

  /** Builds a brief. Not thread-safe. */
  public static final class Builder {
    private String name;
    private ImmutableSet<Position> preferred = ImmutableSet.of();
    private boolean returning;
    private final ImmutableList.Builder<Demand> demands = ImmutableList.builder();
    private Requirement requirement = Requirement.NONE;
    private boolean keepPrinted;

    private Builder(String name) {
      this.name = name;
    }

    /** Sets the name of the plan. */
    public Builder withName(String newName) {
      name = newName;
      return this;
    }

    /** Sets the preferred positions; empty for no preference. */
    public Builder withPreferred(ImmutableSet<Position> positions) {
      preferred = positions;
      return this;
    }

    /**
     * Sets whether the hand comes back to the preferred positions as soon as it is worth a shift.
     */
    public Builder withReturning(boolean returns) {
      returning = returns;
      return this;
    }

    /** Adds a demand. */
    public Builder addDemand(Demand demand) {
      demands.add(demand);
      return this;
    }

    /** Sets the further requirement on the whole path, in place of the previous one. */
    public Builder withRequirement(Requirement newRequirement) {
      requirement = newRequirement;
      return this;
    }

    /** Sets whether the plan keeps printed fingers, strings and positions. */
    public Builder withKeepPrinted(boolean keep) {
      keepPrinted = keep;
      return this;
    }

    /** Builds the brief. */
    public Brief build() {
      return new Brief(name, preferred, returning, demands.build(), requirement, keepPrinted);
    }
  }

  /** A copy with another requirement on the whole path, in place of this one. */
  public Brief withRequirement(Requirement newRequirement) {
    return toBuilder().withRequirement(newRequirement).build();
  }

  /** A copy that keeps printed fingers, strings and positions, or does not. */
  public Brief withKeepPrinted(boolean keep) {
    return toBuilder().withKeepPrinted(keep).build();
  }

  /** A copy with another name. */
  public Brief withName(String newName) {
    return toBuilder().withName(newName).build();
  }

  /** A copy with these demands in place of its own. */
  public Brief withDemands(ImmutableList<Demand> newDemands) {
    return new Brief(name, preferred, returning, newDemands, requirement, keepPrinted);
  }

  /** Whether a position is among the preferred ones, or there is no preference. */
  public boolean prefers(Position position) {
    return preferred.isEmpty() || preferred.contains(position);
  }

  /** The demands that each grip meets or fails by itself. */
  public ImmutableList<GripDemand> gripDemands() {
    return demands.stream()
        .filter(GripDemand.class::isInstance)
        .map(GripDemand.class::cast)
        .collect(ImmutableList.toImmutableList());
  }

  /** The demands on the plan as a whole. */
  public ImmutableList<Skill> skills() {
    return demands.stream()
        .filter(Skill.class::isInstance)
        .map(Skill.class::cast)
        .collect(ImmutableList.toImmutableList());
  }

  /** Everything that a path through a passage must show, as one requirement. */
  Requirement pathRequirement(Passage passage) {
    ImmutableList.Builder<Requirement> all = ImmutableList.builder();
    skills().forEach(skill -> all.add(skill.requirement(passage)));
    if (requirement != Requirement.NONE) {
      all.add(requirement);
    }
    return AllRequirements.of(all.build());
  }
}
