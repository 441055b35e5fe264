package fingering.page.view;

import com.google.common.collect.ImmutableList;
import fingering.check.CheckTally;
import fingering.check.CheckedFile;
import fingering.check.ReportOptions;
import fingering.playability.Finding;
import fingering.playability.ScoreCheck;
import gg.jte.Content;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A checked score.
 *
 * @param id the id of its section
 * @param title its title
 * @param file the name of the file
 * @param remarks remarks on reading it
 * @param leftOut the names of the parts that were not checked; may be empty
 * @param parts the parts
 */
public record CheckedScore(
    String id,
    String title,
    String file,
    ImmutableList<String> remarks,
    String leftOut,
    ImmutableList<CheckedPart> parts) {

  /** The id of the section of a score, by its number from 1. */
  public static String id(int number) {
    return "s" + number;
  }

  /**
   * A score as a report shows it.
   *
   * @param music the measures of findings in notes
   */
  public static CheckedScore of(
      CheckedFile file,
      ScoreCheck check,
      ReportOptions options,
      int number,
      Map<Finding, Content> music) {
    String id = id(number);
    return new CheckedScore(
        id,
        file.title(),
        file.name(),
        ImmutableList.copyOf(check.remarks()),
        check.leftOut().stream().map(part -> part.name()).collect(Collectors.joining(", ")),
        check.parts().stream()
            .map(part -> CheckedPart.of(part, options, id, music))
            .collect(ImmutableList.toImmutableList()));
  }

  /**
   * A row of the table of all scores.
   *
   * @param id the id of the section of the score
   * @param title its title
   * @param hardest the hardest part; empty if there is none
   * @param grade the difficulty of that part
   * @param counts the number of findings of each severity, as text
   */
  public record Row(
      String id, String title, String hardest, int grade, ImmutableList<String> counts) {

    /** The row of a score, by its number from 1. */
    public static Row of(CheckTally.Line line, int number) {
      return new Row(
          CheckedScore.id(number),
          line.title(),
          line.hardest().map(CheckTally.Hardest::part).orElse(""),
          line.hardest().map(CheckTally.Hardest::grade).orElse(0),
          CheckedPart.numbers(line.counts().values()));
    }
  }
}
