package fingering.playability.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.playability.CheckLevel;
import fingering.playability.Finding;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Checks real quartets. They are played, so unplayable findings must be rare: errors in the files.
 * The scores are not part of the project; {@code -Dquartets=FOLDER} names a folder of compressed
 * MusicXML, {@code -Dlevel=LEVEL} a level other than advanced. {@code mvn -pl fingering-core -am
 * test -Dtest=QuartetCheckTest -Dsurefire.failIfNoSpecifiedTests=false} runs only this test and
 * lists the findings.
 */
class QuartetCheckTest {
  private static final int FILES_PER_ERROR = 8;
  private static final String ADVANCED = "advanced";

  @Test
  void realQuartetsHaveHardlyAnyUnplayableFindings() throws IOException {
    String folder = System.getProperty("quartets", "");
    assumeTrue(
        !folder.isEmpty(), "skipped: give a folder of quartets in MusicXML with -Dquartets=FOLDER");
    Checker checker = Checker.of(CheckLevel.preset(System.getProperty("level", ADVANCED)));
    Map<String, Integer> counts = new TreeMap<>();
    int unplayable = 0;
    List<Path> files = scores(Path.of(folder));
    for (Path file : files) {
      Score score = ScoreReader.read(ScoreFile.read(file));
      ScoreCheck check = checker.check(score);
      unplayable += check.count(Severity.UNPLAYABLE);
      for (Finding finding : check.findings()) {
        counts.merge(finding.severity().label() + ", " + finding.kind().id(), 1, Integer::sum);
        System.out.printf(
            "%s %s %s: %s, %s %s%n",
            file.getFileName(),
            finding.part().name(),
            finding.where(),
            finding.severity().label(),
            finding.reason(),
            finding.suggestion().orElse(""));
      }
    }
    counts.forEach((kind, count) -> System.out.println(count + " " + kind));
    assertThat(files).isNotEmpty();
    assertThat(unplayable).isLessThanOrEqualTo(files.size() / FILES_PER_ERROR);
  }

  private static List<Path> scores(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".mxl")).sorted().toList();
    }
  }
}
