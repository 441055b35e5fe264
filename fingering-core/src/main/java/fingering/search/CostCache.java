package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.MapMaker;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.scoring.HeldNotes;
import fingering.scoring.LineContext;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.SharedCosts;
import fingering.scoring.TimedTransition;
import fingering.scoring.Transition;
import fingering.scoring.TransitionTime;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A cache of node and edge costs by one scoring. Music repeats itself: the costs between the grips
 * of two notes are computed once and used wherever the same notes follow each other in the same
 * context, in one passage or, if grips are shared, in many. Missing time is added afterwards, at
 * little expense. Lists of grips are equal only if they are the same object. Safe for use by many
 * threads.
 */
public final class CostCache {
  /** The capacity, in costs of about four bytes each. A full cache is emptied. */
  private static final long CAPACITY = 24_000_000;

  /** Up to this many edges, adding missing time again is cheaper than caching the result. */
  private static final long FEW_EDGES = 100;

  /** The overhead of a table, in costs. */
  private static final long OVERHEAD = 32;

  private final Scoring scoring;
  private final SharedCosts shared;
  private final long capacity;

  /** Weak keys compare by identity: long lists of grips take too long to compare. */
  private final Map<ImmutableList<Grip>, Integer> numbers = new MapMaker().weakKeys().makeMap();

  private final AtomicInteger nextNumber = new AtomicInteger();
  private final Map<NodeKey, NodeCosts> plain = new ConcurrentHashMap<>();
  private final Map<LineKey, NodeCosts> compared = new ConcurrentHashMap<>();
  private final Map<EdgeKey, UntimedEdgeCosts> untimed = new ConcurrentHashMap<>();
  private final Map<TimedKey, EdgeCosts> edges = new ConcurrentHashMap<>();
  private final AtomicLong size = new AtomicLong();

  private record NodeKey(
      int grips, long code, ImmutableIntArray trilled, ImmutableIntArray trilledStruck) {}

  private record LineKey(NodeKey node, LineContext line) {}

  private record EdgeKey(int from, int to, int code, HeldNotes held) {}

  private record TimedKey(EdgeKey edge, TransitionTime time) {}

  /** An empty cache for a scoring. */
  public CostCache(Scoring scoring) {
    this(scoring, CAPACITY);
  }

  /**
   * An empty cache.
   *
   * @param capacity the capacity, in costs
   */
  CostCache(Scoring scoring, long capacity) {
    this.scoring = scoring;
    shared = new SharedCosts(scoring);
    this.capacity = capacity;
  }

  /** The scoring. */
  public Scoring scoring() {
    return scoring;
  }

  /** The number that identifies a list of grips in this cache. */
  int number(ImmutableList<Grip> grips) {
    Integer known = numbers.get(grips);
    return known == null
        ? numbers.computeIfAbsent(grips, list -> nextNumber.getAndIncrement())
        : known;
  }

  /**
   * The costs of the grips of a moment.
   *
   * @param number the {@link #number} of the grips
   */
  NodeCosts of(NoteContext context, int number, ImmutableList<Grip> grips) {
    NodeKey key = new NodeKey(number, context.code(), context.trilled(), context.trilledStruck());
    if (!scoring.compares(grips.get(0).frame().hand())) {
      return plain(key, context, grips);
    }
    LineKey lineKey = new LineKey(key, context.line());
    NodeCosts known = compared.get(lineKey);
    if (known == null) {
      known = plain(key, context, grips).compared(scoring, context, grips);
      makeRoom(2L * grips.size());
      compared.put(lineKey, known);
    }
    return known;
  }

  private NodeCosts plain(NodeKey key, NoteContext context, ImmutableList<Grip> grips) {
    NodeCosts known = plain.get(key);
    if (known == null) {
      known = NodeCosts.plain(scoring, context, grips);
      makeRoom(2L * grips.size());
      plain.put(key, known);
    }
    return known;
  }

  /**
   * The costs of all edges between the grips of two moments.
   *
   * @param from the {@link #number} of the earlier grips
   * @param to the {@link #number} of the later grips
   */
  EdgeCosts of(
      TimedTransition timed,
      int from,
      int to,
      ImmutableList<Grip> before,
      ImmutableList<Grip> now) {
    long count = (long) before.size() * now.size();
    Transition transition = timed.transition();
    EdgeKey key = new EdgeKey(from, to, transition.code(), transition.held());
    if (count <= FEW_EDGES) {
      return untimed(key, transition, before, now).at(timed.time());
    }
    TimedKey timedKey = new TimedKey(key, timed.time());
    EdgeCosts known = edges.get(timedKey);
    if (known == null) {
      known = untimed(key, transition, before, now).at(timed.time());
      makeRoom(count + OVERHEAD);
      edges.put(timedKey, known);
    }
    return known;
  }

  private UntimedEdgeCosts untimed(
      EdgeKey key, Transition transition, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    UntimedEdgeCosts known = untimed.get(key);
    if (known == null) {
      known = new UntimedEdgeCosts(shared.of(transition, before, now), before.size(), now.size());
      makeRoom(2 * ((long) before.size() * now.size() + OVERHEAD));
      untimed.put(key, known);
    }
    return known;
  }

  private void makeRoom(long more) {
    if (size.addAndGet(more) > capacity) {
      plain.clear();
      compared.clear();
      untimed.clear();
      edges.clear();
      size.set(more);
    }
  }
}
