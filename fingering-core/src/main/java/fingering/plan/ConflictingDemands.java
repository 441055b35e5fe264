package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import fingering.demand.Demand;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A minimal set of demands that cannot all be met: without any one of them the others can be.
 *
 * @param demands the demands
 * @param moments the moments at which no grip meets them all; empty if each moment has one, but no
 *     path shows everything that is required
 */
record ConflictingDemands(ImmutableList<Demand> demands, BitSet moments) {
  /** Sets up to this size are tried one by one. */
  private static final int MAX_TRIED = 3;

  /** The most moments that a message names. */
  private static final int MAX_NAMED = 3;

  /** Copies the moments. */
  ConflictingDemands {
    moments = (BitSet) moments.clone();
  }

  /**
   * A minimal unsatisfiable subset of some demands. Up to {@value #MAX_TRIED} demands it is one
   * with the fewest demands, found by trying all subsets in order of size. Larger ones are found by
   * deletion: each demand in turn is removed if the others still conflict.
   *
   * @param feasible whether some of the demands can be met together
   * @return empty if all of them can be met together
   */
  static Optional<ImmutableList<Demand>> minimal(
      ImmutableList<Demand> demands, Predicate<ImmutableList<Demand>> feasible) {
    if (feasible.test(demands)) {
      return Optional.empty();
    }
    Set<Integer> all = new LinkedHashSet<>(IntStream.range(0, demands.size()).boxed().toList());
    for (int size = 1; size <= Math.min(MAX_TRIED, demands.size()); size++) {
      for (Set<Integer> indices : Sets.combinations(all, size)) {
        ImmutableList<Demand> subset = subset(demands, indices);
        if (!feasible.test(subset)) {
          return Optional.of(subset);
        }
      }
    }
    Set<Integer> conflicting = new LinkedHashSet<>(all);
    for (int index : all) {
      conflicting.remove(index);
      if (feasible.test(subset(demands, conflicting))) {
        conflicting.add(index);
      }
    }
    return Optional.of(subset(demands, conflicting));
  }

  private static ImmutableList<Demand> subset(ImmutableList<Demand> demands, Set<Integer> indices) {
    return indices.stream().sorted().map(demands::get).collect(ImmutableList.toImmutableList());
  }

  /** A copy of the moments. */
  @Override
  public BitSet moments() {
    return (BitSet) moments.clone();
  }

  private String listed() {
    ImmutableList<String> texts =
        demands.stream().map(Demand::text).collect(ImmutableList.toImmutableList());
    return switch (texts.size()) {
      case 1 -> texts.get(0);
      case 2 -> "both " + texts.get(0) + " and " + texts.get(1);
      default -> "do all of this at once: " + String.join("; ", texts);
    };
  }

  /**
   * A sentence that names the conflict and what to do about it.
   *
   * @param name gives the name of a moment, by its index
   */
  String message(IntFunction<String> name) {
    String subject =
        moments.isEmpty()
            ? "No fingering of this passage can "
            : "No fingering of "
                + moments.stream().limit(MAX_NAMED).mapToObj(name).collect(Collectors.joining(", "))
                + (moments.cardinality() > MAX_NAMED
                    ? " and " + (moments.cardinality() - MAX_NAMED) + " more"
                    : "")
                + " can ";
    return subject
        + listed()
        + (demands.size() == 1 ? "; ask for less." : "; drop or relax one of these demands.");
  }
}
