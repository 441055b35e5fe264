package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A command replaces what the program wrote, while nobody has changed it, and nothing else. */
final class OwnFilesTest {
  private static final Path MILL = DEMO.resolveSibling("../examples/mill.musicxml");

  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"marked.musicxml", "marked.xml", "marked.mxl"})
  void aMarkedScoreIsReplacedByAnotherPlan(String name) throws IOException {
    Path marked = folder.resolve(name);
    Session.of("plan", MILL, "--choose", "first", "--write", marked).succeeded();
    byte[] first = Files.readAllBytes(marked);

    Session.of("plan", MILL, "--choose", "third", "--write", marked).succeeded();

    assertThat(Files.readAllBytes(marked)).isNotEqualTo(first);
    assertThat(Session.of("plan", marked, "--keep-printed").succeeded().out()).contains("3rd");
    assertThat(names()).containsExactly(name);
  }

  @Test
  void aMarkedScoreThatSomebodyEditedIsNotReplaced() throws IOException {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", MILL, "--write", marked).succeeded();
    String edited = Files.readString(marked).replaceFirst("Rain on the Mill", "Rain");
    Files.writeString(marked, edited);

    assertThat(Session.of("plan", MILL, "--write", marked).refused(2).err())
        .contains("already exists and is not overwritten");
    assertThat(marked).content().isEqualTo(edited);
    assertThat(names()).containsExactly("marked.musicxml");
  }

  @Test
  void theScoreThatIsReadIsNeverReplaced() throws IOException {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", MILL, "--write", marked).succeeded();
    byte[] before = Files.readAllBytes(marked);

    Session.of("plan", marked, "--write", marked).refused(2);
    Session.of("plan", marked, "--output", marked).refused(2);
    Session.of("plan", MILL, "--output", marked).refused(2);
    assertThat(marked).hasBinaryContent(before);
  }

  @Test
  void aMarkedScoreIsMarkedAgainUnderOneMark() throws IOException {
    Path marked = folder.resolve("marked.musicxml");
    Path again = folder.resolve("again.musicxml");
    Session.of("plan", MILL, "--write", marked).succeeded();
    Session.of("plan", marked, "--write", again).succeeded();

    assertThat(Files.readString(again)).containsOnlyOnce("Written by Fingering");
    Session.of("plan", marked, "--write", again).succeeded();
  }

  @ParameterizedTest
  @ValueSource(strings = {"plans.html", "plans.svg"})
  void aPageIsReplacedUntilSomebodyChangesIt(String name) throws IOException {
    Path page = folder.resolve(name);
    Session.of("plan", MILL, "--choose", "first", "--output", page).succeeded();
    Session.of("plan", MILL, "--choose", "third", "--output", page).succeeded();
    assertThat(page).content().contains("3rd");
    String changed = Files.readString(page) + "\n";
    Files.writeString(page, changed);

    assertThat(Session.of("plan", MILL, "--output", page).refused(2).err())
        .contains("exists already; give --output a new name");
    assertThat(page).content().isEqualTo(changed);
    assertThat(names()).containsExactly(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan.txt", "plan.json"})
  void textAndJsonHaveNoMarkAndAreNotReplaced(String name) {
    Path file = folder.resolve(name);
    Session.of("plan", MILL, "--output", file).succeeded();
    Session.of("plan", MILL, "--output", file).refused(2);
  }

  @Test
  void aLinkIsNotReplaced() throws IOException {
    Path page = folder.resolve("plans.html");
    Session.of("plan", MILL, "--output", page).succeeded();
    Path link = Files.createSymbolicLink(folder.resolve("link.html"), page);
    Session.of("plan", MILL, "--output", link).refused(2);
  }

  private static Session practice(Path calendar, Path output) {
    return Session.of(
        "practice",
        MILL,
        "--from",
        "60",
        "--to",
        "70",
        "--by",
        "2026-12-12",
        "--today",
        "2026-12-01",
        "--calendar",
        calendar,
        "--output",
        output);
  }

  @Test
  void aCalendarIsReplacedAndComesBackIfAnotherFileCannotAppear() throws IOException {
    Path calendar = folder.resolve("days.ics");
    practice(calendar, folder.resolve("one.html")).succeeded();
    assertThat(Files.readString(calendar).lines()).allMatch(line -> line.length() <= 75);
    byte[] before = Files.readAllBytes(calendar);

    practice(calendar, folder.resolve("n".repeat(300))).refused(2);

    assertThat(calendar).hasBinaryContent(before);
    practice(calendar, folder.resolve("one.html")).succeeded();
    assertThat(names()).containsExactly("days.ics", "one.html");
    Files.copy(MILL, calendar, StandardCopyOption.REPLACE_EXISTING);
    practice(calendar, folder.resolve("two.html")).refused(2);
    assertThat(calendar).hasSameBinaryContentAs(MILL);
  }
}
