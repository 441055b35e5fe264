package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.music.PrintedPart;
import fingering.plan.Comparison;

/**
 * What a page shows.
 *
 * @param title the title, not empty
 * @param heading lines below it: instrument, measures, preset, what was assumed
 * @param comparison the plans, one or several
 * @param printed what is printed of the passage
 * @param buys a sentence for each plan on what it buys and costs
 * @param told what else must be said, by heading: what is new to whom, up to which tempo it goes
 * @param demands what the plans were asked to show, a line each; may be empty
 * @param care the caution on strain, and who has the last word
 */
public record PageContent(
    String title,
    ImmutableList<String> heading,
    Comparison comparison,
    PrintedPart printed,
    ImmutableList<String> buys,
    ImmutableListMultimap<String, String> told,
    ImmutableList<String> demands,
    String care) {}
