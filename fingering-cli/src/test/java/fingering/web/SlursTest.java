package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bowings are changed on the page, and kept in the lesson. */
class SlursTest {
  private static final Pattern REVISION = Pattern.compile("id=\"revision\" value=\"(\\d+)\"");

  /** In the demo, a slur is printed from 1.1 to 1.3, but none in measure 0. */
  private static final String OFF = "Take the slur off";

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String lesson = "";
  private String revision = "0";

  @BeforeEach
  void start() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.writeString(folder.resolve("lantern.yaml"), "score: demo.musicxml\npart: 1\n");
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
    lesson = visitor.get("/").body().replaceFirst("(?s).*(/open/[\\w-]+)\">lantern.*", "$1");
    visitor.get(lesson + "/plans?window=1200");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private HttpResponse<String> post(String what, String form) throws Exception {
    HttpResponse<String> answer =
        visitor.post(
            lesson + "/" + what,
            "revision=" + revision + "&window=1200" + (form.isEmpty() ? "" : "&" + form));
    Matcher next = REVISION.matcher(answer.body());
    if (next.find()) {
      revision = next.group(1);
    }
    return answer;
  }

  private String note(int moment) throws Exception {
    return visitor.get(lesson + "/note?moment=" + moment).body();
  }

  private String saved() throws Exception {
    return Files.readString(folder.resolve("lantern.yaml"));
  }

  @Test
  void noteOffersWhereASlurMayEndAndToTakeItOff() throws Exception {
    assertThat(note(2))
        .contains("Measure 1, beat 1", "Slur from here to", "<option value=\"3\">2 notes: ", OFF)
        .contains("end of the measure</option>", ", m. 2, beat 1");
    assertThat(note(0)).contains("Slur from here to").doesNotContain(OFF);
  }

  @Test
  void slurIsDrawnAtOnceAndSavedAndUndone() throws Exception {
    String answer = post("slur", "moment=0&to=1").body();

    assertThat(answer)
        .contains(
            "Bowings you changed", "<span>Slur from m. 0, beat 3 to m. 0, beat 3.5</span>", "<svg");
    assertThat(saved()).contains("slurs: {0.3: 0.3.5}");
    assertThat(note(0)).contains(OFF);
    assertThat(post("undo", "").body()).doesNotContain("Bowings you changed").contains("<svg");
    assertThat(saved()).doesNotContain("slurs");
    assertThat(post("redo", "").body())
        .contains("<span>Slur from m. 0, beat 3 to m. 0, beat 3.5</span>");
  }

  @Test
  void slurTakenOffIsAChangeThatACrossTakesBack() throws Exception {
    assertThat(post("separate", "moment=3").body())
        .contains("<span>No slur in m. 1, beat 2.5</span>");
    assertThat(saved()).contains("slurs: {1.2.5: none}");
    assertThat(note(2)).doesNotContain(OFF);

    assertThat(post("printed", "place=1.2.5").body()).doesNotContain("Bowings you changed");
    assertThat(saved()).doesNotContain("slurs");
    assertThat(note(2)).contains(OFF);
  }

  @Test
  void newSlurThatIsTakenOffLeavesSeparateBows() throws Exception {
    // It replaces the printed slur from 1.1 to 1.3.
    post("slur", "moment=1&to=3");
    assertThat(saved()).contains("slurs: {0.3.5: 1.2.5}");
    post("separate", "moment=2");
    assertThat(saved()).contains("slurs: {1.1: none}");
    assertThat(note(2)).doesNotContain(OFF);

    // Where none was printed, nothing is left to say.
    post("slur", "moment=0&to=1");
    post("separate", "moment=1");
    assertThat(saved()).contains("slurs: {1.1: none}");
  }

  @Test
  void newSlurTakesThePlaceOfChangesWithinIt() throws Exception {
    post("separate", "moment=3");
    post("slur", "moment=0&to=1");
    post("slur", "moment=1&to=4");

    assertThat(saved()).contains("slurs: {0.3.5: 1.3}");
  }

  @Test
  void slurThatCannotBePlayedIsRefusedAndTheMusicStays() throws Exception {
    HttpResponse<String> backwards = post("slur", "moment=3&to=1");
    assertThat(backwards.statusCode()).isGreaterThanOrEqualTo(400);
    assertThat(backwards.body()).contains("does not end after it begins");
    assertThat(post("slur", "moment=3&to=9999").body()).contains("does not have this note");
    assertThat(post("printed", "place=nowhere").body()).contains("is not a measure and beat");
    assertThat(saved()).doesNotContain("slurs");
  }

  @Test
  void savedPartHasTheSlursAndTheScoreStaysAsItIs() throws Exception {
    String score = Files.readString(folder.resolve("demo.musicxml"));
    post("slur", "moment=0&to=1");
    post("separate", "moment=3");
    assertThat(visitor.post(lesson + "/part", "extent=part&fingers=sparing").statusCode())
        .isEqualTo(200);

    String part = Files.readString(folder.resolve("lantern-part.musicxml"));
    assertThat(part.substring(0, part.indexOf("<measure number=\"2\"")).split("<slur ", -1))
        .hasSize(3);
    assertThat(folder.resolve("demo.musicxml")).hasContent(score);
  }

  @Test
  void otherMeasuresKeepTheBowings() throws Exception {
    post("slur", "moment=0&to=1");
    assertThat(post("choice", "part=1&measures=9-16").body())
        .contains("<span>Slur from m. 0, beat 3 to m. 0, beat 3.5</span>");
    assertThat(saved()).contains("slurs: {0.3: 0.3.5}", "measures: 9-16");
  }
}
