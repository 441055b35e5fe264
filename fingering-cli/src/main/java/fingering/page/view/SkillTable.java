package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The table of what an audition asks for.
 *
 * @param columns the column heads
 * @param rows the rows, each with its head first; empty if no skill has to be shown
 */
public record SkillTable(
    ImmutableList<String> columns, ImmutableList<ImmutableList<String>> rows) {}
