import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.ScoreReader;
import fingering.playability.CheckLevel;
import fingering.playability.Finding;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import fingering.playability.check.Checker;
import java.nio.file.Path;

/** Lists what a section at a level cannot play in a score, or only with some risk. */
class CheckScore {
  public static void main(String[] arguments) {
    // A checker is thread-safe; reuse it for many scores.
    Checker checker = Checker.of(CheckLevel.preset("intermediate"));
    ScoreCheck check = checker.check(ScoreReader.read(ScoreFile.read(Path.of(arguments[0]))));

    for (Severity severity : Severity.values()) {
      System.out.printf("%s: %d%n", severity.id(), check.count(severity));
    }
    for (Finding finding : check.findings()) {
      if (finding.severity() == Severity.UNPLAYABLE) {
        System.out.printf("%s, %s%n", finding.part().name(), finding.where());
        System.out.printf("  %s%n", finding.reason());
        finding.suggestion().ifPresent(text -> System.out.printf("  %s%n", text));
      }
    }
  }
}
