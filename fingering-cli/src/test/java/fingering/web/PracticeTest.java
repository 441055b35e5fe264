package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hearing, the journal and the ladder of a lesson. */
class PracticeTest {
  private static final Pattern STAMP = Pattern.compile("name=\"stamp\" value=\"([^\"]*)\"");
  private static final String HEARING = "date=2026-12-12&tempo=quarter%3D96";

  @TempDir Path folder;

  private final Visitor.SetClock clock = new Visitor.SetClock();
  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.writeString(
        folder.resolve("lantern.yaml"), "score: demo.musicxml\nmeasures: 17-32  # the end\n");
    server = LocalServer.start(folder, new LessonAdviser(), clock);
    visitor = new Visitor(server).at(server.address());
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String address(String name) throws Exception {
    return visitor.get("/").body().replaceFirst("(?s).*(/open/[\\w-]+)\">" + name + ".*", "$1");
  }

  private String lesson() throws Exception {
    return address("lantern");
  }

  private String post(String path, String form) throws Exception {
    HttpResponse<String> answer = visitor.post(path, form);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return answer.body();
  }

  private String text() throws Exception {
    return Files.readString(folder.resolve("lantern.yaml"));
  }

  private static String stamp(String page) {
    Matcher stamp = STAMP.matcher(page);
    assertThat(stamp.find()).isTrue();
    return stamp.group(1);
  }

  @Test
  void lessonWithoutAHearingSaysWhatToFillIn() throws Exception {
    assertThat(visitor.get(lesson() + "/practice").body())
        .contains("<h1>Practice: Lanterns on the Millrace", ">Back to the plan</a>");
    String now = visitor.get(lesson() + "/ladder").body();
    assertThat(now)
        .contains("Fill in the hearing", "Practice spots", "Nothing is in it yet")
        .doesNotContain("Tempo ladder");
    assertThat(folder.resolve("lantern.journal")).doesNotExist();
  }

  @Test
  void aBareTempoCountsTheBeatOfTheMusic() throws Exception {
    String lesson = lesson();
    visitor.post(lesson + "/choice", "revision=0&part=1&measures=17-32&tempo=half%3D48");
    assertThat(visitor.get(lesson + "/ladder").body()).contains("placeholder=\"half = 72\"");
    assertThat(post(lesson + "/hearing", "revision=1&date=2026-12-12&tempo=52"))
        .contains("value=\"half = 52\"");
    assertThat(post(lesson + "/clean", "clean=40")).contains("from half = 40 to half = 52");
    assertThat(Files.readString(folder.resolve("lantern.journal"))).contains("half=40");
    visitor.post(lesson + "/choice", "revision=3&part=1&measures=17-32&tempo=50");
    assertThat(text()).contains("tempo: half = 50");
  }

  @Test
  void ladderOnThePageHasNoBoxesToTick() throws Exception {
    String lesson = lesson();
    post(lesson + "/hearing", "revision=0&" + HEARING);
    assertThat(post(lesson + "/clean", "clean=quarter%3D66"))
        .contains("Tempo ladder")
        .doesNotContain("class=\"box\"", "Tick what was clean");
  }

  @Test
  void hearingAndCleanTempoMakeTheLadderThatTheCommandMakes() throws Exception {
    String lesson = lesson();
    assertThat(post(lesson + "/hearing", "revision=0&" + HEARING))
        .contains("Play it once, and press", "value=\"2026-12-12\"", "value=\"quarter = 96\"");
    assertThat(text())
        .isEqualTo(
            """
            score: demo.musicxml
            measures: 17-32  # the end
            part: Viola
            hearing: {date: 2026-12-12, tempo: quarter = 96}
            """);

    String now = post(lesson + "/clean", "clean=quarter%3D66&note=bow+quiet");
    assertThat(text()).endsWith("journal: lantern.journal\n");
    String day = LocalDate.now(clock) + "";
    assertThat(Files.readString(folder.resolve("lantern.journal")))
        .contains("| quarter=66 | all | bow quiet")
        .contains(day);
    assertThat(now)
        .contains("Next, on Wednesday 2 December 2026", "Start at quarter = ", "in steps of")
        .contains("<strong>next</strong>", "Written in lantern.journal: clean at quarter = 66.")
        .contains("<figure class=\"progress\"><svg")
        .containsOnlyOnce("class=\"care\"");

    String printed =
        Session.of(
                "practice",
                "--lesson",
                folder.resolve("lantern.yaml"),
                "--today",
                day,
                "--output",
                folder.resolve("week.html"))
            .succeeded()
            .out();
    assertThat(printed).isEmpty();
    String rows = Files.readString(folder.resolve("week.html"));
    assertThat(cells(rows)).isNotEmpty().isEqualTo(cells(now));
  }

