package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs all commands that read a score on all its parts. None may fail, and a refusal is one
 * sentence.
 *
 * <p>Other scores are not part of the project: {@code -Dquartets=FOLDER} names a folder of them,
 * and {@code mvn test -Dtest=EveryPartTest -Dsurefire.failIfNoSpecifiedTests=false} runs only this
 * test.
 */
final class EveryPartTest {
  private static final String SCORES = "glob:**.{musicxml,mxl}";

  @TempDir Path folder;

  private final SoftAssertions softly = new SoftAssertions();
  private int runs;

  @Test
  void noCommandFailsOnAPartOfTheExamples() throws IOException {
    runAll(Path.of("..", "docs"));
  }

  @Test
  void noCommandFailsOnAPartOfOtherScores() throws IOException {
    String others = System.getProperty("quartets", "");
    assumeTrue(!others.isEmpty(), "skipped: give a folder of scores with -Dquartets=FOLDER");
    runAll(Path.of(others));
  }

  private void runAll(Path scores) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(scores)) {
      files = all.filter(scores.getFileSystem().getPathMatcher(SCORES)::matches).sorted().toList();
    }
    assertThat(files).isNotEmpty();
    for (Path file : files) {
      run(file, "check");
      run(file, "check", "--format", "json");
      run(file, "check", "--format", "html");
      Score score = ScoreReader.read(ScoreFile.read(file));
      for (int part = 0; part < score.parts().size(); part++) {
        PartInfo info = score.parts().get(part);
        if (info.isString()) {
          runOnPart(file, Integer.toString(part + 1));
        }
      }
    }
    System.out.println(runs + " commands on " + files.size() + " scores");
    softly.assertAll();
  }

  private void runOnPart(Path file, String part) throws IOException {
    Path made = Files.createTempDirectory(folder, "part");
    run(file, "compare", "--part", part);
    run(file, "compare", "--part", part, "--format", "json");
    run(file, "compare", "--part", part, "--format", "html");
    run(file, "plan", "--part", part, "--best", "2");
    run(file, "plan", "--part", part, "--write", made.resolve("marked.musicxml"));
    run(file, "plan", "--part", part, "--sparing", "--write", made.resolve("sparing.musicxml"));
    run(file, "plan", "--part", part, "--only", "part", "--write", made.resolve("part.musicxml"));
    run(file, "plan", "--part", part, "--format", "svg");
    run(file, "marks", "--part", part);
    run(file, "handout", "--part", part, "--output", made.resolve("handout.html"));
    List<Object> practice =
        List.of("--part", part, "--from", "40", "--to", "60", "--by", "2026-12-12");
    practice(file, practice, "--today", "2026-11-21", "--exercises", made.resolve("exercises"));
    practice(file, practice, "--today", "2026-11-21", "--format", "html");
    Path sheet = made.resolve("sheet.yaml");
    Files.writeString(
        sheet,
        "pieces:%n  - score: '%s'%n    part: '%s'%n"
            .formatted(file.toAbsolutePath().toString().replace("'", "''"), part));
    record(Session.of("audition", sheet), List.of("audition", file, part));
  }

  private void practice(Path file, List<Object> shared, Object... more) {
    List<Object> options = new ArrayList<>(shared);
    options.addAll(List.of(more));
    run(file, "practice", options.toArray());
  }

  private void run(Path file, String command, Object... options) {
    List<Object> words = new ArrayList<>(List.of(command, file));
    words.addAll(List.of(options));
    record(Session.of(words.toArray()), words);
  }

  private void record(Session session, List<Object> words) {
    runs++;
    softly.assertThat(session.code()).as("%s: %s", words, session.err()).isLessThanOrEqualTo(2);
    if (session.code() == 2) {
      softly.assertThat(session.complaints()).as("%s", words).hasSize(1);
    }
    softly.assertThat(session.err()).as("%s", words).doesNotContain("Exception", "null");
  }
}
