package fingering.exercise;

import fingering.musicxml.reading.Score;
import fingering.plan.Plan;

/**
 * A scale with a plan for it.
 *
 * @param exercise the scale
 * @param score its score, as read back from MusicXML
 * @param plan a plan of its {@link ScaleExercise#passage() passage}
 */
public record PlannedScale(ScaleExercise exercise, Score score, Plan plan) {}
