package fingering.exercise;

import fingering.plan.Plan;

/**
 * A scale with a plan for it.
 *
 * @param exercise the scale
 * @param plan the plan of its {@link ScaleExercise#passage() passage}
 */
public record PlannedScale(ScaleExercise exercise, Plan plan) {}
