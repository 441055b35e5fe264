package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Passing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Finds the best path through the layers that satisfies a requirement, exactly, by dynamic
 * programming over grips and states of the requirement. Time is linear in moments.
 *
 * <p>Best is first the least penalty, then the least cost. Among equals the path whose last grip
 * stands earlier in its layer wins, then the one before it, and so on back; grips alike, the lower
 * state of the requirement.
 */
public final class PathFinder {
  /** How many moments before the present one the search keeps. */
  public static final int MEMORY = 1;

  /** Penalty is counted in this many points, so that no cost outweighs it. */
  private static final int PENALTY_BITS = 30;

  private static final long NONE = Long.MAX_VALUE;

  private PathFinder() {}

  /**
   * The best path, or empty where no path satisfies the requirement.
   *
   * @throws IllegalArgumentException if a rule looks further back than the search keeps
   */
  public static Optional<Path> best(Layers layers, Requirement requirement) {
    if (layers.scoring().lookBack() > MEMORY) {
      throw new IllegalArgumentException(
          "a rule looks back "
              + layers.scoring().lookBack()
              + " moments, but the search keeps "
              + MEMORY);
    }
    int states = requirement.states();
    int size = layers.moments().size();
    List<int[]> origins = new ArrayList<>(size);
    long[] reached = first(layers, requirement);
    for (int m = 1; m < size; m++) {
      ImmutableList<Grip> before = layers.grips().get(m - 1);
      ImmutableList<Grip> now = layers.grips().get(m);
      Moment moment = layers.moments().get(m);
      Passing passing = Passing.between(layers.moments().get(m - 1), moment);
      long[] next = new long[now.size() * states];
      int[] origin = new int[now.size() * states];
      Arrays.fill(next, NONE);
      for (int j = 0; j < now.size(); j++) {
        Grip grip = now.get(j);
        for (int i = 0; i < before.size(); i++) {
          if (unreached(reached, i * states, states)) {
            continue;
          }
          long edge = layers.scoring().cost(passing, before.get(i), grip);
          for (int s = 0; s < states; s++) {
            long sum = reached[i * states + s];
            if (sum == NONE) {
              continue;
            }
            int to = j * states + requirement.next(s, grip);
            if (sum + edge < next[to]) {
              next[to] = sum + edge;
              origin[to] = i * states + s;
            }
          }
        }
        long own = nodeCost(layers, moment, grip);
        for (int s = 0; s < states; s++) {
          if (next[j * states + s] != NONE) {
            next[j * states + s] += own;
          }
        }
      }
      origins.add(origin);
      reached = next;
    }
    return trace(layers, requirement, reached, origins);
  }

  private static long[] first(Layers layers, Requirement requirement) {
    ImmutableList<Grip> grips = layers.grips().get(0);
    int states = requirement.states();
    long[] reached = new long[grips.size() * states];
    Arrays.fill(reached, NONE);
    for (int j = 0; j < grips.size(); j++) {
      reached[j * states + requirement.next(0, grips.get(j))] =
          nodeCost(layers, layers.moments().get(0), grips.get(j));
    }
    return reached;
  }

  private static long nodeCost(Layers layers, Moment moment, Grip grip) {
    return layers.scoring().cost(moment, grip)
        + (layers.penalty().applyAsLong(grip) << PENALTY_BITS);
  }

  private static boolean unreached(long[] reached, int from, int states) {
    for (int s = from; s < from + states; s++) {
      if (reached[s] != NONE) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Path> trace(
      Layers layers, Requirement requirement, long[] reached, List<int[]> origins) {
    int states = requirement.states();
    int best = -1;
    for (int at = 0; at < reached.length; at++) {
      if (reached[at] != NONE
          && requirement.satisfied(at % states)
          && (best < 0 || reached[at] < reached[best])) {
        best = at;
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    List<Grip> path = new ArrayList<>(layers.moments().size());
    int at = best;
    for (int m = layers.moments().size() - 1; m >= 0; m--) {
      path.add(layers.grips().get(m).get(at / states));
      if (m > 0) {
        at = origins.get(m - 1)[at];
      }
    }
    Collections.reverse(path);
    long sum = reached[best];
    long penalty = sum >>> PENALTY_BITS;
    return Optional.of(
        new Path(ImmutableList.copyOf(path), sum - (penalty << PENALTY_BITS), penalty));
  }
}
