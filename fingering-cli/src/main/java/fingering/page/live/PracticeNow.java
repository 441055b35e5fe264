package fingering.page.live;

import com.google.common.collect.ImmutableList;
import fingering.page.view.Ladder;
import fingering.page.view.PractisedSpot;
import java.util.Optional;

/**
 * What to practise now.
 *
 * @param about the goal, and whether it can be reached; empty without a ladder
 * @param day the first day of the ladder, as text; empty without a ladder
 * @param today whether that day is today, not the next one
 * @param brief what to do on that day, in one line
 * @param steps the same, step by step
 * @param top the last tempo of that day; empty without a ladder, or on a day of rest
 * @param ladder the ladder; empty if none can be planned
 * @param missing why there is no ladder, a sentence; empty if there is one
 * @param spots the spots with their exercises
 * @param measures the measures that the ladder practises alone
 * @param progress a picture of the progress in the journal; empty if there is nothing to draw
 * @param lines the latest lines of the journal, the latest first
 * @param problems what is wrong with the journal, a sentence each
 * @param care the warning about strain
 */
public record PracticeNow(
    ImmutableList<String> about,
    String day,
    boolean today,
    String brief,
    ImmutableList<String> steps,
    String top,
    Optional<Ladder> ladder,
    String missing,
    ImmutableList<PractisedSpot> spots,
    ImmutableList<Choice> measures,
    Optional<String> progress,
    ImmutableList<Line> lines,
    ImmutableList<String> problems,
    String care) {

  /**
   * Measures to choose.
   *
   * @param value what is sent
   * @param name what is shown
   */
  public record Choice(String value, String name) {}

  /**
   * A line of the journal.
   *
   * @param when the day and time
   * @param clean what was clean
   * @param note the remark; may be empty
   */
  public record Line(String when, String clean, String note) {}
}
