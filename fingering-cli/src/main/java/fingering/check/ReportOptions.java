package fingering.check;

import com.google.common.collect.ImmutableList;
import fingering.playability.CheckLevel;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.Severity;

/**
 * The options of a report.
 *
 * @param level the level of the players
 * @param show the least severity that is listed; all are counted
 * @param failOn the least severity that counts for the exit code
 */
public record ReportOptions(CheckLevel level, Severity show, Severity failOn) {

  /** The findings of a part that the report lists. */
  public ImmutableList<Finding> shown(PartCheck part) {
    return part.findings().stream()
        .filter(finding -> finding.severity().atLeast(show))
        .collect(ImmutableList.toImmutableList());
  }
}
