package fingering.page.live;

import com.google.common.collect.ImmutableList;
import fingering.page.live.StudentView.Choice;

/**
 * The list of audition sheets.
 *
 * @param folder the teacher's folder, as it is shown
 * @param sheets the sheets
 * @param instruments the instruments for a new one
 * @param problems a sentence for each sheet that cannot be read
 */
public record SheetsView(
    String folder,
    ImmutableList<HomeView.Entry> sheets,
    ImmutableList<Choice> instruments,
    ImmutableList<String> problems) {}
