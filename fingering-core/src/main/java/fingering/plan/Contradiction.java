package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import fingering.demand.Demand;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The smallest set of demands that cannot be met together.
 *
 * @param demands the demands; without any one of them the others can be met
 * @param moments the moments at which they leave no way to take the notes; empty where each note
 *     can be taken, but no path shows all that is asked for
 */
public record Contradiction(ImmutableList<Demand> demands, BitSet moments) {
  /** Keeps moments of its own, which nobody changes. */
  public Contradiction {
    moments = (BitSet) moments.clone();
  }

  /** Sets so large are tried one by one; beyond, demands are dropped as long as none is met. */
  private static final int TRIED = 3;

  private static final int NAMED = 3;

  /**
   * Finds the smallest set.
   *
   * @param meets whether some of the demands can be met together
   * @return empty where all can
   */
  static Optional<ImmutableList<Demand>> smallest(
      ImmutableList<Demand> demands, Predicate<ImmutableList<Demand>> meets) {
    if (meets.test(demands)) {
      return Optional.empty();
    }
    Set<Integer> all = new LinkedHashSet<>(IntStream.range(0, demands.size()).boxed().toList());
    for (int size = 1; size <= Math.min(TRIED, demands.size()); size++) {
      for (Set<Integer> some : Sets.combinations(all, size)) {
        ImmutableList<Demand> chosen = chosen(demands, some);
        if (!meets.test(chosen)) {
          return Optional.of(chosen);
        }
      }
    }
    Set<Integer> left = new LinkedHashSet<>(all);
    for (int each : all) {
      left.remove(each);
      if (meets.test(chosen(demands, left))) {
        left.add(each);
      }
    }
    return Optional.of(chosen(demands, left));
  }

  private static ImmutableList<Demand> chosen(ImmutableList<Demand> demands, Set<Integer> which) {
    return which.stream().sorted().map(demands::get).collect(ImmutableList.toImmutableList());
  }

  /** The moments, for the caller to keep. */
  @Override
  public BitSet moments() {
    return (BitSet) moments.clone();
  }

  private String asked() {
    ImmutableList<String> words =
        demands.stream().map(Demand::words).collect(ImmutableList.toImmutableList());
    return switch (words.size()) {
      case 1 -> words.get(0);
      case 2 -> "both " + words.get(0) + " and " + words.get(1);
      default -> String.join("; ", words) + "; all at once";
    };
  }

  /**
   * The contradiction in a sentence.
   *
   * @param name what a moment is called
   */
  String words(java.util.function.IntFunction<String> name) {
    String where =
        moments.isEmpty()
            ? "No fingering of this passage can "
            : "No fingering of "
                + moments.stream().limit(NAMED).mapToObj(name).collect(Collectors.joining(", "))
                + (moments.cardinality() > NAMED
                    ? " and " + (moments.cardinality() - NAMED) + " more"
                    : "")
                + " can ";
    return where
        + asked()
        + (demands.size() == 1 ? "; ask for less." : "; leave out or soften one of these.");
  }
}
