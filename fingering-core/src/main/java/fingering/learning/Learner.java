package fingering.learning;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Iterables;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.fingerboard.LeftHand;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.Habit;
import fingering.scoring.HabitNetwork;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Learns weights, and on request a {@link Habit}, from printed fingerings. The probability of a
 * path is proportional to exp(−cost/T). The weights minimize the expected difference between a path
 * and the printed marks (minimum-risk training, Smith and Eisner 2006, from memory), mixed with the
 * negative log likelihood of the marks if the {@link LearningMethod} says so. A habit that does not
 * help with pieces left out of learning is dropped. Anything that is not printed, such as a
 * position or a string, does not count. Each kind of hand is learned by itself. The result is
 * deterministic: the same examples give the same weights.
 */
public final class Learner {
  /** The fewest notes with a printed finger in an example. */
  public static final int MIN_FINGERED = 8;

  /** The most rounds of cross-validation; with more pieces, each round leaves out several. */
  private static final int MAX_ROUNDS = 5;

  /**
   * A habit is kept only if with it, weights learned from other pieces agree with this fraction of
   * the notes more.
   */
  private static final double WORTHWHILE = 0.02;

  private static final String CROSSING = "crossing";

  /** The weight of the crossing rule if the start weights have none. */
  private static final long USUAL_CROSSING = 20;

  /** The numbers of a network are rounded to this many parts of one. */
  private static final double ROUNDING = 1000;

  private final ImmutableList<TrainingExample> examples;
  private final ImmutableList<CostRule> rules;
  private final Scoring scoring;
  private final Weights start;
  private final LeftHand hand;

  private Learner(
      ImmutableList<TrainingExample> examples,
      ImmutableList<CostRule> rules,
      Weights start,
      LeftHand hand) {
    this.examples = examples;
    this.rules = rules;
    this.start = start;
    this.hand = hand;
    scoring = Scoring.of(rules, new Weights(start.points()));
  }

  /**
   * A learner for some examples. Examples with the same notes are one piece.
   *
   * @param examples the training examples, at least one
   * @param rules the rules whose weights are learned
   * @param start the start weights, one for each rule; a rule with weight 0 is left out
   * @param hand the player's left hand
   * @throws FingeringException if there is no example, or an example has fewer than {@value
   *     #MIN_FINGERED} notes with a printed finger, or every note is out of the instrument's range
   * @throws IllegalArgumentException if a rule has no start weight
   */
  public static Learner of(
      ImmutableList<TrainingExample> examples,
      ImmutableList<CostRule> rules,
      Weights start,
      LeftHand hand) {
    if (examples.isEmpty()) {
      throw new FingeringException("There is nothing to learn from; give a fingered score.");
    }
    examples.forEach(Learner::refuseUnfingered);
    return new Learner(
        examples.stream()
            .map(one -> new TrainingExample(one.name(), Planner.playable(one.passage(), hand)))
            .collect(ImmutableList.toImmutableList()),
        rules,
        start,
        hand);
  }

  private static void refuseUnfingered(TrainingExample example) {
    if (example.fingered() < MIN_FINGERED) {
      throw new FingeringException(
          "%s has %s with a printed finger in %s, and learning needs %d: finger more notes, or choose another part or score."
              .formatted(
                  example.name(),
                  switch (example.fingered()) {
                    case 0 -> "no note";
                    case 1 -> "1 note";
                    default -> example.fingered() + " notes";
                  },
                  example.passage().partName(),
                  MIN_FINGERED));
    }
  }

  /**
   * Learns weights from all pieces. If there are several, it also runs cross-validation.
   *
   * @param progress receives the progress
   */
  public LearnedWeights learn(LearningMethod method, LearningProgress progress) {
    Set<HandKind> hands = new LinkedHashSet<>();
    examples.forEach(example -> hands.add(example.passage().instrument().kind()));
    Map<HandKind, ImmutableList<TrainingPiece>> pieces = new LinkedHashMap<>();
    hands.forEach(kind -> pieces.put(kind, pieces(kind, method)));
    List<Agreement> leftOut = new ArrayList<>();
    Weights weights = start;
    for (Map.Entry<HandKind, ImmutableList<TrainingPiece>> entry : pieces.entrySet()) {
      HandKind kind = entry.getKey();
      ImmutableList<TrainingPiece> some = entry.getValue();
      LearningMethod own = method;
      ImmutableList<Agreement> agreements = crossValidate(kind, some, method, progress);
      if (method.habit() && !agreements.isEmpty()) {
        ImmutableList<Agreement> without =
            crossValidate(kind, some, method.withoutHabit(), progress);
        if (gain(agreements, without) < WORTHWHILE) {
          own = method.withoutHabit();
          agreements = without;
        }
      }
      leftOut.addAll(agreements);
      weights = learned(kind, some, own, progress, 0).in(weights, hands.size() == 1);
    }
    ImmutableList<TrainingPiece> all =
        pieces.values().stream().flatMap(List::stream).collect(ImmutableList.toImmutableList());
    return new LearnedWeights(
        examples,
        all.size(),
        method.strength(),
        weights,
        Agreement.mean(agreements(all, start)),
        Agreement.mean(agreements(all, weights)),
        leftOut.isEmpty()
            ? Optional.empty()
            : Optional.of(Agreement.mean(ImmutableList.copyOf(leftOut))));
  }

  private static double gain(ImmutableList<Agreement> some, ImmutableList<Agreement> others) {
    return Agreement.mean(some).stringAndFinger() - Agreement.mean(others).stringAndFinger();
  }

