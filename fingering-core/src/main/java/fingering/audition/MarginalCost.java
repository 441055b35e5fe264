package fingering.audition;

import fingering.plan.Plan;

/**
 * The cost of showing the missing amount of a skill in a single piece.
 *
 * @param piece index of the piece in the audition, from 0
 * @param amount the amount of the skill that the piece then shows
 * @param extraCost points above the cheapest plan of the piece
 * @param plan the cheapest plan of the piece that shows this amount
 */
public record MarginalCost(int piece, int amount, long extraCost, Plan plan) {}
