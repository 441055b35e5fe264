package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The commands practice and journal. */
final class PracticeTest {
  private static final Path IMKE = Path.of("..", "docs", "examples", "imke.yaml");

  @TempDir Path folder;

  private static Session practice(Object... more) {
    List<Object> words =
        new ArrayList<>(List.of("practice", DEMO, "--choose", "third", "--player", IMKE));
    words.addAll(Arrays.asList(more));
    return Session.of(words.toArray());
  }

  private Session add(Object... more) {
    List<Object> words =
        new ArrayList<>(List.of("journal", "add", "--journal", folder.resolve("my.journal")));
    words.addAll(Arrays.asList(more));
    return Session.of(words.toArray());
  }

  @Test
  void ladderListsTodaysStepsAndTheWarning() {
    Session ladder =
        practice(
                "--from",
                "60",
                "--to",
                "96",
                "--by",
                "2026-12-12",
                "--today",
                "2026-11-21",
                "--rest-days",
                "sun")
            .succeeded();
    assertThat(ladder.lines()).allMatch(line -> line.length() <= 80);
    assertThat(ladder.out())
        .contains("Saturday 21 November 2026\n")
        .contains("clicks: eighth = 104")
        .containsPattern("Sun 22 Nov +rest\n")
        .containsPattern("Sat 12 Dec.*the day\n")
        .contains("stop if it hurts");
  }

  @Test
  void reachableTempoIsGivenIfTimeIsShort() {
    assertThat(
            practice("--from", "60", "--to", "96", "--by", "2026-11-27", "--today", "2026-11-21")
                .succeeded()
                .out())
        .contains("do not reach the goal in time, but they reach quarter =")
        .contains("The steps do not get larger.");
  }

  @Test
  void nextDayStartsFromTheCleanTempoInTheJournal() {
    add("--clean", "quarter=60", "--at", "2026-11-21T17:00").succeeded();
    add("--clean", "half=27", "--at", "2026-11-23T17:00").succeeded();
    Session ladder =
        practice(
                "--to",
                "96",
                "--by",
                "2026-12-12",
                "--today",
                "2026-11-23",
                "--journal",
                folder.resolve("my.journal"))
            .succeeded();
    assertThat(ladder.out())
        .contains("from quarter = 54 to quarter = 96")
        .contains("Tuesday 24 November 2026\n");
  }

  @Test
  void badLinesOfTheJournalAreReported() throws IOException {
    Path journal = folder.resolve("my.journal");
    Files.writeString(journal, "went well\n2026-11-23 17:00 | quarter=63 | all |\n");
    Session show = Session.of("journal", "show", "--journal", journal).succeeded();
    assertThat(show.out()).contains("quarter = 63").contains("line 1 is skipped but kept");
    assertThat(
            practice(
                    "--to",
                    "96",
                    "--by",
                    "2026-12-12",
                    "--today",
                    "2026-11-24",
                    "--journal",
                    journal)
                .succeeded()
                .out())
        .contains("line 1 is skipped but kept");
  }

  @Test
  void impossiblePracticeIsRejectedInOneSentence() {
    practice("--to", "96", "--by", "2026-12-12", "--today", "2026-11-24").refused(2);
    practice("--from", "60", "--to", "96", "--by", "2026-11-12", "--today", "2026-11-24")
        .refused(2);
    practice("--from", "60", "--to", "96", "--by", "soon").refused(2);
    practice("--from", "60", "--to", "96", "--by", "2026-12-12", "--rest-days", "s").refused(2);
    add().refused(2);
    Session.of("journal").refused(2);
    Session.of("journal", "show", "--journal", folder.resolve("none"), "--format", "svg")
        .refused(2);
  }

  @Test
  void progressPictureHasADotForEveryCleanTempo() throws Exception {
    add("--clean", "quarter=60", "--at", "2026-11-21T17:00").succeeded();
    add("--note", "too <tired> & cold", "--at", "2026-11-22T17:00").succeeded();
    add("--clean", "half=33", "--at", "2026-11-23T17:00").succeeded();
    add("--clean", "quarter=72", "--measures", "13-14", "--at", "2026-11-23T17:30").succeeded();
    Path picture = folder.resolve("progress.svg");
    Session.of(
            "journal",
            "show",
            "--journal",
            folder.resolve("my.journal"),
            "--to",
            "quarter=96",
            "--output",
            picture)
        .succeeded();
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(Files.readString(picture))));
    assertThat(document.getElementsByTagName("circle").getLength()).isEqualTo(3);
    assertThat(document.getElementsByTagName("desc").item(0).getTextContent())
        .contains("from 60 on Saturday 21 November 2026 to 72 on Monday 23 November 2026");
  }

  @Test
  void exercisesAreWrittenToAFolderAndReplacedWhileNobodyHasChangedThem() throws IOException {
    Path exercises = folder.resolve("exercises");
    Object[] words = {
      "--from",
      "60",
      "--to",
      "96",
      "--by",
      "2026-12-12",
      "--today",
      "2026-11-21",
      "--exercises",
      exercises
    };
    assertThat(practice(words).succeeded().out()).contains("Practice spots", "Written to");
    try (Stream<Path> files = Files.list(exercises)) {
      List<Path> written = files.toList();
      assertThat(written).isNotEmpty();
      for (Path file : written) {
        Session.of("plan", file, "--keep-printed").succeeded();
      }
      practice(words).succeeded();
      Files.writeString(
          written.get(0),
          Files.readString(written.get(0)).replaceFirst("<score", "<!-- --><score"));
    }
    practice(words).refused(2);
  }

  @Test
  void circlesAreListed() {
    Session marks = Session.of("marks", DEMO).succeeded();
    assertThat(marks.lines()).allMatch(line -> line.length() <= 80);
    assertThat(marks.out().indexOf("Sudden changes")).isLessThan(marks.out().indexOf("Other"));
    assertThat(marks.out()).contains("p subito", "pizz.: 0.6 s of rest before it");
  }

  @Test
  void helpFitsEightyColumns() {
    for (List<String> command :
        List.of(
            List.of("practice", "--help"),
            List.of("marks", "--help"),
            List.of("journal", "--help"),
            List.of("journal", "add", "--help"),
            List.of("journal", "show", "--help"))) {
      assertThat(Session.of(command.toArray()).succeeded().lines())
          .allMatch(line -> line.length() <= 80);
    }
  }

  @Test
  void cleanTempoAboveTheGoalIsReported() {
    String day = "2026-12-12";
    String today = "2026-11-21";
    assertThat(
            practice("--from", "96", "--to", "60", "--by", day, "--today", today).succeeded().out())
        .contains("already faster than the goal", "Or did you swap --from and --to?")
        .containsPattern("4 steps\\s+below\\s+the\\s+goal\\.")
        .doesNotContain("Small steps");
    assertThat(
            practice("--from", "60", "--to", "60", "--by", day, "--today", today).succeeded().out())
        .contains("The goal is already clean: keep it that way.", "4 steps below")
        .doesNotContain("Small steps", "--from");
  }
}
