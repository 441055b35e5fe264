package fingering.check;

import com.google.common.collect.ImmutableList;
import fingering.playability.CheckLevel;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.Severity;

/**
 * What is asked of a report.
 *
 * @param level the level for which is checked
 * @param show the least severity that is told; all are counted
 * @param failOn the least severity that counts for the exit code
 */
public record ReportOptions(CheckLevel level, Severity show, Severity failOn) {

  /** The findings of a part that are to be told. */
  public ImmutableList<Finding> shown(PartCheck part) {
    return part.findings().stream()
        .filter(finding -> finding.severity().atLeast(show))
        .collect(ImmutableList.toImmutableList());
  }
}
