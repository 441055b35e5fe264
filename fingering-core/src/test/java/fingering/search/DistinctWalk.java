package fingering.search;

import fingering.fingerboard.Grip;
import fingering.search.EveryPath.Walked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Picks distinct paths from all paths, best first. */
final class DistinctWalk {
  private final Function<Grip, String> look;
  private final Map<List<Integer>, List<String>> known = new HashMap<>();
  private final List<List<String>> taken = new ArrayList<>();

  private DistinctWalk(Function<Grip, String> look) {
    this.look = look;
  }

  /** The best k distinct paths of some that are ordered best first. */
  static List<Path> best(List<Walked> all, int k, Function<Grip, String> look) {
    DistinctWalk walk = new DistinctWalk(look);
    List<Path> best = new ArrayList<>();
    List<Walked> left = new ArrayList<>(all);
    while (best.size() < k && !left.isEmpty()) {
      Walked first = left.get(0);
      Walked next =
          left.stream()
              .filter(walked -> Walked.BETTER.compare(walked, first) == 0)
              .min(walk.amongEquals())
              .orElseThrow();
      List<String> seen = walk.looks(next);
      left.stream()
          .filter(walked -> walk.looks(walked).equals(seen))
          .findFirst()
          .ifPresent(walked -> best.add(walked.path()));
      left.removeIf(walked -> walk.looks(walked).equals(seen));
      walk.taken.add(seen);
    }
    return best;
  }

  /**
   * The order of equal paths: first the one that has the longest ending in common with a path
   * picked before, then the one whose grip before that ending comes first, then the one that
   * branches off the path picked first, then the usual order of the rest.
   */
  private Comparator<Walked> amongEquals() {
    return Comparator.<Walked>comparingInt(this::parting)
        .thenComparingInt(walked -> walked.nodes().get(parting(walked)))
        .thenComparingInt(this::partingFrom)
        .thenComparing(
            (one, other) -> Walked.earlier(one.nodes().subList(0, parting(one)), other.nodes()));
  }

  private List<String> looks(Walked walked) {
    return known.computeIfAbsent(
        walked.nodes(), nodes -> walked.path().grips().stream().map(look).toList());
  }

  /** The last moment at which two paths look different. */
  private static int differing(List<String> seen, List<String> other) {
    int m = seen.size() - 1;
    while (seen.get(m).equals(other.get(m))) {
      m--;
    }
    return m;
  }

  private int parting(Walked walked) {
    List<String> seen = looks(walked);
    return taken.stream().mapToInt(other -> differing(seen, other)).min().orElse(seen.size() - 1);
  }

  private int partingFrom(Walked walked) {
    List<String> seen = looks(walked);
    int parting = parting(walked);
    int from = 0;
    while (from < taken.size() && differing(seen, taken.get(from)) > parting) {
      from++;
    }
    return from;
  }
}
