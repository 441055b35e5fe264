package fingering.practice;

import fingering.demand.MeasureSpan;
import fingering.music.Tempo;

/**
 * The ladder of measures that limit the tempo of a plan.
 *
 * @param measures the measures
 * @param reason what limits their tempo, without a full stop
 * @param comfort the highest tempo at the beginning of the piece at which they are comfortable
 * @param ladder the ladder for these measures
 */
public record LimitLadder(MeasureSpan measures, String reason, Tempo comfort, TempoLadder ladder) {}