  @Test
  void daysOfRestAndTheMetronomeOfTheStudentShapeTheLadderAsTheCommandDoes() throws Exception {
    String lesson = lesson();
    post(lesson + "/clean", "clean=quarter%3D66");
    String every = post(lesson + "/hearing", "revision=1&" + HEARING);
    String now =
        post(
            lesson + "/hearing",
            "revision=2&" + HEARING + "&rest-sat=yes&rest-sun=yes&traditional=yes");
    assertThat(text()).endsWith("ladder: {rest-days: [sat, sun], metronome: traditional}\n");
    assertThat(now)
        .contains(
            "name=\"rest-sat\" value=\"yes\" checked", "name=\"traditional\" value=\"yes\" checked")
        .doesNotContain("name=\"rest-mon\" value=\"yes\" checked")
        .contains("marks of a traditional (Maelzel) metronome");
    assertThat(cells(now)).isNotEqualTo(cells(every));
    String day = LocalDate.now(clock) + "";
    for (String[] typed :
        new String[][] {
          {"--lesson", folder.resolve("lantern.yaml") + ""},
          {
            Session.DEMO + "",
            "--measures=17-32",
            "--to=quarter=96",
            "--by=2026-12-12",
            "--journal=" + folder.resolve("lantern.journal"),
            "--rest-days=sat,sun",
            "--metronome=traditional"
          }
        }) {
      Path page = folder.resolve("week" + typed.length + ".html");
      Session.of(
              Stream.of(
                      List.of("practice"),
                      List.of(typed),
                      List.of("--today", day, "--output", page))
                  .flatMap(List::stream)
                  .toArray())
          .succeeded();
      assertThat(cells(Files.readString(page))).isEqualTo(cells(now));
    }

    post(lesson + "/hearing", "revision=3&" + HEARING);
    assertThat(text()).doesNotContain("ladder:");
  }

  private static String cells(String page) {
    return Pattern.compile("<td[^>]*>(\\d+)")
        .matcher(page.replaceFirst("(?s).*<table class=\"days\">(.*?)</table>.*", "$1"))
        .results()
        .map(cell -> cell.group(1))
        .toList()
        .toString();
  }

  @Test
  void dayOfTheStepIsTodayBeforePractising() throws Exception {
    Files.writeString(folder.resolve("lantern.journal"), "2026-11-29 18:30 | quarter=66 | all |\n");
    Files.writeString(
        folder.resolve("lantern.yaml"),
        """
        score: demo.musicxml
        hearing: {date: 2026-12-12, tempo: quarter = 96}
        journal: lantern.journal
        """);
    assertThat(visitor.get(lesson() + "/ladder").body())
        .contains(
            "Today, Tuesday 1 December 2026", "<tr class=\"first\"><th scope=\"row\">Tue 1 Dec")
        .contains("<strong>today</strong>");
  }

  @Test
  void badDayHoldsTheTempoAndCanBeTakenBack() throws Exception {
    String lesson = lesson();
    post(lesson + "/hearing", "revision=0&" + HEARING);
    String good = post(lesson + "/clean", "clean=quarter%3D66");
    String before = Files.readString(folder.resolve("lantern.journal"));

    clock.advance(24 * 3600);
    String bad = post(lesson + "/bad", "note=&stamp=" + stamp(good));
    assertThat(Files.readString(folder.resolve("lantern.journal")))
        .endsWith(" | - | all | bad day\n");
    assertThat(bad).contains("Written in lantern.journal: bad day.").doesNotContain("outside");

    // A server that was started again knows it as well.
    server.close();
    server = LocalServer.start(folder, new LessonAdviser(), clock);
    visitor = new Visitor(server).at(server.address());
    lesson = lesson();
    String again = visitor.get(lesson + "/ladder").body();
    assertThat(again).contains("Remove this line");

    String back = post(lesson + "/back", "stamp=" + stamp(again));
    assertThat(Files.readString(folder.resolve("lantern.journal"))).isEqualTo(before);
    assertThat(back).contains("The line was removed").doesNotContain("Remove this line");
  }

