package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.scoring.Weights;
import java.util.Optional;

/**
 * Learned weights and their quality. Each agreement is a mean over pieces of the mean over the
 * players of a piece.
 *
 * @param examples the training examples, in the order given
 * @param pieces the number of different pieces among them
 * @param strength the strength of the regularization towards the start weights
 * @param weights the weights of all rules
 * @param before the agreement of plans with the start weights
 * @param after the agreement of plans with the learned weights
 * @param leftOut the agreement by leave-one-out cross-validation: of each piece with weights
 *     learned from the other pieces; empty if there is only one piece
 */
public record LearnedWeights(
    ImmutableList<TrainingExample> examples,
    int pieces,
    double strength,
    Weights weights,
    Agreement before,
    Agreement after,
    Optional<Agreement> leftOut) {}
