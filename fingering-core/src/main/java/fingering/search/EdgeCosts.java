package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Passing;
import fingering.scoring.PassingCosts;
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
    long cost(int left, int reached, long micros) {
      long lacking = needed.get(left, reached) - micros;
      return lacking > 0 ? lacking / unit * weight : 0;
    }

    /** Adds what is dearer for haste. */
    void handicaps(int left, long micros, boolean[] open, long[] handicaps) {
      long most = Math.max(0, needed.most(left) - micros) / unit;
      if (most == 0) {
        return;
      }
      long[] more = needed.excess(left);
      for (int i = 0; i < open.length; i++) {
        // Where both have the same time, rounding of each parts them by no more than one unit.
        long same = Math.max(0, more[i]) / unit + 1;
        handicaps[i] += (open[i] == open[left] ? Math.min(most, same) : most) * weight;
      }
    }
  }

  private EdgeCosts(
      Scoring scoring, Passing passing, ImmutableList<Grip> left, ImmutableList<Grip> reached) {
    int before = left.size();
    now = reached.size();
    open = new boolean[before];
    leisurely = new Table(before, now);
    paced = new Table(before, now);
    hastes = hastes(scoring, before, now);
    PassingCosts costs = scoring.leisurely(passing);
    for (int i = 0; i < before; i++) {
      Grip from = left.get(i);
      open[i] = from.open();
      for (int j = 0; j < now; j++) {
        Grip to = reached.get(j);
        boolean shifts = costs.shifts(from, to);
        leisurely.put(i, j, costs.of(from, to, shifts));
        paced.put(i, j, scoring.paced(passing, from, to));
        for (int r = 0; shifts && r < hastes.size(); r++) {
          hastes.get(r).needed.put(i, j, scoring.hurried().get(r).needed(passing, from, to));
        }
      }
    }
    paces = !paced.empty();
  }

  private static ImmutableList<Haste> hastes(Scoring scoring, int before, int now) {
    ImmutableList.Builder<Haste> all = ImmutableList.builder();
    for (int r = 0; r < scoring.hurried().size(); r++) {
      long unit = scoring.hurried().get(r).unitMicros();
      all.add(new Haste(new Table(before, now), unit, scoring.hurriedWeights().get(r)));
    }
    return all.build();
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
   * By grip left, how much dearer a way from one can be at the most than the way from that to the
   * same place. A grip whose sum is higher by more than that is worth leaving for no place.
   *
   * @param handicaps where they are put
   */
  void handicaps(int left, Passing passing, long[] handicaps) {
    long[] points = leisurely.excess(left);
    System.arraycopy(points, 0, handicaps, 0, open.length);
    if (paces && passing.singing() > 0) {
      long[] more = paced.excess(left);
      for (int i = 0; i < open.length; i++) {
        handicaps[i] += passing.singing() * more[i];
      }
    }
    long micros = passing.micros(open[left]);
    for (int r = 0; r < hastes.size(); r++) {
      hastes.get(r).handicaps(left, micros, open, handicaps);
    }
  }
}