  @Test
  void journalEditedElsewhereWinsAndThePageSaysSo() throws Exception {
    String lesson = lesson();
    String page = post(lesson + "/clean", "clean=quarter%3D66");
    Path journal = folder.resolve("lantern.journal");
    Files.writeString(
        journal, "2026-12-01 20:00 | quarter=70 | all | at home\n", StandardOpenOption.APPEND);

    HttpResponse<String> back = visitor.post(lesson + "/back", "stamp=" + stamp(page));
    assertThat(back.body()).contains("lantern.journal was changed outside this page");
    assertThat(Files.readString(journal)).contains("quarter=66", "at home");
    String more = post(lesson + "/clean", "clean=quarter%3D72&stamp=" + stamp(page));
    assertThat(more)
        .contains("lantern.journal was changed outside this page", "at home", "quarter = 72");
    assertThat(Files.readString(journal)).contains("quarter=66", "at home", "quarter=72");
  }

  @Test
  void measuresOfASpotHaveALineOfTheirOwn() throws Exception {
    String lesson = lesson();
    post(lesson + "/hearing", "revision=0&date=2026-12-12&tempo=quarter%3D132");
    String now = post(lesson + "/clean", "clean=quarter%3D66");
    String spot = now.replaceFirst("(?s).*<option value=\"([\\d-]+)\">.*", "$1");
    post(lesson + "/clean", "clean=quarter%3D60&measures=" + spot);
    assertThat(Files.readString(folder.resolve("lantern.journal")))
        .endsWith("| quarter=60 | " + spot + " |\n");
    assertThat(visitor.post(lesson + "/clean", "clean=60&measures=99").body())
        .contains("There is no measure 99");
  }

  @Test
  void wrongEntriesAreSentencesAndNothingIsWritten() throws Exception {
    String lesson = lesson();
    String before = text();
    assertThat(visitor.post(lesson + "/clean", "clean=").body()).contains("fastest tempo that was");
    assertThat(visitor.post(lesson + "/clean", "clean=fast").body()).contains("is not a tempo");
    HttpResponse<String> wrong = visitor.post(lesson + "/hearing", "revision=0&date=soon");
    assertThat(wrong.statusCode()).isEqualTo(400);
    assertThat(wrong.body()).contains("is not a date");
    assertThat(text()).isEqualTo(before);
    assertThat(folder.resolve("lantern.journal")).doesNotExist();

    assertThat(post(lesson + "/hearing", "revision=0&date=2026-01-01&tempo=quarter%3D96"))
        .contains("Play it once");
    assertThat(post(lesson + "/clean", "clean=quarter%3D66")).contains("choose a later date");
  }

  @Test
  void hearingCanBeUndoneOnThePageOfTheLesson() throws Exception {
    String lesson = lesson();
    post(lesson + "/hearing", "revision=0&" + HEARING);
    post(lesson + "/undo", "revision=1");
    assertThat(text()).doesNotContain("hearing");
    assertThat(post(lesson + "/hearing", "revision=0&" + HEARING)).contains("in another window");
    assertThat(text()).doesNotContain("hearing");
  }

  @Test
  void journalOutsideOfTheFolderIsNotTouched(@TempDir Path outside) throws Exception {
    Path other = Files.writeString(outside.resolve("notes.txt"), "Dear diary\n");
    Files.writeString(folder.resolve("lantern.yaml"), "score: demo.musicxml\njournal: " + other);
    assertThat(visitor.post(lesson() + "/clean", "clean=quarter%3D66").body())
        .contains("is not in the folder of the lesson");
    assertThat(visitor.get(lesson() + "/ladder").body()).doesNotContain("diary");
    assertThat(other).hasContent("Dear diary");
  }

  @Test
  void fileThatIsNoJournalStaysAsItIs() throws Exception {
    Path mine = Files.writeString(folder.resolve("lantern.journal"), "Dear diary\n");
    post(lesson() + "/clean", "clean=quarter%3D66");
    assertThat(mine).hasContent("Dear diary");
    assertThat(text()).contains("journal: lantern-2.journal");

    Files.writeString(
        folder.resolve("lantern.yaml"), "score: demo.musicxml\njournal: lantern.journal\n");
    assertThat(visitor.post(lesson() + "/clean", "clean=quarter%3D66").body())
        .contains("lantern.journal is not a journal");
    assertThat(mine).hasContent("Dear diary");
  }

  @Test
  void droppedScoreIsKeptInTheFolderWhenItIsPractised() throws Exception {
    String dropped =
        visitor
            .drop("mine.musicxml", Files.readAllBytes(Session.DEMO))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    post(dropped + "/clean", "clean=quarter%3D66");
    assertThat(folder.resolve("mine.musicxml")).exists();
    assertThat(folder.resolve("mine.yaml")).content().contains("journal: mine.journal");
    assertThat(folder.resolve("mine.journal")).content().contains("quarter=66");
  }
}
