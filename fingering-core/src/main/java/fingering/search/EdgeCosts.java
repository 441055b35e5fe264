package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.HurriedTransitionRule;
import fingering.scoring.Passing;
import fingering.scoring.Scoring;

/**
 * What every way from the grips of one moment to those of the next costs, whatever the time between
 * and the pace of the music. Safe for use by many threads.
 */
final class EdgeCosts {
  /** How many grips are reached. */
  private final int now;

  /** Whether a grip left is open strings alone. */
  private final boolean[] open;

  /** Points. */
  private final Table leisurely;

  /** Points for each hundredth of a second of singing. */
  private final Table paced;

  /** Whether there are any of these. */
  private final boolean paces;

  private final ImmutableList<Haste> hastes;

  /**
   * What one rule charges where time is lacking.
   *
   * @param needed microseconds
   * @param unit microseconds to a unit
   * @param weight points for a unit
   */
  private record Haste(Table needed, long unit, long weight) {
    static Haste of(
        HurriedTransitionRule rule,
        long weight,
        Passing passing,
        ImmutableList<Grip> before,
        ImmutableList<Grip> now) {
      Table needed = new Table(before.size(), now.size());
      for (int i = 0; i < before.size(); i++) {
        for (int j = 0; j < now.size(); j++) {
          needed.put(i, j, rule.needed(passing, before.get(i), now.get(j)));
        }
      }
      return new Haste(needed, rule.unitMicros(), weight);
    }

    long cost(int left, int reached, long micros) {
      long lacking = needed.get(left, reached) - micros;
      return lacking > 0 ? lacking / unit * weight : 0;
    }

    long handicap(int left, int other, long micros, boolean sameTime) {
      long units = Math.max(0, needed.most(left) - micros) / unit;
      if (units > 0 && sameTime) {
        // Each is rounded down by itself, which may part them by one unit more.
        units = Math.min(units, Math.max(0, needed.excess(left, other)) / unit + 1);
      }
      return units * weight;
    }
  }

  private EdgeCosts(
      Scoring scoring, Passing passing, ImmutableList<Grip> left, ImmutableList<Grip> reached) {
    int before = left.size();
    now = reached.size();
    open = new boolean[before];
    leisurely = new Table(before, now);
    paced = new Table(before, now);
    for (int i = 0; i < before; i++) {
      Grip from = left.get(i);
      open[i] = from.open();
      for (int j = 0; j < now; j++) {
        leisurely.put(i, j, scoring.leisurely(passing, from, reached.get(j)));
        paced.put(i, j, scoring.paced(passing, from, reached.get(j)));
      }
    }
    paces = !paced.empty();
    ImmutableList.Builder<Haste> all = ImmutableList.builder();
    for (int r = 0; r < scoring.hurried().size(); r++) {
      long weight = scoring.hurriedWeights().get(r);
      all.add(Haste.of(scoring.hurried().get(r), weight, passing, left, reached));
    }
    hastes = all.build();
  }

  /** The costs between grips in a passing at leisure. */
  static EdgeCosts of(
      Scoring scoring, Passing passing, ImmutableList<Grip> left, ImmutableList<Grip> reached) {
    return new EdgeCosts(scoring, passing, left, reached);
  }

  /** The cost of the way from one grip to another in a passing. */
  long cost(int left, int reached, Passing passing) {
    long cost = leisurely.get(left, reached);
    if (paces) {
      cost += passing.singing() * paced.get(left, reached);
    }
    long micros = passing.micros(open[left]);
    for (int r = 0; r < hastes.size(); r++) {
      cost += hastes.get(r).cost(left, reached, micros);
    }
    return cost;
  }

  /** Lowers the sums with which grips are reached to those of the ways from one of that sum. */
  void reach(int left, long sum, Passing passing, long[] sums) {
    if (late(left, passing)) {
      for (int j = 0; j < now; j++) {
        sums[j] = Math.min(sums[j], sum + cost(left, j, passing));
      }
    } else if (paces && passing.singing() > 0) {
      leisurely.lower(left, sum, passing.singing(), paced, sums);
    } else {
      leisurely.lower(left, sum, sums);
    }
  }

  /** Whether any way from a grip lacks time. */
  private boolean late(int left, Passing passing) {
    long micros = passing.micros(open[left]);
    for (int r = 0; r < hastes.size(); r++) {
      if (hastes.get(r).needed.most(left) > micros) {
        return true;
      }
    }
    return false;
  }

  /**
   * How much dearer a way from one grip can be at the most than the way from another to the same
   * place. A grip whose sum is higher by more than that is worth leaving for no place.
   */
  long handicap(int left, int other, Passing passing) {
    long dearer = leisurely.excess(left, other);
    if (paces && passing.singing() > 0) {
      dearer += passing.singing() * paced.excess(left, other);
    }
    long micros = passing.micros(open[left]);
    boolean sameTime = open[left] == open[other];
    for (int r = 0; r < hastes.size(); r++) {
      dearer += hastes.get(r).handicap(left, other, micros, sameTime);
    }
    return dearer;
  }
}
