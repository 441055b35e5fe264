package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** If one of several files of a command cannot be written, none is. */
final class NewFilesTest {
  /** Too long for a file system, which shows only on writing. */
  private static final String LONG = "n".repeat(300);

  @TempDir Path folder;

  private List<String> there() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private Session practice(Object... more) {
    return Session.of(
        Stream.concat(
                Stream.of(
                    "practice",
                    DEMO,
                    "--choose",
                    "third",
                    "--from",
                    "60",
                    "--to",
                    "96",
                    "--by",
                    "2026-12-12",
                    "--today",
                    "2026-11-21"),
                Stream.of(more))
            .toArray());
  }

  @Test
  void aFailedCalendarLeavesNoExercises() throws IOException {
    Path exercises = folder.resolve("new").resolve("exercises");
    practice("--exercises", exercises, "--calendar", folder.resolve(LONG + ".ics")).refused(2);
    assertThat(there()).isEmpty();
  }

  @Test
  void aFailedOutputLeavesNoCalendarAndKeepsAnOldFolder() throws IOException {
    Path exercises = Files.createDirectory(folder.resolve("exercises"));
    practice(
            "--exercises",
            exercises,
            "--calendar",
            folder.resolve("days.ics"),
            "--output",
            folder.resolve(LONG))
        .refused(2);
    assertThat(there()).containsExactly("exercises");
    assertThat(exercises).isEmptyDirectory();
  }

  @Test
  void twoFilesOfOneNameAreRefusedAndNeitherAppears() throws IOException {
    Path same = folder.resolve("same");
    Session refused = practice("--calendar", same, "--output", same).refused(2);
    assertThat(refused.err()).contains("same exists already; give --output a new name.");
    assertThat(there()).isEmpty();
  }

  @Test
  void aPlanIsNotWrittenIfItCannotBePrinted() throws IOException {
    Session.of(
            "plan",
            DEMO,
            "--write",
            folder.resolve("marked.musicxml"),
            "--output",
            folder.resolve(LONG))
        .refused(2);
    Session.of(
            "scale",
            "D",
            "major",
            "--instrument",
            "viola",
            "--write",
            folder.resolve("scale.musicxml"),
            "--output",
            folder.resolve(LONG))
        .refused(2);
    assertThat(there()).isEmpty();
  }

  @Test
  void anAuditionIsNotWrittenIfItCannotBePrinted() throws IOException {
    Path sheet = DEMO.resolveSibling("hearing.yaml");
    Session.of(
            "audition",
            sheet,
            "--write",
            folder.resolve("hearing"),
            "--output",
            folder.resolve(LONG))
        .refused(2);
    assertThat(there()).isEmpty();
  }

  @Test
  void allFilesAppearTogether() throws IOException {
    practice(
            "--exercises",
            folder.resolve("exercises"),
            "--calendar",
            folder.resolve("days.ics"),
            "--output",
            folder.resolve("practice.txt"))
        .succeeded();
    assertThat(there()).containsExactly("days.ics", "exercises", "practice.txt");
    try (Stream<Path> all = Files.list(folder.resolve("exercises"))) {
      assertThat(all.map(Path::toString)).isNotEmpty().allMatch(name -> name.endsWith(".musicxml"));
    }
  }
}
