package fingering.learning;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Iterables;
import fingering.fingerboard.LeftHand;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Learns weights from printed fingerings by minimum-risk training (Smith and Eisner 2006, from
 * memory). The probability of a path is proportional to exp(−cost/T), and the weights minimize the
 * expected difference between a path and the printed marks. Anything that is not printed, such as a
 * position or a string, does not count. The result is deterministic: the same examples give the
 * same weights.
 */
public final class Learner {
  /** The default strength of the regularization towards the start weights. */
  public static final double STRENGTH = 30;

  /** The highest strength. */
  public static final double MAX_STRENGTH = 1_000_000;

  /** The fewest notes with a printed finger in an example. */
  public static final int MIN_FINGERED = 8;

  static double HABIT_STRENGTH = 0.1;

  private static final String CROSSING = "crossing";

  /** The weight of the crossing rule if the start weights have none. */
  private static final long USUAL_CROSSING = 20;

  /** The temperature T, in multiples of the start weight of the crossing rule. */
  private static final int TEMPERATURE = 1;

  private static final long MAX_POINTS = 999_999;

  private final ImmutableList<TrainingExample> examples;
  private final Scoring scoring;
  private final Weights start;
  private final ImmutableList<TrainingPiece> pieces;

  private Learner(
      ImmutableList<TrainingExample> examples,
      Scoring scoring,
      Weights start,
      ImmutableList<TrainingPiece> pieces) {
    this.examples = examples;
    this.scoring = scoring;
    this.start = start;
    this.pieces = pieces;
  }

  /**
   * A learner for some examples. Examples with the same notes are one piece.
   *
   * @param examples the training examples, at least one
   * @param rules the rules whose weights are learned
   * @param start the start weights, one for each rule; a rule with weight 0 is left out
   * @param hand the player's left hand
   * @throws FingeringException if there is no example, or an example has fewer than {@value
   *     #MIN_FINGERED} notes with a printed finger
   * @throws IllegalArgumentException if a rule has no start weight
   * @throws fingering.plan.InfeasibleBriefException if a note is out of the instrument's range
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
    Scoring scoring = Scoring.of(rules, start);
    return new Learner(examples, scoring, start, pieces(examples, scoring, hand));
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

  private static ImmutableList<TrainingPiece> pieces(
      ImmutableList<TrainingExample> examples, Scoring scoring, LeftHand hand) {
    Map<Object, Map<Object, List<TrainingExample>>> grouped = new LinkedHashMap<>();
    for (TrainingExample example : examples) {
      grouped
          .computeIfAbsent(example.pieceKey(), key -> new LinkedHashMap<>())
          .computeIfAbsent(example.versionKey(), key -> new ArrayList<>())
          .add(example);
    }
    return grouped.values().stream()
        .map(
            versions ->
                new TrainingPiece(
                    versions.values().stream()
                        .map(players -> MeasuredVersion.of(players, scoring, hand))
                        .collect(ImmutableList.toImmutableList())))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Learns weights from all pieces. If there are several, it also runs leave-one-out
   * cross-validation.
   *
   * @param strength the strength of the regularization towards the start weights, 0 to {@value
   *     #MAX_STRENGTH}. Half of it times the squared change in the logarithm of a weight is added
   *     to the expected number of different notes per hundred, summed over the pieces
   * @param progress receives the progress
   * @throws FingeringException if the strength is out of range
   */
  public LearnedWeights learn(double strength, LearningProgress progress) {
    if (!(strength >= 0 && strength <= MAX_STRENGTH)) {
      throw new FingeringException(
          "a strength of %s is out of range; give 0 to %.0f".formatted(strength, MAX_STRENGTH));
    }
    Optional<Agreement> leftOut =
        pieces.size() < 2 ? Optional.empty() : Optional.of(crossValidate(strength, progress));
    Weights weights = weights(pieces, strength, progress, 0);
    return new LearnedWeights(
        examples,
        pieces.size(),
        strength,
        weights,
        agreement(pieces, start),
        agreement(pieces, weights),
        leftOut);
  }

  /** The agreement by leave-one-out cross-validation. */
  private Agreement crossValidate(double strength, LearningProgress progress) {
    ImmutableList.Builder<Agreement> agreements = ImmutableList.builder();
    for (int p = 0; p < pieces.size(); p++) {
      TrainingPiece leftOut = pieces.get(p);
      ImmutableList<TrainingPiece> others =
          pieces.stream()
              .filter(piece -> !piece.equals(leftOut))
              .collect(ImmutableList.toImmutableList());
      Weights weights = weights(others, strength, progress, pieces.size() - p);
      agreements.add(agreement(ImmutableList.of(leftOut), weights));
    }
    return Agreement.mean(agreements.build());
  }

  private Agreement agreement(ImmutableList<TrainingPiece> tested, Weights weights) {
    Scoring tuned = Scoring.of(scoring.rules(), weights);
    return Agreement.mean(
        tested.stream()
            .map(piece -> piece.agreement(tuned))
            .collect(ImmutableList.toImmutableList()));
  }

  /** The weights learned from some pieces. */
  private Weights weights(
      ImmutableList<TrainingPiece> training,
      double strength,
      LearningProgress progress,
      int remaining) {
    double temperature = TEMPERATURE * startCrossing();
    double[] startWeights =
        scoring.rules().stream().mapToDouble(rule -> start.of(rule) / temperature).toArray();
    ExpectedLoss loss = new ExpectedLoss(training, startWeights, strength, HABIT_STRENGTH);
    double[] point =
        Lbfgs.minimize(loss, loss.startPoint(), step -> progress.step(remaining, step));
    return points(training, loss.weights(point), temperature);
  }

  /** The start weight of the crossing rule. */
  private double startCrossing() {
    return scoring.rules().stream()
        .filter(rule -> rule.id().equals(CROSSING))
        .mapToLong(start::of)
        .filter(points -> points > 0)
        .findFirst()
        .orElse(USUAL_CROSSING);
  }

  /**
   * Learned weights in whole points. They are scaled so that the crossing rule keeps its start
   * weight. A rule that never occurs in the pieces keeps its start weight too.
   */
  private Weights points(
      ImmutableList<TrainingPiece> training, double[] learned, double temperature) {
    ImmutableList<CostRule> rules = scoring.rules();
    int crossing = Iterables.indexOf(rules, rule -> rule.id().equals(CROSSING));
    double scale =
        crossing >= 0 && learned[crossing] > 0 ? startCrossing() / learned[crossing] : temperature;
    ImmutableMap.Builder<String, Long> points = ImmutableMap.builder();
    IntStream.range(0, rules.size())
        .forEach(
            r ->
                points.put(
                    rules.get(r).id(),
                    training.stream().anyMatch(piece -> piece.occurs(r))
                        ? Math.min(MAX_POINTS, Math.round(learned[r] * scale))
                        : start.of(rules.get(r))));
    return new Weights(points.buildOrThrow());
  }
}
