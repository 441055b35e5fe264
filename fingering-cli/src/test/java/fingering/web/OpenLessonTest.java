package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.lesson.StoredLesson;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of a lesson is changed on the page: notes, demands, undo, and what is saved. */
class OpenLessonTest {
  private static final Pattern WAY =
      Pattern.compile("name=\"way\" value=\"([^\"]+)\" aria-pressed=\"(true|false)\"");
  private static final Pattern REVISION = Pattern.compile("id=\"revision\" value=\"(\\d+)\"");
  private static final Instant NOON = Instant.parse("2026-12-01T12:00:00Z");

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String address = "";
  private String revision = "0";

  @BeforeEach
  void start() throws Exception {
    server = LocalServer.start(folder, new LessonAdviser(), Clock.fixed(NOON, ZoneOffset.UTC));
    visitor = new Visitor(server).at(server.address());
    HttpResponse<String> dropped = visitor.drop("demo.musicxml", Files.readAllBytes(Session.DEMO));
    address = dropped.headers().firstValue("Location").orElseThrow();
    visitor.get(address + "/plans");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private HttpResponse<String> post(String what, String... fields) throws Exception {
    StringBuilder form = new StringBuilder("revision=" + revision);
    for (int i = 0; i < fields.length; i += 2) {
      form.append('&').append(fields[i]).append('=').append(encoded(fields[i + 1]));
    }
    HttpResponse<String> answer = visitor.post(address + "/" + what, form.toString());
    Matcher next = REVISION.matcher(answer.body());
    if (next.find()) {
      revision = next.group(1);
    }
    return answer;
  }

  private static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  /** The ways to play a note, best first; true is the one that the plan has. */
  private Map<String, Boolean> ways(int moment) throws Exception {
    String note = visitor.get(address + "/note?moment=" + moment).body();
    return WAY.matcher(note)
        .results()
        .collect(
            Collectors.toMap(
                way -> way.group(1),
                way -> Boolean.valueOf(way.group(2)),
                (one, other) -> one,
                java.util.LinkedHashMap::new));
  }

  private String other(int moment) throws Exception {
    return ways(moment).entrySet().stream()
        .filter(way -> !way.getValue())
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  private String now(int moment) throws Exception {
    return ways(moment).entrySet().stream()
        .filter(Map.Entry::getValue)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void demandsOnOtherMeasuresAreLeftOutUntilUndo() throws Exception {
    post("choice", "measures", "17-32");
    post("demand", "key", "avoid", "value", "fourth-finger", "from", "18", "to", "18");
    post("fix", "moment", "0", "way", other(0));
    assertThat(saved()).contains("fix: 17.1=", "avoid: fourth-finger@18");

    HttpResponse<String> fewer = post("choice", "measures", "18-24");
    assertThat(fewer.statusCode()).isEqualTo(Reply.DONE);
    assertThat(fewer.body()).contains("Demands on other measures are left out now.");
    assertThat(saved()).contains("avoid: fourth-finger@18").doesNotContain("fix");
    assertThat(post("choice", "measures", "18-25").body()).doesNotContain("Demands on other");

    post("undo");
    post("undo");
    assertThat(saved()).contains("fix: 17.1=", "measures: 17-32");
  }

  private List<String> files() throws Exception {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }

  private String saved() throws Exception {
    return Files.readString(folder.resolve("demo.yaml"));
  }

  @Test
  void waysOfANoteAreListedWithThatOfThePlanAndTheirPrices() throws Exception {
    String note = visitor.get(address + "/note?moment=12").body();

    assertThat(note).contains("Measure 4, beat 3.5: G4", "as now", "more shift");
    assertThat(ways(12).values()).containsOnlyOnce(true).hasSizeGreaterThan(3);
  }

  @Test
  void chosenWayIsKeptInAPlanOfOnesOwn() throws Exception {
    String way = other(12);
    String answer = post("fix", "moment", "12", "way", way).body();

    assertThat(answer)
        .contains("value=\"mine\" checked", "data-locked=\"12\"", "Demands on this plan");
    assertThat(answer.replaceFirst("(?s).*data-moments=\"([^\"]*)\".*", "$1").split(" "))
        .contains("12");
    assertThat(now(12)).isEqualTo(way);
    assertThat(saved()).contains("name: mine", "choose: partly", "fix: 4.3.5=" + way);
  }

  @Test
  void everyLineWithAnotherFingeringIsSentAtOnceOrLater() throws Exception {
    String way = other(12);
    String answer =
        visitor
            .post(
                address + "/fix",
                "revision=0&moment=12&way=" + encoded(way) + "&first=s-0&last=s-0")
            .body();
    assertThat(answer).contains("id=\"s-0\"", "/rest").doesNotContain("id=\"s-24\"");

    String rest = visitor.get(address + "/rest").body();
    assertThat(rest).contains("class=\"system\"").doesNotContain("id=\"s-0\"");
    assertThat(visitor.get(address + "/rest").body()).doesNotContain("class=\"system\"");
  }

  @Test
  void unlockedNoteIsPlannedAfresh() throws Exception {
    String before = now(12);
    post("fix", "moment", "12", "way", other(12));
    post("free", "moment", "12");

    assertThat(now(12)).isEqualTo(before);
    assertThat(saved()).contains("name: mine").doesNotContain("fix:");
  }

  @Test
  void digitChoosesAFingerAndANumeralAString() throws Exception {
    post("fix", "moment", "12", "way", "/4");
    assertThat(now(12)).contains("/4");
    post("fix", "moment", "12", "way", "III");
    assertThat(now(12)).startsWith("III/");
  }

  @Test
  void everyChangeCanBeUndoneAndDoneAgain() throws Exception {
    String before = now(12);
    String way = other(12);
    post("fix", "moment", "12", "way", way);
    post("plan", "plan", "third");
    assertThat(saved()).startsWith("score: demo.musicxml").contains("choose: third");

    post("undo");
    assertThat(now(12)).isEqualTo(way);
    post("undo");
    assertThat(now(12)).isEqualTo(before);
    assertThat(post("undo").body()).contains("id=\"undo\"");
    post("redo");
    assertThat(now(12)).isEqualTo(way);
    assertThat(saved()).contains("name: mine");
  }

  @Test
  void undoGoesOnAfterARestart() throws Exception {
    post("fix", "moment", "12", "way", other(12));
    post("plan", "plan", "third");
    post("undo");
    server.close();
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
    address = link("demo.yaml");
    revision = "0";

    post("undo");
    assertThat(saved()).doesNotContain("mine");
    post("redo");
    assertThat(saved()).contains("name: mine");
    post("redo");
    assertThat(saved()).contains("choose: third");
  }

  @Test
  void historyThatIsDamagedCostsNothing() throws Exception {
    post("plan", "plan", "third");
    server.close();
    Files.writeString(folder.resolve(".undo").resolve("demo.yaml"), "--- # past\nnot a lesson");
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
    address = link("demo.yaml");

    assertThat(visitor.get(address + "/plans").body()).contains("value=\"third\" checked");
  }

  /** The address of a file in the list of the first page. */
  private String link(String file) throws Exception {
    Matcher link =
        Pattern.compile("href=\"(/open/[\\w-]+)\">" + Pattern.quote(file))
            .matcher(visitor.get("/").body());
    assertThat(link.find()).isTrue();
    return link.group(1);
  }

  @Test
  void demandOnMeasuresIsKeptAndPriced() throws Exception {
    String answer = post("demand", "from", "4", "to", "7", "key", "stay", "value", "3").body();

    assertThat(answer).contains("<span>Keep the hand in 3rd position");
    assertThat(saved()).contains("stay: 3@4-7");
    assertThat(visitor.get(address + "/demands").body()).contains("without it:");

    post("drop", "key", "stay", "value", "3@4-7");
    assertThat(saved()).doesNotContain("stay:");
  }

  @Test
  void demandsThatContradictEachOtherAreShownTogether() throws Exception {
    post("demand", "from", "4", "to", "7", "key", "stay", "value", "3");
    String before = saved();
    HttpResponse<String> conflict =
        post("demand", "from", "5", "to", "6", "key", "stay", "value", "1");

    assertThat(conflict.statusCode()).isEqualTo(409);
    assertThat(conflict.headers().firstValue("HX-Retarget")).contains("#trouble");
    assertThat(conflict.body())
        .contains("No fingering of", "name=\"dropped\" value=\"stay=3@4-7\"", "instead");
    assertThat(saved()).isEqualTo(before);

    post("demand", "from", "5", "to", "6", "key", "stay", "value", "1", "dropped", "stay=3@4-7");
    assertThat(saved()).contains("stay: 1@5-6").doesNotContain("mine 2");
  }

  @Test
  void measuresAreFreedOfAllDemands() throws Exception {
    post("demand", "from", "4", "to", "7", "key", "stay", "value", "3");
    post("demand", "from", "9", "to", "12", "key", "avoid", "value", "open-strings");
    post("fix", "moment", "12", "way", now(12));
    post("clear", "from", "3", "to", "8");

    assertThat(saved()).contains("avoid: open-strings@9-12").doesNotContain("stay:", "fix:");
  }

  @Test
  void droppedScoreIsCopiedWithItsFirstChangeAndNothingIsReplaced() throws Exception {
    assertThat(files()).isEmpty();
    Files.writeString(folder.resolve("demo.yaml"), "another file\n");
    Files.writeString(folder.resolve("demo.musicxml"), "another score\n");
    post("plan", "plan", "first");

    assertThat(files())
        .contains("demo.yaml", "demo.musicxml", "demo-2.musicxml")
        .anyMatch(name -> name.matches("demo-2(-2)?\\.yaml"));
    assertThat(folder.resolve("demo.yaml")).hasContent("another file\n");
    assertThat(folder.resolve("demo.musicxml")).hasContent("another score\n");
    assertThat(folder.resolve("demo-2.musicxml")).hasSameBinaryContentAs(Session.DEMO);
    assertThat(StoredLesson.read(folder.resolve("demo-2.yaml")).lesson().score())
        .isEqualTo("demo-2.musicxml");
  }

  @Test
  void savedLessonIsTheSameOnTheCommandLine() throws Exception {
    post("fix", "moment", "12", "way", other(12));
    String plan = Session.of("plan", "--lesson", folder.resolve("demo.yaml")).succeeded().out();
    String line = post("free", "moment", "999").body();

    assertThat(line).isNotEmpty();
    assertThat(plan).contains("4: II 2 0 ↓half 4");
  }

  @Test
  void lessonEditedByHandWinsAndThePageSaysSo() throws Exception {
    post("plan", "plan", "first");
    Files.writeString(folder.resolve("demo.yaml"), saved() + "measures: 1-8\n");
    String answer = post("plan", "plan", "third").body();

    assertThat(answer).contains("demo.yaml was changed outside this page", "measures 1–8");
    assertThat(saved()).contains("measures: 1-8", "choose: first");
    post("undo");
    assertThat(saved()).doesNotContain("measures:");
  }

  @Test
  void lessonWithAMistakeIsNotReplaced() throws Exception {
    post("plan", "plan", "first");
    Files.writeString(folder.resolve("demo.yaml"), "score: demo.musicxml\nplan: x\n");
    HttpResponse<String> answer = post("plan", "plan", "third");

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("demo.yaml");
    assertThat(saved()).isEqualTo("score: demo.musicxml\nplan: x\n");
  }

  @Test
  void deletedLessonIsSavedAgain() throws Exception {
    post("plan", "plan", "first");
    Files.delete(folder.resolve("demo.yaml"));
    post("plan", "plan", "third");

    assertThat(saved()).contains("choose: third");
  }

  @Test
  void secondTabHearsOfTheChangeAndLosesNothing() throws Exception {
    post("plan", "plan", "first");
    revision = "0";
    String stale = post("plan", "plan", "third").body();

    assertThat(stale).contains("changed in another window", "value=\"first\" checked");
    assertThat(saved()).contains("choose: first");
  }

  @Test
  void scoreChangedOnDiskIsReadAgain() throws Exception {
    post("plan", "plan", "first");
    Path score = folder.resolve("demo.musicxml");
    Files.writeString(
        score, Files.readString(score).replace("Lanterns on the Millrace", "Lanterns Again"));

    assertThat(visitor.get(address + "/plans").body()).contains("Lanterns Again");
  }

  @ParameterizedTest
  @CsvSource({
    "fix, moment=9999&way=II/4, note",
    "fix, moment=x&way=II/4, no such page",
    "fix, moment=12&way=XX/9, does not say",
    "demand, from=4&to=7&key=allow&value=3, no such page",
    "demand, from=900&to=901&key=stay&value=3, measures",
    "plan, plan=nothing, no plan of this name",
    "drop, key=stay, no such page"
  })
  void nonsenseIsASentenceAndChangesNothing(String what, String fields, String sentence)
      throws Exception {
    HttpResponse<String> answer = visitor.post(address + "/" + what, "revision=0&" + fields);

    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(answer.body()).contains(sentence).doesNotContain("Exception", "unexpectedly");
    assertThat(files()).isEmpty();
  }

  @Test
  void graceNotesCannotBeFixedAndSaySo() throws Exception {
    HttpResponse<String> dropped =
        visitor.drop(
            "grace.abc",
            "X:1\nT:Grace\nM:4/4\nL:1/4\nK:D clef=alto\nD {F}G A d|\n"
                .getBytes(StandardCharsets.UTF_8));
    address = dropped.headers().firstValue("Location").orElseThrow();
    List<String> notes =
        Stream.of(1, 2)
            .map(
                moment -> {
                  try {
                    return visitor.get(address + "/note?moment=" + moment).body();
                  } catch (Exception e) {
                    throw new IllegalStateException(e);
                  }
                })
            .toList();

    assertThat(notes.get(0)).contains("A grace note follows", "disabled");
    assertThat(notes.get(1)).doesNotContain("A grace note follows");
  }

  @Test
  void lessonThatIsOpenedTwiceIsOneLesson() throws Exception {
    post("plan", "plan", "first");
    assertThat(
            REVISION
                .matcher(visitor.get(link("demo.yaml")).body())
                .results()
                .map(MatchResult::group)
                .findFirst())
        .contains("id=\"revision\" value=\"1\"");
  }
}
