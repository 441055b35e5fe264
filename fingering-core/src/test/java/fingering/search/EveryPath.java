package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.PacedNote;
import fingering.scoring.TimedTransition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Every open path through small layers that shows what is required, walked one by one. */
final class EveryPath {
  /**
   * A path, and the states in which a requirement is on it.
   *
   * @param nodes by moment, the index of its grip times the number of states, plus the state
   */
  record Walked(Path path, ImmutableList<Integer> nodes) {
    /** Least penalty first, then least cost. */
    static final Comparator<Walked> BETTER =
        Comparator.<Walked>comparingLong(walked -> walked.path().penalty())
            .thenComparingLong(walked -> walked.path().cost());

    /** Among equals the earlier grip and the lower state at the last moment, and so on back. */
    static final Comparator<Walked> BEST_FIRST =
        BETTER.thenComparing((one, other) -> earlier(one.nodes, other.nodes));

    /** Compares as many nodes as the first has. */
    static int earlier(List<Integer> one, List<Integer> other) {
      return IntStream.iterate(one.size() - 1, m -> m >= 0, m -> m - 1)
          .map(m -> one.get(m).compareTo(other.get(m)))
          .filter(order -> order != 0)
          .findFirst()
          .orElse(0);
    }
  }

  private final LayeredGraph layers;
  private final Requirement requirement;
  private final List<Walked> found = new ArrayList<>();
  private final List<Integer> nodes = new ArrayList<>();
  private final List<Grip> grips = new ArrayList<>();

  private EveryPath(LayeredGraph layers, Requirement requirement) {
    this.layers = layers;
    this.requirement = requirement;
  }

  static List<Walked> through(LayeredGraph layers, Requirement requirement) {
    EveryPath walk = new EveryPath(layers, requirement);
    walk.on(0, 0, 0, 0);
    walk.found.sort(Walked.BEST_FIRST);
    return walk.found;
  }

  private void on(int m, int state, long cost, long penalty) {
    if (m == layers.moments().size()) {
      if (requirement.satisfied(state)) {
        Path path = new Path(ImmutableList.copyOf(grips), cost, penalty);
        found.add(new Walked(path, ImmutableList.copyOf(nodes)));
      }
      return;
    }
    for (int j = 0; j < layers.grips().get(m).size(); j++) {
      if (!layers.closed().at(m, j)) {
        Grip now = layers.grips().get(m).get(j);
        Grip before = m == 0 ? now : grips.get(m - 1);
        int after = requirement.next(state, requirement.symbol(m, before, now));
        grips.add(now);
        nodes.add(j * requirement.states() + after);
        on(m + 1, after, cost + cost(m, before, now), penalty + layers.penalty().of(m, now));
        grips.remove(m);
        nodes.remove(m);
      }
    }
  }

  private long cost(int m, Grip before, Grip now) {
    long own = layers.scoring().cost(PacedNote.of(layers.moments().get(m)), now);
    if (m == 0) {
      return own;
    }
    TimedTransition transition =
        TimedTransition.between(layers.moments().get(m - 1), layers.moments().get(m));
    return own + layers.scoring().cost(transition, before, now);
  }
}
