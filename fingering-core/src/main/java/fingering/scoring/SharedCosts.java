package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.MapMaker;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.tables.Instrument.HandKind;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Costs of transitions by one scoring. What many transitions have in common is computed once: how
 * the grips of a note are grouped, and what moves of the hand cost. Safe for use by many threads.
 */
public final class SharedCosts {
  private final Scoring scoring;
  private final Map<Frame, Integer> frames = new ConcurrentHashMap<>();
  private final Map<HandKind, AtomicInteger> nextFrames = new ConcurrentHashMap<>();
  private final Map<HandKey, Hand> hands = new ConcurrentHashMap<>();

  /** Weak keys compare by identity: long lists of grips take too long to compare. */
  private final Map<ImmutableList<Grip>, GripGroups> groups = new MapMaker().weakKeys().makeMap();

  private record HandKey(HandKind kind, int code) {}

  /**
   * What the rules that look only at the hand say in one kind of transition.
   *
   * @param points what they charge
   * @param times by timed rule: microseconds needed; unused for rules that look at more
   */
  record Hand(HandCosts points, ImmutableList<HandCosts> times) {}

  /** Nothing computed yet. */
  public SharedCosts(Scoring scoring) {
    this.scoring = scoring;
  }

  /**
   * The costs of all pairs of grips of two moments in a transition, apart from time.
   *
   * @param before the grips of the earlier moment
   * @param now the grips of the later moment, of the same hand
   */
  public TransitionCosts of(
      Transition transition, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    WeightedRules rules = scoring.weighted(now.get(0));
    GripGroups from = groups(before);
    GripGroups to = groups(now);
    Hand hand = hand(transition.ofHand(), now.get(0).frame().hand(), rules);
    return new TransitionCosts(transition, rules, from, to, hand);
  }

  private GripGroups groups(ImmutableList<Grip> grips) {
    GripGroups known = groups.get(grips);
    return known == null
        ? groups.computeIfAbsent(grips, list -> new GripGroups(list, this::number))
        : known;
  }

  /** The number of a frame among those of its kind of hand. */
  private int number(Frame frame) {
    return frames.computeIfAbsent(
        frame,
        key ->
            nextFrames.computeIfAbsent(key.hand(), kind -> new AtomicInteger()).getAndIncrement());
  }

  private Hand hand(Transition transition, HandKind kind, WeightedRules rules) {
    return hands.computeIfAbsent(
        new HandKey(kind, transition.code()), key -> rules.hand(transition));
  }
}
