package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.lesson.StoredLesson;
import fingering.web.running.Wanted;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo as the first lesson. */
class DemoTest {
  private static final Wanted DOUBLE_CLICK = new Wanted(Optional.empty(), true);

  @TempDir Path home;

  private Path folder;
  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() {
    folder = home.resolve("Fingering");
    server = LocalServer.start(folder, new LessonAdviser(), new Visitor.SetClock());
    visitor = new Visitor(server);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static String redirect(HttpResponse<String> answer) {
    return answer.headers().firstValue("HX-Redirect").orElseThrow();
  }

  @Test
  void emptyFolderOffersTheDemoAndOneClickOpensItAsALesson() throws Exception {
    visitor.at(server.address());
    assertThat(visitor.get("/").body()).contains("Start with the demo");
    assertThat(folder).doesNotExist();

    String page = visitor.get(redirect(visitor.post("/demo", ""))).body();
    assertThat(page).contains("Lanterns on the Millrace", "Viola");
    assertThat(folder.resolve("demo.musicxml")).hasSameBinaryContentAs(Session.DEMO);
    assertThat(StoredLesson.read(folder.resolve("demo.yaml")).lesson().part()).contains("Viola");
    assertThat(visitor.get("/").body())
        .contains(">demo.musicxml</a>", ">demo.yaml</a>")
        .doesNotContain("Start with the demo");
  }

  @Test
  void secondWindowOpensTheSameLesson() throws Exception {
    visitor.at(server.address());
    String first = redirect(visitor.post("/demo", ""));
    String changed = "# mine\n" + Files.readString(folder.resolve("demo.yaml"));
    Files.writeString(folder.resolve("demo.yaml"), changed);
    assertThat(redirect(visitor.post("/demo", ""))).isEqualTo(first);
    assertThat(folder.resolve("demo.yaml")).hasContent(changed);
  }

  @Test
  void filesOfTheTeacherAreKept() throws Exception {
    Files.createDirectory(folder);
    Path own = Files.writeString(folder.resolve("demo.musicxml"), "mine");
    visitor.at(server.address());
    HttpResponse<String> answer = visitor.post("/demo", "");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("is a file of your own");
    assertThat(own).hasContent("mine");

    Files.delete(own);
    own = Files.writeString(folder.resolve("demo.yaml"), "shopping: [rosin]");
    assertThat(visitor.post("/demo", "").body()).contains("is a file of your own");
    assertThat(own).hasContent("shopping: [rosin]");
  }

  @Test
  void folderThatCannotBeMadeIsSaidInASentence() throws Exception {
    Files.writeString(folder, "a file where the folder should be");
    visitor.at(server.address());
    HttpResponse<String> answer = visitor.post("/demo", "");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("Fingering");
  }

  @Test
  void doubleClickShowsTheDemoAndSavesNothing() throws Exception {
    HttpResponse<String> entered = visitor.enter(server.address(DOUBLE_CLICK));
    String page = visitor.get(entered.headers().firstValue("Location").orElseThrow()).body();
    assertThat(page).contains("Lanterns on the Millrace");
    assertThat(folder).doesNotExist();
    assertThat(server.running().open(DOUBLE_CLICK).orElseThrow()).contains("&score=");
  }

  @Test
  void doubleClickWithLessonsShowsTheFirstPage() throws Exception {
    Files.createDirectory(folder);
    Files.copy(Session.DEMO, folder.resolve("own.musicxml"));
    assertThat(visitor.enter(server.address(DOUBLE_CLICK)).headers().firstValue("Location"))
        .contains("/");
  }
}
