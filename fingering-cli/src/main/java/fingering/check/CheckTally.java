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
   * @param part its name
   * @param grade how hard it is, 1 to 10
   */
  public record Hardest(String part, int grade) {}

  /** A tally that is still being made. */
  public static final class Counting {
    private final ImmutableList.Builder<Line> lines = ImmutableList.builder();
    private final ImmutableList.Builder<String> refused = ImmutableList.builder();

    /** Adds a score that was checked. */
    public void add(Line line) {
      lines.add(line);
    }

    /** Adds what could not be found or checked. */
    public void refuse(String sentence) {
      refused.add(sentence);
    }

    /** What it has come to. */
    public CheckTally tally() {
      return new CheckTally(lines.build(), refused.build());
    }
  }

  /** Findings by severity, the gravest first. */
  public static ImmutableMap<Severity, Integer> counts(Collection<Finding> findings) {
    return each(
        severity ->
            (int) findings.stream().filter(finding -> finding.severity() == severity).count());
  }

  private static ImmutableMap<Severity, Integer> each(ToIntFunction<Severity> counting) {
    return Stream.of(Severity.values())
        .collect(Maps.toImmutableEnumMap(severity -> severity, counting::applyAsInt));
  }

  /** Findings by severity in a part, the gravest first. */
  public static ImmutableMap<Severity, Integer> counts(PartCheck part) {
    return counts(part.findings());
  }

  /** Findings by severity in all scores, the gravest first. */
  public ImmutableMap<Severity, Integer> total() {
    return each(severity -> lines.stream().mapToInt(line -> line.counts().get(severity)).sum());
  }

  /** The exit code, where findings of a severity and graver ones count. */
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
