package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.scoring.Weights;
import java.util.Optional;

/**
 * Weights that were learned, and how well they do. Agreements are means over pieces, and in each
 * piece over its players.
 *
 * @param examples what they were learned from, in the order given
 * @param pieces how many pieces these are
 * @param strength how strongly the start weights held
 * @param weights points for every rule
 * @param before agreement of the plans by the start weights
 * @param after agreement of the plans by the learned weights
 * @param leftOut agreement on each piece of the plans by weights learned from the others alone;
 *     empty where there is only one piece
 */
public record LearnedWeights(
    ImmutableList<TrainingExample> examples,
    int pieces,
    double strength,
    Weights weights,
    Agreement before,
    Agreement after,
    Optional<Agreement> leftOut) {}
