package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.MapMaker;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.scoring.HeldNotes;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import fingering.scoring.Transition;
import fingering.scoring.TransitionTime;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The costs of nodes and edges by one scoring. Music repeats itself: the costs between the grips of
 * two notes are reckoned once and serve wherever the same notes follow one another alike, in one
 * passage or, where grips are shared, in many, and to add what haste costs takes next to nothing.
 * Grips are the same where their list is one object. Safe for use by many threads.
 */
public final class CostCache {
  /** When more costs than this are kept all are forgotten, at some four bytes each. */
  private static final long MOST = 24_000_000;

  /** To add what haste costs to so few takes less than to keep it. */
  private static final long FEW = 100;

  /** What a table takes besides, in costs. */
  private static final long BESIDES = 32;

  private final Scoring scoring;
  private final long most;

  /** By identity, which weak keys mean: lists of many grips are too long to be compared. */
  private final Map<ImmutableList<Grip>, Integer> numbers = new MapMaker().weakKeys().makeMap();

  private final AtomicInteger next = new AtomicInteger();
  private final Map<NodeKey, NodeCosts> nodes = new ConcurrentHashMap<>();
  private final Map<EdgeKey, UntimedEdgeCosts> untimed = new ConcurrentHashMap<>();
  private final Map<TimedKey, EdgeCosts> edges = new ConcurrentHashMap<>();
  private final AtomicLong kept = new AtomicLong();

  private record NodeKey(
      int grips, long code, ImmutableIntArray trilled, ImmutableIntArray trilledStruck) {}

  private record EdgeKey(int before, int now, int code, HeldNotes held) {}

  private record TimedKey(EdgeKey edge, TransitionTime time) {}

  /** The costs by a scoring, none of them reckoned yet. */
  public CostCache(Scoring scoring) {
    this(scoring, MOST);
  }

  /** The same, of which not more than so many are kept. */
  CostCache(Scoring scoring, long most) {
    this.scoring = scoring;
    this.most = most;
  }

  /** The scoring. */
  public Scoring scoring() {
    return scoring;
  }

  /** The number by which these grips are known here. */
  int number(ImmutableList<Grip> grips) {
    Integer known = numbers.get(grips);
    return known == null ? numbers.computeIfAbsent(grips, list -> next.getAndIncrement()) : known;
  }

  /**
   * What each of the grips costs by itself.
   *
   * @param number their {@link #number}
   */
  NodeCosts of(NoteContext context, int number, ImmutableList<Grip> grips) {
    NodeKey key = new NodeKey(number, context.code(), context.trilled(), context.trilledStruck());
    NodeCosts known = nodes.get(key);
    if (known == null) {
      known = NodeCosts.of(scoring, context, grips);
      keep(grips.size());
      nodes.put(key, known);
    }
    return known;
  }

  /**
   * What every way from some grips to others costs.
   *
   * @param left the {@link #number} of the grips left
   * @param reached that of the grips reached
   */
  EdgeCostView of(
      TimedTransition timed,
      int left,
      int reached,
      ImmutableList<Grip> before,
      ImmutableList<Grip> now) {
    long ways = (long) before.size() * now.size();
    Transition transition = timed.transition();
    EdgeKey key = new EdgeKey(left, reached, transition.code(), transition.held());
    if (ways <= FEW) {
      return new EdgeCostView(
          untimed(key, transition, before, now).in(timed.time()), timed.slowness());
    }
    TimedKey timedKey = new TimedKey(key, timed.time());
    EdgeCosts known = edges.get(timedKey);
    if (known == null) {
      known = untimed(key, transition, before, now).in(timed.time());
      keep(ways + BESIDES);
      edges.put(timedKey, known);
    }
    return new EdgeCostView(known, timed.slowness());
  }

  private UntimedEdgeCosts untimed(
      EdgeKey key, Transition transition, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    UntimedEdgeCosts known = untimed.get(key);
    if (known == null) {
      known = new UntimedEdgeCosts(scoring, transition, before, now);
      keep(3 * ((long) before.size() * now.size() + BESIDES));
      untimed.put(key, known);
    }
    return known;
  }

  private void keep(long more) {
    if (kept.addAndGet(more) > most) {
      nodes.clear();
      untimed.clear();
      edges.clear();
      kept.set(more);
    }
  }
}
