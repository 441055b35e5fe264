package fingering.page.view;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Multimaps;
import fingering.check.CheckTally;
import fingering.check.FindingGroup;
import fingering.check.ReportOptions;
import fingering.playability.Difficulty;
import fingering.playability.Finding;
import fingering.playability.Forces;
import fingering.playability.PartCheck;
import gg.jte.Content;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A part of a checked score.
 *
 * @param id the id of its section
 * @param name its name
 * @param instrument its instrument
 * @param section whether a section plays it, not one player
 * @param measures the number of measures
 * @param remarks remarks on reading it
 * @param difficulty its difficulty
 * @param counts the number of findings of each severity, as text
 * @param findings the findings by severity, the most severe first
 */
public record CheckedPart(
    String id,
    String name,
    String instrument,
    boolean section,
    int measures,
    ImmutableList<String> remarks,
    Difficulty difficulty,
    ImmutableList<String> counts,
    ImmutableList<Findings> findings) {
  private static final String NONE = "–";

  /**
   * Findings of one severity.
   *
   * @param severity the severity
   * @param groups the findings by kind
   */
  public record Findings(String severity, ImmutableList<Group> groups) {}

  /**
   * Findings of one kind.
   *
   * @param title the kind
   * @param number their number
   * @param sentences a sentence for each place, or for several alike
   */
  public record Group(String title, int number, ImmutableList<Shown> sentences) {}

  /**
   * A sentence about findings.
   *
   * @param sentence the sentence
   * @param music the measures of the first finding in notes; empty if they are not drawn
   */
  public record Shown(FindingGroup.Sentence sentence, Optional<Content> music) {}

  /**
   * A part as a report shows it.
   *
   * @param score the id of its score
   * @param music the measures of findings in notes
   */
  public static CheckedPart of(
      PartCheck part, ReportOptions options, String score, Map<Finding, Content> music) {
    return new CheckedPart(
        score + "p" + part.part().number(),
        part.part().name(),
        part.instrument().name(),
        part.forces() == Forces.SECTION,
        part.measures(),
        ImmutableList.copyOf(part.remarks()),
        part.difficulty(),
        numbers(CheckTally.counts(part).values()),
        findings(FindingGroup.of(options.shown(part), part.movements()), music));
  }

  private static ImmutableList<Findings> findings(
      List<FindingGroup> groups, Map<Finding, Content> music) {
    return Multimaps.asMap(Multimaps.index(groups, FindingGroup::severity)).entrySet().stream()
        .map(
            entry ->
                new Findings(
                    capital(entry.getKey().label()),
                    entry.getValue().stream()
                        .map(group -> group(group, music))
                        .collect(ImmutableList.toImmutableList())))
        .collect(ImmutableList.toImmutableList());
  }

  private static Group group(FindingGroup group, Map<Finding, Content> music) {
    return new Group(
        capital(group.kind().title()),
        group.findings().size(),
        group.sentences(Integer.MAX_VALUE - 1).stream()
            .map(sentence -> new Shown(sentence, Optional.ofNullable(music.get(sentence.first()))))
            .collect(ImmutableList.toImmutableList()));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Numbers as text, with a dash for 0. */
  static ImmutableList<String> numbers(Iterable<Integer> counts) {
    ImmutableList.Builder<String> numbers = ImmutableList.builder();
    counts.forEach(count -> numbers.add(count == 0 ? NONE : Integer.toString(count)));
    return numbers.build();
  }
}
