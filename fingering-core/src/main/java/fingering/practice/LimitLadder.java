package fingering.practice;

import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import java.util.Optional;

/**
 * The ladder of a spot: measures that limit the tempo of a plan, or that the journal says are not
 * clean yet.
 *
 * @param measures the measures
 * @param reason what limits their tempo, without a full stop; empty if only the journal names them
 * @param comfort the highest tempo at the beginning of the piece at which they are comfortable;
 *     empty if only the journal names them
 * @param ladder the ladder for these measures
 */
public record LimitLadder(
    MeasureSpan measures, String reason, Optional<Tempo> comfort, TempoLadder ladder) {}
