package fingering.practice;

import fingering.demand.MeasureSpan;
import fingering.music.Tempo;

/**
 * The ladder of measures that limit a plan.
 *
 * @param measures the measures
 * @param says what limits them
 * @param comfort their highest comfortable tempo, told as a tempo of the beginning
 * @param ladder their own ladder
 */
public record LimitLadder(MeasureSpan measures, String says, Tempo comfort, TempoLadder ladder) {}
