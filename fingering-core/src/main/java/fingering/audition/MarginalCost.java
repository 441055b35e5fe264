package fingering.audition;

import fingering.plan.Plan;

/**
 * What it costs to show in one piece what the cheapest plans leave short of a skill.
 *
 * @param piece index of the piece, from 0
 * @param amount how much of the skill the piece then shows
 * @param extra points above the piece's own cheapest plan
 * @param plan the cheapest plan of the piece that shows so much
 */
public record MarginalCost(int piece, int amount, long extra, Plan plan) {}
