package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.music.print.PrintedPart;
import fingering.plan.Comparison;

/**
 * The content of a page.
 *
 * @param title the title, not empty
 * @param verdict the answer: which plan to take, and why; a sentence each
 * @param heading the lines below the title: instrument, measures, preset, assumptions
 * @param comparison the plans, one or several
 * @param printed what is printed in the part
 * @param summary remarks on the plans, a sentence each; may be empty
 * @param notes further sentences by heading: what is new to a player, comfortable tempi
 * @param demands the demands on the plans, a line each; may be empty
 * @param care the warning about strain
 */
public record PageContent(
    String title,
    ImmutableList<String> verdict,
    ImmutableList<String> heading,
    Comparison comparison,
    PrintedPart printed,
    ImmutableList<String> summary,
    ImmutableListMultimap<String, String> notes,
    ImmutableList<String> demands,
    String care) {}
