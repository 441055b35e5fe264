package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan whose fingers stand below the staff. */
class PlanBelowTest {
  private static final Pattern REVISION = Pattern.compile("id=\"revision\" value=\"(\\d+)\"");
  private static final Pattern SECOND = Pattern.compile("class=\"mark second\"");

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String address = "";
  private String page = "";

  @BeforeEach
  void start() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.writeString(
        folder.resolve("lantern.yaml"),
        "score: demo.musicxml\nplans:\n  - name: mine\n    strings: [III@1-8]\n  - choose: first\n");
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
    address = visitor.get("/").body().replaceFirst("(?s).*(/open/[\\w-]+)\">lantern.*", "$1");
    page = visitor.get(address + "/plans").body();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private void post(String what) throws Exception {
    Matcher revision = REVISION.matcher(page);
    assertThat(revision.find()).isTrue();
    String[] parts = what.split("\\?", 2);
    String form = "revision=" + revision.group(1) + (parts.length > 1 ? "&" + parts[1] : "");
    page = visitor.post(address + "/" + parts[0], form).body();
  }

  private String menu() {
    return page.replaceFirst("(?s).*(<select name=\"below\".*?</select>).*", "$1");
  }

  @Test
  void usualOneStandsThereUnlessTheTeacherChoosesAnother() throws Exception {
    assertThat(menu())
        .contains("<option value=\"\" selected>the usual one: ", ">mine<", "<option value=\"none\"")
        .containsOnlyOnce(" selected");

    post("below?below=first");
    assertThat(menu()).contains("<option value=\"first\" selected>").containsOnlyOnce(" selected");
    assertThat(Files.readString(folder.resolve("lantern.yaml"))).endsWith("below: first\n");
    assertThat(page).contains("(1st position: ");

    // It stays when another plan is shown above the staff; words name what is below.
    post("plan?plan=third");
    assertThat(menu()).contains("<option value=\"first\" selected>");
    assertThat(page).contains("(1st position: ").doesNotContain("(partly");

    post("below?below=mine");
    assertThat(page).contains("(mine: ").doesNotContain("(1st position: ");

    post("below?below=none");
    assertThat(page).contains("class=\"mark\"").doesNotContain("(mine: ", "(1st position: ");
    assertThat(SECOND.matcher(page).find()).isFalse();

    post("undo");
    assertThat(menu()).contains("<option value=\"mine\" selected>");
    post("below?below=");
    assertThat(menu()).contains("<option value=\"\" selected>the usual one");
    assertThat(Files.readString(folder.resolve("lantern.yaml"))).doesNotContain("below:");
  }

  @Test
  void planThatIsGoneGivesWayToTheUsualOne() throws Exception {
    Files.writeString(folder.resolve("lantern.yaml"), "score: demo.musicxml\nbelow: theirs\n");
    page = visitor.get(address + "/plans").body();
    assertThat(menu()).contains("<option value=\"\" selected>the usual one");
  }
}
