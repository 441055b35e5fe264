package fingering.check;

import com.google.common.collect.ImmutableList;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.Collection;
import java.util.Optional;

/**
 * What a check of many scores comes to. Of each score a line is kept and no more.
 *
 * @param lines the scores that were checked, in their order
 * @param refused what could not be found or checked, a sentence each
 */
public record CheckTally(ImmutableList<Line> lines, ImmutableList<String> refused) {
  /** The exit code where nothing was found that weighs enough. */
  public static final int CLEAN = 0;

  /** The exit code where something was found. */
  public static final int FOUND = 1;

  /** The exit code where a file could not be checked. */
  public static final int UNREAD = 2;

  /**
   * A score in a table of scores.
   *
   * @param name the name of its file
   * @param title its title
   * @param counts findings by severity, the gravest first
   * @param hardest the name of its hardest part, and the grade; empty where it has no part
   */
  public record Line(
      String name, String title, ImmutableList<Integer> counts, Optional<Hardest> hardest) {

    /** The line of a score that was checked. */
    public static Line of(CheckedFile file, ScoreCheck check) {
      return new Line(
          file.name(),
          file.title(),
          CheckTally.counts(check.findings()),
          check.hardest().map(part -> new Hardest(part.part().name(), part.difficulty().grade())));
    }
  }

  /**
   * The hardest part of a score.
   *
   * @param part its name
   * @param grade how hard it is, 1 to 10
   */
  public record Hardest(String part, int grade) {}

  /** Findings by severity, the gravest first. */
  public static ImmutableList<Integer> counts(Collection<Finding> findings) {
    ImmutableList.Builder<Integer> counts = ImmutableList.builder();
    for (Severity severity : Severity.values()) {
      counts.add((int) findings.stream().filter(finding -> finding.severity() == severity).count());
    }
    return counts.build();
  }

  /** Findings by severity in a part, the gravest first. */
  public static ImmutableList<Integer> counts(PartCheck part) {
    return counts(part.findings());
  }

  /** Findings by severity in all scores, the gravest first. */
  public ImmutableList<Integer> total() {
    ImmutableList.Builder<Integer> total = ImmutableList.builder();
    for (Severity severity : Severity.values()) {
      total.add(lines.stream().mapToInt(line -> line.counts().get(severity.ordinal())).sum());
    }
    return total.build();
  }

  /** The exit code, where findings of a severity and graver ones count. */
  public int exitCode(Severity failOn) {
    if (!refused.isEmpty()) {
      return UNREAD;
    }
    return total().stream().limit(failOn.ordinal() + 1L).mapToInt(count -> count).sum() > 0
        ? FOUND
        : CLEAN;
  }
}
