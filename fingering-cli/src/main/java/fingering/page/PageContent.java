package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.PrintedPart;
import fingering.plan.Comparison;

/**
 * What a page shows.
 *
 * @param title the title, not empty
 * @param heading lines below it: instrument, measures, preset, what was assumed
 * @param comparison the plans, one or several
 * @param printed what is printed of the passage
 * @param buys a sentence for each plan on what it buys and costs, and what else must be said
 * @param tempoHeading whose tempo is meant
 * @param tempi a sentence for each plan on its highest comfortable tempo
 * @param demands what the plans were asked to show, a line each; may be empty
 * @param care the caution on strain, and who has the last word
 */
public record PageContent(
    String title,
    ImmutableList<String> heading,
    Comparison comparison,
    PrintedPart printed,
    ImmutableList<String> buys,
    String tempoHeading,
    ImmutableList<String> tempi,
    ImmutableList<String> demands,
    String care) {}
