package fingering.search;

import static fingering.search.ForwardPass.UNREACHABLE;

import com.google.common.collect.ImmutableList;
import com.google.common.math.LongMath;
import fingering.search.VisibleFingering.Grain;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Finds the best paths that satisfy a requirement, searching first among paths that cost little
 * more than the best unconstrained path. Paths found within a bound are the best, because all paths
 * outside cost more; a tighter bound leaves less to search.
 */
final class BoundedSearch {
  /** The first corridor exceeds the cheapest score by one part in so many. */
  private static final int CORRIDOR = 256;

  /** The bound is raised by at least one part in so many of the cheapest cost. */
  private static final int STEP = 512;

  /** No bound. */
  private static final long ALL = UNREACHABLE - 1;

  private final LayeredGraph graph;
  private final Steps steps;

  /** The pass through the graph without a requirement. */
  private final ForwardPass unconstrained;

  private final Path cheapest;
  private final Automaton automaton;
  private final ImmutableList<Automaton> partAutomata;
  private Corridor corridor;
  private ImmutableList<RemainingScores> parts;

  private BoundedSearch(
      LayeredGraph graph,
      Requirement requirement,
      ForwardPass unconstrained,
      Path cheapest,
      Steps steps) {
    this.graph = graph;
    this.steps = steps;
    this.unconstrained = unconstrained;
    this.cheapest = cheapest;
    automaton = new Automaton(graph, requirement);
    ImmutableList<Requirement> all = requirement.parts();
    partAutomata =
        all.size() == 1
            ? ImmutableList.of(automaton)
            : all.stream()
                .map(part -> new Automaton(graph, part))
                .collect(ImmutableList.toImmutableList());
    corridor = Corridor.of(unconstrained, bound(cheapest.cost() / CORRIDOR), steps);
    parts = parts();
  }

  /** The best path that satisfies the requirement, or empty if there is none. */
  static Optional<Path> best(
      LayeredGraph graph, Requirement requirement, Cancellation cancellation) {
    Steps steps = new Steps(cancellation);
    ForwardPass unconstrained = ForwardPass.of(graph, steps);
    Optional<Path> cheapest = unconstrained.best();
    if (cheapest.isEmpty() || (requirement.states() == 1 && requirement.satisfied(0))) {
      return cheapest;
    }
    return new BoundedSearch(graph, requirement, unconstrained, cheapest.get(), steps)
        .search(1, pass -> pass.best().stream().collect(ImmutableList.toImmutableList())).stream()
            .findFirst();
  }

  /** The k best paths that look different and satisfy the requirement; fewer if there are fewer. */
  static ImmutableList<Path> best(
      LayeredGraph graph, Requirement requirement, int k, Grain grain, Cancellation cancellation) {
    Steps steps = new Steps(cancellation);
    ForwardPass unconstrained = ForwardPass.of(graph, steps);
    Optional<Path> cheapest = unconstrained.best();
    if (cheapest.isEmpty()) {
      return ImmutableList.of();
    }
    return new BoundedSearch(graph, requirement, unconstrained, cheapest.get(), steps)
        .search(k, pass -> DistinctPaths.best(graph, pass, k, grain, steps));
  }

  private interface Finder {
    ImmutableList<Path> find(BoundedForwardPass pass);
  }

  private ImmutableList<Path> search(int k, Finder finder) {
    OptionalLong alone = extra();
    if (alone.isEmpty()) {
      return ImmutableList.of();
    }
    long step = Math.max(1, cheapest.cost() / STEP);
    long extra = alone.getAsLong();
    long bound = bound(extra);
    while (true) {
      widen(bound);
      ImmutableList<Path> found =
          finder.find(
              new BoundedForwardPass(graph, automaton, unconstrained, corridor, parts, bound)
                  .run((m, grip) -> true, steps));
      if (bound == ALL) {
        return found;
      }
      if (found.size() == k) {
        // The k best cost no more than these k.
        long last = ForwardPass.score(found.get(k - 1));
        if (last <= bound) {
          return found;
        }
        bound = last;
      } else {
        extra = LongMath.saturatedAdd(extra, Math.max(extra, step));
        bound = extra > cheapest.cost() ? ALL : bound(extra);
      }
    }
  }

  /** The score that exceeds the cheapest by so many points; no bound if there is none as high. */
  private long bound(long extra) {
    return Math.min(ALL, LongMath.saturatedAdd(ForwardPass.score(cheapest), extra));
  }

  /**
   * What the parts of the requirement cost more than the cheapest path, added up; empty if one has
   * no path. Skills are usually shown in different places. Their extra costs then add up, which
   * gives a good first bound.
   */
  private OptionalLong extra() {
    long more = Math.max(1, cheapest.cost() / CORRIDOR);
    while (true) {
      long sum = 0;
      for (RemainingScores part : parts) {
        long best = part.best();
        sum =
            LongMath.saturatedAdd(
                sum, best == UNREACHABLE ? ALL : best - ForwardPass.score(cheapest));
      }
      if (parts.stream().allMatch(part -> part.best() != UNREACHABLE)) {
        return OptionalLong.of(sum);
      }
      if (corridor.limit() == ALL) {
        return OptionalLong.empty();
      }
      more = LongMath.saturatedMultiply(more, 4);
      widen(more > cheapest.cost() ? ALL : bound(more));
    }
  }

  /** Widens the corridor to a bound at least. */
  private void widen(long bound) {
    if (bound > corridor.limit()) {
      corridor = Corridor.of(unconstrained, bound, steps);
      parts = parts();
    }
  }

  private ImmutableList<RemainingScores> parts() {
    return partAutomata.stream()
        .map(part -> RemainingScores.of(part, unconstrained, corridor, steps))
        .collect(ImmutableList.toImmutableList());
  }
}
