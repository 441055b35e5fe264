package fingering.check;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.Collection;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/**
 * Totals of a check of many scores. It keeps only one line for each score.
 *
 * @param lines the scores that were checked, in order
 * @param refused why files could not be found or checked, a sentence each
 */
public record CheckTally(ImmutableList<Line> lines, ImmutableList<String> refused) {
  /** The exit code if no finding is severe enough. */
  public static final int CLEAN = 0;

  /** The exit code if a finding is severe enough. */
  public static final int FOUND = 1;

  /** The exit code if a file could not be checked. */
  public static final int UNREAD = 2;

  /**
   * A score in a table of scores.
   *
   * @param name the name of its file
   * @param title its title
   * @param counts number of findings by severity, the most severe first
   * @param hardest its hardest part; empty if it has no part
   */
  public record Line(
      String name,
      String title,
      ImmutableMap<Severity, Integer> counts,
      Optional<Hardest> hardest) {

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
   * @param part the name of the part
   * @param grade its difficulty, from 1 to 10
   */
  public record Hardest(String part, int grade) {}

  /** Builds a tally. */
  public static final class Builder {
    private final ImmutableList.Builder<Line> lines = ImmutableList.builder();
    private final ImmutableList.Builder<String> refused = ImmutableList.builder();

    /** Adds a score that was checked. */
    public void add(Line line) {
      lines.add(line);
    }

    /** Adds the reason why a file could not be found or checked. */
    public void refuse(String sentence) {
      refused.add(sentence);
    }

    /** Returns the totals so far. */
    public CheckTally build() {
      return new CheckTally(lines.build(), refused.build());
    }
  }

  /** Number of findings by severity, the most severe first. */
  public static ImmutableMap<Severity, Integer> counts(Collection<Finding> findings) {
    return each(
        severity ->
            (int) findings.stream().filter(finding -> finding.severity() == severity).count());
  }

  private static ImmutableMap<Severity, Integer> each(ToIntFunction<Severity> count) {
    return Stream.of(Severity.values())
        .collect(Maps.toImmutableEnumMap(severity -> severity, count::applyAsInt));
  }

  /** Number of findings in a part by severity, the most severe first. */
  public static ImmutableMap<Severity, Integer> counts(PartCheck part) {
    return counts(part.findings());
  }

  /** Number of findings in all scores by severity, the most severe first. */
  public ImmutableMap<Severity, Integer> total() {
    return each(severity -> lines.stream().mapToInt(line -> line.counts().get(severity)).sum());
  }

  /**
   * The exit code.
   *
   * @param failOn the least severity that counts
   */
  public int exitCode(Severity failOn) {
    if (!refused.isEmpty()) {
      return UNREAD;
    }
    return total().entrySet().stream()
            .anyMatch(count -> count.getKey().atLeast(failOn) && count.getValue() > 0)
        ? FOUND
        : CLEAN;
  }
}
