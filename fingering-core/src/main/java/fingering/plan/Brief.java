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
 * What a plan must respect. Immutable.
 *
 * @param name what to call the plan
 * @param preferred the positions to be left for as few notes as can be: those that cannot be
 *     reached in them, and those close by; empty for all
 * @param demands what the plan must keep, avoid and show
 * @param requirement what else it must show
 * @param keepPrinted whether fingerings and strings printed in the part are kept, as far as there
 *     are grips for them
 */
public record Brief(
    String name,
    ImmutableSet<Position> preferred,
    ImmutableList<Demand> demands,
    Requirement requirement,
    boolean keepPrinted) {

  /** The cheapest plan, free of conditions. */
  public static Brief free(String name) {
    return builder(name).build();
  }

  /** The cheapest plan in these positions alone; in all where there are none. */
  public static Brief within(String name, ImmutableSet<Position> positions) {
    Builder builder = builder(name);
    return positions.isEmpty()
        ? builder.build()
        : builder.demanding(new AllowPositions(positions, MeasureSpan.WHOLE)).build();
  }

  /** The cheapest plan in these positions as far as they reach. */
  public static Brief preferring(String name, ImmutableSet<Position> positions) {
    return builder(name).preferring(positions).build();
  }

  /** A brief to be put together. */
  public static Builder builder(String name) {
    return new Builder(name);
  }

  /** This brief to be changed. */
  public Builder toBuilder() {
    Builder builder = builder(name).preferring(preferred).showing(requirement);
    demands.forEach(builder::demanding);
    return builder.keepingPrinted(keepPrinted);
  }

  /** Puts a brief together. Not safe for use by many threads. */
  public static final class Builder {
    private String name;
    private ImmutableSet<Position> preferred = ImmutableSet.of();
    private final ImmutableList.Builder<Demand> demands = ImmutableList.builder();
    private Requirement requirement = Requirement.NONE;
    private boolean keepPrinted;

    private Builder(String name) {
      this.name = name;
    }

    /** Calls the plan so. */
    public Builder named(String other) {
      name = other;
      return this;
    }

    /** Leaves these positions for as few notes as can be. */
    public Builder preferring(ImmutableSet<Position> positions) {
      preferred = positions;
      return this;
    }

    /** Demands something more. */
    public Builder demanding(Demand demand) {
      demands.add(demand);
      return this;
    }

    /** Demands that the whole path satisfies this instead of what was required before. */
    public Builder showing(Requirement shown) {
      requirement = shown;
      return this;
    }

    /** Keeps what is printed, or not. */
    public Builder keepingPrinted(boolean keep) {
      keepPrinted = keep;
      return this;
    }

    /** The brief. */
    public Brief build() {
      return new Brief(name, preferred, demands.build(), requirement, keepPrinted);
    }
  }

  /** The same brief with something the plan must show. */
  public Brief showing(Requirement shown) {
    return toBuilder().showing(shown).build();
  }

  /** The same brief, keeping what is printed or not. */
  public Brief keepingPrinted(boolean keep) {
    return toBuilder().keepingPrinted(keep).build();
  }

  /** The same brief by another name. */
  public Brief named(String other) {
    return toBuilder().named(other).build();
  }

  /** The same brief with these demands instead of its own. */
  public Brief withDemands(ImmutableList<Demand> others) {
    return new Brief(name, preferred, others, requirement, keepPrinted);
  }

  /** Whether stopped notes in that position are where the brief prefers them. */
  public boolean prefers(Position position) {
    return preferred.isEmpty() || preferred.contains(position);
  }

  /** The demands on each grip by itself. */
  public ImmutableList<GripDemand> limits() {
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

  /** All that a path through a passage must show. */
  Requirement shown(Passage passage) {
    ImmutableList.Builder<Requirement> all = ImmutableList.builder();
    skills().forEach(skill -> all.add(skill.in(passage)));
    if (requirement != Requirement.NONE) {
      all.add(requirement);
    }
    return AllRequirements.of(all.build());
  }
}
