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
 * Learns the weights under which plans are expected to differ least from what players printed. A
 * path has the probability exp(−cost/T), made to sum to 1 over all paths of the passage, and the
 * loss expected under it is made least (minimum risk: Smith, Eisner 2006, from memory); whatever is
 * not printed, the position or the string, is left open. Nothing is left to chance: the same
 * examples give the same weights.
 */
public final class Learner {
  /** How strongly the start weights hold where nothing else is asked for. */
  public static final double STRENGTH = 30;

  /** The strongest hold that can be asked for. */
  public static final double STRONGEST = 1_000_000;

  /** Notes with a printed finger that an example must have. */
  public static final int LEAST_FINGERED = 8;

  private static final String CROSSING = "crossing";

  /** Points of half a crossing where the start does not say. */
  private static final long USUAL_CROSSING = 20;

  /** T in halves of a crossing at the start weights. */
  private static final int TEMPERATURE = 1;

  private static final long MOST_POINTS = 999_999;

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
   * Measures the examples by the rules, equal music once. Examples with equal notes are one piece.
   *
   * @param examples what to learn from, at least one
   * @param rules the rules to weigh
   * @param start the weights to start from, one for every rule; what weighs 0 is left out
   * @param hand the hand that is to play
   * @throws FingeringException if there is no example, an example has fewer than {@value
   *     #LEAST_FINGERED} notes with a printed finger, or a rule has no start weight
   * @throws fingering.plan.InfeasibleBriefException if a note lies out of the instrument's range
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
    if (example.fingered() < LEAST_FINGERED) {
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
                  LEAST_FINGERED));
    }
  }

  private static ImmutableList<TrainingPiece> pieces(
      ImmutableList<TrainingExample> examples, Scoring scoring, LeftHand hand) {
    Map<Object, Map<Object, List<TrainingExample>>> sorted = new LinkedHashMap<>();
    for (TrainingExample example : examples) {
      sorted
          .computeIfAbsent(example.piece(), piece -> new LinkedHashMap<>())
          .computeIfAbsent(example.music(), music -> new ArrayList<>())
          .add(example);
    }
    return sorted.values().stream()
        .map(
            musics ->
                new TrainingPiece(
                    musics.values().stream()
                        .map(players -> MeasuredPiece.of(players, scoring, hand))
                        .collect(ImmutableList.toImmutableList())))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Learns from all pieces, and for a fair measure from all but each.
   *
   * @param strength how strongly the start weights hold: half of it times the square of how far the
   *     logarithm of a weight moves stands against the notes in a hundred, of every piece, that
   *     differ; 0 to {@value #STRONGEST}
   * @throws FingeringException if the strength is out of range
   */
  public LearnedWeights learn(double strength, LearningProgress progress) {
    if (!(strength >= 0 && strength <= STRONGEST)) {
      throw new FingeringException(
          "the start weights cannot hold with a strength of %s; give 0 to %.0f"
              .formatted(strength, STRONGEST));
    }
    Optional<Agreement> leftOut =
        pieces.size() < 2 ? Optional.empty() : Optional.of(leftOut(strength, progress));
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

  private Agreement leftOut(double strength, LearningProgress progress) {
    ImmutableList.Builder<Agreement> each = ImmutableList.builder();
    for (int p = 0; p < pieces.size(); p++) {
      TrainingPiece out = pieces.get(p);
      ImmutableList<TrainingPiece> others =
          pieces.stream()
              .filter(piece -> !piece.equals(out))
              .collect(ImmutableList.toImmutableList());
      Weights weights = weights(others, strength, progress, pieces.size() - p);
      each.add(agreement(ImmutableList.of(out), weights));
    }
    return Agreement.mean(each.build());
  }

  private Agreement agreement(ImmutableList<TrainingPiece> some, Weights weights) {
    Scoring by = Scoring.of(scoring.rules(), weights);
    return Agreement.mean(
        some.stream().map(piece -> piece.agreement(by)).collect(ImmutableList.toImmutableList()));
  }

  private Weights weights(
      ImmutableList<TrainingPiece> from, double strength, LearningProgress progress, int left) {
    double natural = TEMPERATURE * startCrossing();
    double[] begin =
        scoring.rules().stream().mapToDouble(rule -> start.of(rule) / natural).toArray();
    ExpectedLoss loss = new ExpectedLoss(from, begin, strength);
    double[] point = Lbfgs.least(loss, loss.startPoint(), step -> progress.step(left, step));
    return points(from, loss.weights(point), natural);
  }

  private double startCrossing() {
    return scoring.rules().stream()
        .filter(rule -> rule.id().equals(CROSSING))
        .mapToLong(start::of)
        .filter(points -> points > 0)
        .findFirst()
        .orElse(USUAL_CROSSING);
  }

  /** Whole points, with a crossing where it was, and rules that never occur too. */
  private Weights points(ImmutableList<TrainingPiece> from, double[] learned, double natural) {
    ImmutableList<CostRule> rules = scoring.rules();
    int crossing = Iterables.indexOf(rules, rule -> rule.id().equals(CROSSING));
    double scale =
        crossing >= 0 && learned[crossing] > 0 ? startCrossing() / learned[crossing] : natural;
    ImmutableMap.Builder<String, Long> points = ImmutableMap.builder();
    IntStream.range(0, rules.size())
        .forEach(
            r ->
                points.put(
                    rules.get(r).id(),
                    from.stream().anyMatch(piece -> piece.occurs(r))
                        ? Math.min(MOST_POINTS, Math.round(learned[r] * scale))
                        : start.of(rules.get(r))));
    return new Weights(points.buildOrThrow());
  }
}
