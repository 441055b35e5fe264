package fingering.page.view;

import com.google.common.collect.ImmutableList;
import fingering.practice.Circle;
import java.util.Optional;

/**
 * The content of a practice page.
 *
 * @param title the title, not empty
 * @param heading the goal, its date, and whether it can be reached
 * @param day the first day, as text
 * @param today what to do on the first day
 * @param spots practice spots; may be empty
 * @param ladder the tempo ladder
 * @param circles what to circle in the part
 * @param progress an SVG picture of the progress in the journal; empty if there is none
 * @param journal further remarks on the journal; may be empty
 * @param care the warning about strain
 */
public record PracticeContent(
    String title,
    ImmutableList<String> heading,
    String day,
    ImmutableList<String> today,
    ImmutableList<PractisedSpot> spots,
    Ladder ladder,
    ImmutableList<Circle> circles,
    Optional<String> progress,
    ImmutableList<String> journal,
    String care) {

  /** Whether there is something to show from a journal. */
  public boolean hasJournal() {
    return progress.isPresent() || !journal.isEmpty();
  }
}
