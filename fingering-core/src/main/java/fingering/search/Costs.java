package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.scoring.Passing;
import fingering.scoring.Scoring;
import fingering.scoring.Stroke;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The costs of nodes and edges by one scoring. Music repeats itself: the costs between the grips of
 * two notes are reckoned once and serve wherever the same notes follow one another alike, in one
 * passage or, where grips are shared, in many. Grips are the same where their list is one object.
 * Not safe for use by many threads.
 */
public final class Costs {
  /** When more costs than this are kept all are forgotten, at some 16 bytes each. */
  private static final long MOST = 4_000_000;

  private final Scoring scoring;
  private final IdentityHashMap<ImmutableList<Grip>, Integer> numbers = new IdentityHashMap<>();
  private final List<ImmutableList<Grip>> lists = new ArrayList<>();
  private final Map<NodeKey, NodeCosts> nodes = new HashMap<>();
  private final Map<EdgeKey, EdgeCosts> edges = new HashMap<>();
  private long kept;

  private record NodeKey(
      int grips, long code, ImmutableIntArray trilled, ImmutableIntArray trilledStruck) {}

  private record EdgeKey(int before, int now, long code, ImmutableIntArray held) {}

  /** The costs by a scoring, none of them reckoned yet. */
  public Costs(Scoring scoring) {
    this.scoring = scoring;
  }

  /** The scoring. */
  public Scoring scoring() {
    return scoring;
  }

  /** The number by which these grips are known here. */
  int number(ImmutableList<Grip> grips) {
    Integer known = numbers.get(grips);
    if (known == null) {
      known = lists.size();
      numbers.put(grips, known);
      lists.add(grips);
    }
    return known;
  }

  /** What each of the grips of that number costs by itself. */
  NodeCosts of(Stroke stroke, int grips) {
    NodeKey key = new NodeKey(grips, stroke.code(), stroke.trilled(), stroke.trilledStruck());
    NodeCosts known = nodes.get(key);
    if (known == null) {
      known = NodeCosts.of(scoring, stroke.unsung(), lists.get(grips));
      keep(lists.get(grips).size());
      nodes.put(key, known);
    }
    return known;
  }

  /** What every way from the grips of one number to those of another costs. */
  EdgeCosts of(Passing passing, int before, int now) {
    EdgeKey key = new EdgeKey(before, now, passing.code(), passing.held());
    EdgeCosts known = edges.get(key);
    if (known == null) {
      known = EdgeCosts.of(scoring, passing.unsung(), lists.get(before), lists.get(now));
      keep((long) lists.get(before).size() * lists.get(now).size());
      edges.put(key, known);
    }
    return known;
  }

  private void keep(long more) {
    kept += more;
    if (kept > MOST) {
      nodes.clear();
      edges.clear();
      kept = more;
    }
  }
}