  /** The pieces of one kind of hand. */
  ImmutableList<TrainingPiece> pieces(HandKind kind, LearningMethod method) {
    Map<Object, Map<Object, List<TrainingExample>>> grouped = new LinkedHashMap<>();
    for (TrainingExample example : examples) {
      if (example.passage().instrument().kind() == kind) {
        grouped
            .computeIfAbsent(example.pieceKey(), key -> new LinkedHashMap<>())
            .computeIfAbsent(example.versionKey(), key -> new ArrayList<>())
            .add(example);
      }
    }
    return grouped.values().stream()
        .map(versions -> TrainingPiece.of(versions.values(), scoring, hand, method.tempi()))
        .collect(ImmutableList.toImmutableList());
  }

  /** The agreement of each piece with weights learned from others; none of a single piece. */
  private ImmutableList<Agreement> crossValidate(
      HandKind kind,
      ImmutableList<TrainingPiece> pieces,
      LearningMethod method,
      LearningProgress progress) {
    ImmutableList.Builder<Agreement> agreements = ImmutableList.builder();
    int rounds = pieces.size() == 1 ? 0 : Math.min(MAX_ROUNDS, pieces.size());
    for (int round = 0; round < rounds; round++) {
      ImmutableList.Builder<TrainingPiece> leftOut = ImmutableList.builder();
      ImmutableList.Builder<TrainingPiece> others = ImmutableList.builder();
      for (int p = 0; p < pieces.size(); p++) {
        (p % rounds == round ? leftOut : others).add(pieces.get(p));
      }
      Learned learned = learned(kind, others.build(), method, progress, rounds - round);
      agreements.addAll(agreements(leftOut.build(), learned.in(start, false)));
    }
    return agreements.build();
  }

  private ImmutableList<Agreement> agreements(
      ImmutableList<TrainingPiece> tested, Weights weights) {
    Scoring tuned = Scoring.of(rules, weights);
    return tested.stream()
        .map(piece -> piece.agreement(tuned))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * What was learned for one kind of hand.
   *
   * @param network the numbers of the habit network, in points; none if no habit was learned
   */
  record Learned(HandKind hand, ImmutableMap<String, Long> points, ImmutableDoubleArray network) {
    /**
     * Some weights with these instead.
     *
     * @param alone whether these points become those of all hands
     */
    Weights in(Weights weights, boolean alone) {
      Map<String, Long> all = new LinkedHashMap<>(weights.points());
      points.forEach(
          (rule, value) -> {
            if (alone) {
              all.remove(Weights.key(hand, rule));
            }
            all.put(alone ? rule : Weights.key(hand, rule), value);
          });
      Map<HandKind, ImmutableDoubleArray> networks =
          new LinkedHashMap<>(weights.habit().networks());
      networks.remove(hand);
      if (!network.isEmpty()) {
        networks.put(hand, network);
        all.putIfAbsent(Habit.ID, 1L);
      }
      return new Weights(ImmutableMap.copyOf(all), new Habit(ImmutableMap.copyOf(networks)));
    }
  }

  /** Learns from some pieces of one kind of hand. */
  Learned learned(
      HandKind kind,
      ImmutableList<TrainingPiece> training,
      LearningMethod method,
      LearningProgress progress,
      int remaining) {
    double temperature = startCrossing(kind);
    double[] startWeights =
        scoring.rules().stream().mapToDouble(rule -> start.of(rule, kind) / temperature).toArray();
    ExpectedLoss loss = new ExpectedLoss(training, startWeights, method);
    double[] point =
        Lbfgs.minimize(loss, loss.startPoint(), step -> progress.step(remaining, step));
    double[] weights = loss.weights(point);
    double scale = scale(weights, temperature);
    return new Learned(
        kind, points(kind, training, weights, scale), network(loss.network(point), scale));
  }

  /** The start weight of the crossing rule. */
  private double startCrossing(HandKind kind) {
    return scoring.rules().stream()
        .filter(rule -> rule.id().equals(CROSSING))
        .mapToLong(rule -> start.of(rule, kind))
        .filter(points -> points > 0)
        .findFirst()
        .orElse(USUAL_CROSSING);
  }

  /** Points per natural unit, so that the crossing rule keeps its start weight. */
  private double scale(double[] learned, double temperature) {
    int crossing = Iterables.indexOf(scoring.rules(), rule -> rule.id().equals(CROSSING));
    return crossing >= 0 && learned[crossing] > 0 ? temperature / learned[crossing] : temperature;
  }

  /** Learned weights in whole points. A rule that never occurs keeps its start weight. */
  private ImmutableMap<String, Long> points(
      HandKind kind, ImmutableList<TrainingPiece> training, double[] learned, double scale) {
    ImmutableMap.Builder<String, Long> points = ImmutableMap.builder();
    IntStream.range(0, scoring.rules().size())
        .forEach(
            r -> {
              CostRule rule = scoring.rules().get(r);
              points.put(
                  rule.id(),
                  training.stream().anyMatch(piece -> piece.occurs(r))
                      ? Math.min(Scoring.MAX_WEIGHT, Math.round(learned[r] * scale))
                      : start.of(rule, kind));
            });
    return points.buildOrThrow();
  }

  private static ImmutableDoubleArray network(double[] numbers, double scale) {
    double[] inPoints = numbers.clone();
    if (inPoints.length > 0) {
      HabitNetwork.scale(inPoints, scale);
    }
    for (int i = 0; i < inPoints.length; i++) {
      inPoints[i] = Math.rint(inPoints[i] * ROUNDING) / ROUNDING;
    }
    return ImmutableDoubleArray.copyOf(inPoints);
  }
}
