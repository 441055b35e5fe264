package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.PacedNote;
import fingering.scoring.TimedTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.ToLongFunction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Layers as an integer program of ojAlgo: one unit flows from the first moment to the last, each
 * way between two grips is a variable that is 0 or 1, and what is to be shown is a sum of such
 * variables. It knows no states.
 *
 * <p>Ways that lie on no path so cheap as a given cost, whatever the path shows, are left out: the
 * least sums to their beginning and from their end tell.
 */
final class FlowProgram {
  /** What a way shows. */
  interface Shown {
    /**
     * How much, 0 or more.
     *
     * @param moment index of the moment it leads to
     * @param before the grip it comes from; at the first moment the grip itself
     */
    long of(int moment, Grip before, Grip now);
  }

  private record Way(int moment, int from, int to, Variable variable) {}

  private final LayeredGraph layers;
  private final ExpressionsBasedModel model = new ExpressionsBasedModel();
  private final List<Way> ways = new ArrayList<>();

  private FlowProgram(LayeredGraph layers, long most) {
    this.layers = layers;
    long[][] reached = reached();
    long[][] onward = onward();
    for (int m = 0; m < layers.grips().size(); m++) {
      for (int i = 0; i < (m == 0 ? 1 : grips(m - 1).size()); i++) {
        for (int j = 0; j < grips(m).size(); j++) {
          long cost = cost(m, i, j);
          if ((m == 0 ? 0 : reached[m - 1][i]) + cost + onward[m][j] <= most) {
            Variable variable = model.newVariable(m + "/" + i + "/" + j).binary().weight(cost);
            ways.add(new Way(m, i, j, variable));
          }
        }
      }
    }
    flow();
  }

  /** The program of layers, but for ways that lie only on paths dearer than that. */
  static FlowProgram of(LayeredGraph layers, long most) {
    return new FlowProgram(layers, most);
  }

  private ImmutableList<Grip> grips(int m) {
    return layers.grips().get(m);
  }

  private long cost(int m, int i, int j) {
    Moment moment = layers.moments().get(m);
    long own = layers.scoring().cost(PacedNote.of(moment), grips(m).get(j));
    if (m == 0) {
      return own;
    }
    TimedTransition transition = TimedTransition.between(layers.moments().get(m - 1), moment);
    return own + layers.scoring().cost(transition, grips(m - 1).get(i), grips(m).get(j));
  }

  private long[][] reached() {
    long[][] sums = new long[layers.grips().size()][];
    for (int m = 0; m < sums.length; m++) {
      sums[m] = new long[grips(m).size()];
      for (int j = 0; j < sums[m].length; j++) {
        long least = m == 0 ? cost(0, 0, j) : Long.MAX_VALUE;
        for (int i = 0; m > 0 && i < sums[m - 1].length; i++) {
          least = Math.min(least, sums[m - 1][i] + cost(m, i, j));
        }
        sums[m][j] = least;
      }
    }
    return sums;
  }

  private long[][] onward() {
    long[][] sums = new long[layers.grips().size()][];
    int last = sums.length - 1;
    sums[last] = new long[grips(last).size()];
    for (int m = last - 1; m >= 0; m--) {
      sums[m] = new long[grips(m).size()];
      for (int i = 0; i < sums[m].length; i++) {
        long least = Long.MAX_VALUE;
        for (int j = 0; j < sums[m + 1].length; j++) {
          least = Math.min(least, cost(m + 1, i, j) + sums[m + 1][j]);
        }
        sums[m][i] = least;
      }
    }
    return sums;
  }

  /** One unit sets out, and what comes to a grip goes on from it. */
  private void flow() {
    Expression source = model.newExpression("source").level(1);
    List<List<Expression>> nodes = new ArrayList<>();
    for (int m = 0; m < layers.grips().size() - 1; m++) {
      List<Expression> here = new ArrayList<>();
      for (int j = 0; j < grips(m).size(); j++) {
        here.add(model.newExpression("node " + m + "/" + j).level(0));
      }
      nodes.add(here);
    }
    for (Way way : ways) {
      if (way.moment() == 0) {
        source.set(way.variable(), 1);
      } else {
        nodes.get(way.moment() - 1).get(way.from()).set(way.variable(), -1);
      }
      if (way.moment() < nodes.size()) {
        nodes.get(way.moment()).get(way.to()).set(way.variable(), 1);
      }
    }
  }

  private long shown(Way way, Shown what) {
    int m = way.moment();
    Grip now = grips(m).get(way.to());
    return what.of(m, m == 0 ? now : grips(m - 1).get(way.from()), now);
  }

  /** Requires that a path shows so much of something in all. */
  FlowProgram showing(String name, long least, Shown what) {
    Expression sum = model.newExpression(name).lower(least);
    add(sum, what, 1);
    return this;
  }

  private void add(Expression sum, Shown what, int sign) {
    for (Way way : ways) {
      long shown = shown(way, what);
      if (shown > 0) {
        sum.set(way.variable(), sign * shown);
      }
    }
  }

  /**
   * Requires that in one stretch at least of the moments a grip fits at each of them, and that one
   * of these grips stops a string.
   *
   * @param stretches from the first moment to that after the last
   */
  FlowProgram staying(
      List<int[]> stretches, ToLongFunction<Grip> fits, ToLongFunction<Grip> stops) {
    Expression one = model.newExpression("some stretch").lower(1);
    for (int[] stretch : stretches) {
      String name = "stretch from " + stretch[0];
      Variable taken = model.newVariable(name).binary();
      one.set(taken, 1);
      for (int m = stretch[0]; m < stretch[1]; m++) {
        int here = m;
        Expression stays = model.newExpression(name + " at " + m).lower(0).set(taken, -1);
        add(stays, (at, before, now) -> at == here ? fits.applyAsLong(now) : 0, 1);
      }
      Expression stopped = model.newExpression(name + " stops").lower(0).set(taken, -1);
      add(
          stopped,
          (at, before, now) -> at >= stretch[0] && at < stretch[1] ? stops.applyAsLong(now) : 0,
          1);
    }
    return this;
  }

  /** What the cheapest path costs that shows all; empty where none of those left does. */
  OptionalLong least() {
    Optimisation.Result result = model.minimise();
    return result.getState().isOptimal()
        ? OptionalLong.of(Math.round(result.getValue()))
        : OptionalLong.empty();
  }
}
