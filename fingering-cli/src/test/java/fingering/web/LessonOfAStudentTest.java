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

/** A lesson gets a student, and a second lesson is made from it for another one. */
class LessonOfAStudentTest {
  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String address = "";

  @BeforeEach
  void start() throws Exception {
    Files.createDirectories(folder.resolve("students"));
    Files.writeString(
        folder.resolve("students/imke.yaml"),
        "instrument: viola\npreset: beginner\npositions: [1]\n");
    Files.writeString(
        folder.resolve("students/jorun.yaml"),
        "instrument: viola\npreset: advanced\npositions: [1, 2, 3]\n");
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
    HttpResponse<String> dropped = visitor.drop("demo.musicxml", Files.readAllBytes(Session.DEMO));
    address = dropped.headers().firstValue("Location").orElseThrow();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String id(String student) throws Exception {
    Matcher option =
        Pattern.compile("<option value=\"([\\w-]{24})\"[^>]*>" + student)
            .matcher(visitor.get(address).body());
    assertThat(option.find()).as(student).isTrue();
    return option.group(1);
  }

  private HttpResponse<String> choose(int revision, String student) throws Exception {
    return visitor.post(address + "/choice", "revision=" + revision + "&part=1&student=" + student);
  }

  @Test
  void studentMadeForALessonIsChosenThere() throws Exception {
    choose(0, "");
    String made = "/students/new?lesson=" + address.substring(address.lastIndexOf('/') + 1);
    assertThat(visitor.get(address).body()).contains("href=\"" + made + "\"");
    assertThat(visitor.get(made).body()).contains("value=\"viola\" selected");

    HttpResponse<String> saved =
        visitor.post(
            "/students/new",
            "seen=&name=Jonte&instrument=viola&level=beginner&lesson="
                + address.substring(address.lastIndexOf('/') + 1));

    assertThat(saved.headers().firstValue("HX-Redirect")).contains(address);
    assertThat(folder.resolve("students/Jonte.yaml")).exists();
    assertThat(Files.readString(folder.resolve("demo.yaml"))).contains("student: Jonte");
  }

  @Test
  void studentOfAnotherInstrumentIsSavedAndTheLessonStays() throws Exception {
    choose(0, "");
    HttpResponse<String> saved =
        visitor.post(
            "/students/new",
            "seen=&name=Ilse&instrument=violin&level=beginner&lesson="
                + address.substring(address.lastIndexOf('/') + 1));

    assertThat(saved.headers().firstValue("HX-Redirect")).contains(address);
    assertThat(folder.resolve("students/Ilse.yaml")).exists();
    assertThat(visitor.get(address + "/plans").body()).contains("Viola");
  }

  @Test
  void planIsMadeForTheChosenStudentAsOnTheCommandLine() throws Exception {
    String answer = choose(0, id("Imke")).body();

    assertThat(Files.readString(folder.resolve("demo.yaml"))).contains("student: imke");
    assertThat(answer).contains("beginner", "player: imke").doesNotContain(folder.toString());
    String printed =
        String.join(
            " ",
            Session.of("compare", "--lesson", folder.resolve("demo.yaml")).succeeded().lines());
    String verdict = answer.replaceFirst("(?s).*class=\"answer\"><strong>(.*?)</strong>.*", "$1");
    assertThat(printed.replaceAll(" +", " ")).contains(verdict.replace("&#39;", "'"));
  }

  @Test
  void studentWhoLearnsSomethingGetsNewPlansAtOnce() throws Exception {
    choose(0, id("Imke"));
    Files.writeString(
        folder.resolve("students/imke.yaml"),
        "instrument: viola\npreset: advanced\npositions: [1, 2, 3]\n");

    assertThat(visitor.get(address + "/plans").body()).contains("advanced");
  }

  @Test
  void copyIsALessonOfItsOwnForAnotherStudent() throws Exception {
    choose(0, id("Imke"));
    HttpResponse<String> copied = visitor.post(address + "/copy", "revision=1");
    String jorun = id("Jorun");
    address = copied.headers().firstValue("HX-Redirect").orElseThrow();
    choose(0, jorun);

    assertThat(Files.readString(folder.resolve("demo.yaml"))).contains("student: imke");
    assertThat(Files.readString(folder.resolve("demo-2.yaml")))
        .contains("score: demo.musicxml", "student: jorun");
    assertThat(visitor.get("/").body()).contains("demo.musicxml, Viola, for jorun");
  }

  @Test
  void studentWhoseFileIsGoneCanBeReplaced() throws Exception {
    choose(0, id("Imke"));
    Files.delete(folder.resolve("students/imke.yaml"));
    assertThat(visitor.get(address + "/plans").statusCode()).isEqualTo(400);

    assertThat(choose(1, id("Jorun")).body()).contains("player: jorun");
  }

  @Test
  void studentIsTakenOutOfALesson() throws Exception {
    choose(0, id("Imke"));
    choose(1, "");

    assertThat(Files.readString(folder.resolve("demo.yaml"))).doesNotContain("student:");
  }

  @Test
  void studentWithoutAPlayerFileIsSaidAndStays() throws Exception {
    Files.writeString(
        folder.resolve("other.yaml"), "score: demo.musicxml\npart: 1\nstudent: nobody\n");
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Matcher link =
        Pattern.compile("href=\"(/open/[\\w-]+)\">other").matcher(visitor.get("/").body());
    assertThat(link.find()).isTrue();
    address = link.group(1);
    assertThat(visitor.get("/").body()).contains("demo.musicxml, part 1, for nobody");

    assertThat(visitor.get(address).body()).contains("value=\"-\" selected>nobody");
    assertThat(visitor.get(address + "/plans").body()).contains("there is no player file");
  }
}
