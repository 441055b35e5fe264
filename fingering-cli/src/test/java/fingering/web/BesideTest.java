package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One excerpt for several students side by side. */
class BesideTest {
  private static final Pattern TICK = Pattern.compile("id=\"(student-[\\w-]{24})\"");

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String open = "";

  @BeforeEach
  void start() throws Exception {
    Path students = Files.createDirectories(folder.resolve("students"));
    for (String name : List.of("imke.yaml", "jonte.yaml")) {
      Files.copy(Session.DEMO.resolveSibling("../examples/" + name), students.resolve(name));
    }
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Path lesson =
        Files.writeString(
            folder.resolve("lanterns.yaml"),
            "score: demo.musicxml\nmeasures: 9-24\nstudent: imke\n");
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server);
    open = visitor.enter(server.addressOf(lesson)).headers().firstValue("Location").orElseThrow();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private Path student(String name, String text) throws Exception {
    return Files.writeString(folder.resolve("students").resolve(name), text);
  }

  private List<String> ticks() throws Exception {
    return TICK.matcher(visitor.get(open + "/students").body())
        .results()
        .map((MatchResult match) -> match.group(1))
        .toList();
  }

  private HttpResponse<String> rows(List<String> ticked) throws Exception {
    return visitor.get(
        open
            + "/students/rows?window=1200&"
            + ticked.stream().map(tick -> tick + "=on").collect(Collectors.joining("&")));
  }

  @Test
  void studentOfTheLessonIsTickedAndOtherInstrumentsAreNot() throws Exception {
    student("bo.yaml", "instrument: cello\n");
    student("any.yaml", "positions: 1\n");

    String page = visitor.get(open + "/students").body();

    assertThat(ticks()).hasSize(3);
    assertThat(page)
        .contains("Lanterns on the Millrace: students side by side", "Viola, measures 9-24")
        .containsPattern("<input[^>]*checked[^>]*> Imke")
        .doesNotContainPattern("<input[^>]*checked[^>]*> Jonte")
        .contains("For other instruments: Bo.");
  }

  @Test
  void rowsSayWhatTheCommandLineSays() throws Exception {
    String rows = rows(ticks()).body();

    for (String name : List.of("imke", "jonte")) {
      String verdict =
          String.join(
                  " ",
                  Session.of(
                          "compare",
                          Session.DEMO,
                          "--measures",
                          "9-24",
                          "--player",
                          folder.resolve("students/" + name + ".yaml"))
                      .succeeded()
                      .lines())
              .replaceAll(" +", " ");
      String said =
          rows.replaceFirst(
                  "(?s).*<strong>"
                      + (name.equals("imke") ? "Imke" : "Jonte")
                      + ":</strong> (.*?)</p>.*",
                  "$1")
              .replace("&#39;", "'");
      assertThat(verdict).contains(said);
    }
    assertThat(rows)
        .containsPattern("They play \\d+ of 16 measures differently")
        .contains("Planned tempo: quarter = 96.", "comfortable tempo: ", "New to this student: ")
        .containsPattern("<text class=\"name\"[^>]*>Imke</text>.*<text class=\"name\"[^>]*>Jonte<")
        .contains("class=\"mark\"", "Bold numbers");
  }

  @Test
  void studentsWhoPlayAlikeNeedNoMusic() throws Exception {
    student("twin.yaml", Files.readString(folder.resolve("students/imke.yaml")));
    List<String> all = ticks();

    assertThat(rows(List.of(all.get(0), all.get(2))).body())
        .contains("They play every note the same way.")
        .doesNotContain("<svg");
  }

  @Test
  void oneStudentOrNoneIsToldWhatToTick() throws Exception {
    assertThat(rows(List.of()).body()).contains("Tick the students");
    assertThat(rows(ticks().subList(0, 1)).body()).contains("Tick a second student", "Imke:");
  }

  @Test
  void moreThanFourStudentsAreRefused() throws Exception {
    for (int i = 0; i < 3; i++) {
      student("s" + i + ".yaml", "positions: 1\n");
    }
    HttpResponse<String> answer = rows(ticks());
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("Tick at most four students.");
  }

  @Test
  void changedPlayerFileIsReadAgain() throws Exception {
    List<String> all = ticks();
    String before = rows(all).body();
    student("jonte.yaml", Files.readString(folder.resolve("students/imke.yaml")));

    assertThat(before).contains("differently");
    assertThat(rows(all).body()).contains("They play every note the same way.");
  }

  @Test
  void scoreThatIsNotOpenLeadsNowhere() throws Exception {
    assertThat(visitor.get("/open/aaaaaaaaaaaaaaaaaaaaaaaa/students").statusCode()).isEqualTo(404);
  }
}
