package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The local page in a real browser, from an empty folder to the verdict. */
class LocalPageInBrowserTest extends InBrowser {
  private static final String ANSWERED = "document.querySelector('#verdict .answer')";

  @TempDir Path scores;

  private LocalServer server;

  @BeforeEach
  void startServer() {
    server = LocalServer.start(scores, new LessonAdviser(), Clock.systemUTC());
  }

  @AfterEach
  void stopServer() {
    server.close();
  }

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').textContent").asText();
  }

  private static void change(String field, String value) throws Exception {
    browser()
        .run(
            ("(() => {const field = document.querySelector('[name=%s]'); field.value = '%s';"
                    + " field.dispatchEvent(new Event('change', {bubbles: true}))})()")
                .formatted(field, value));
  }

  private void openDemo(int width) throws Exception {
    browser().open(server.address(), width);
    browser().choose("#file", Session.DEMO);
    browser().await(ANSWERED);
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void uploadedScoreShowsVerdictAndMusicAndNothingLeavesTheMachine(int width) throws Exception {
    openDemo(width);

    assertThat(text("#verdict .answer")).startsWith("Take 'partly 3rd'");
    assertThat(browser().run("document.querySelectorAll('#music .system svg').length").asInt())
        .isGreaterThan(4);
    assertThat(browser().run("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();
    assertThat(browser().complaints()).isEmpty();
    assertThat(browser().requests())
        .isNotEmpty()
        .allMatch(address -> address.startsWith("http://127.0.0.1:" + server.port() + "/"));
  }

  @Test
  void choiceReplacesVerdictAndMusic() throws Exception {
    openDemo(1280);
    change("measures", "3-9");
    browser().await("document.querySelector('#s-3') && !document.querySelector('#s-0')");

    assertThat(text("#verdict")).contains("Stay in 1st position", "measures 3–9");
    assertThat(browser().run("document.querySelector('#revision').value").asText()).isEqualTo("1");
    assertThat(browser().complaints()).isEmpty();
  }

  @Test
  void wrongChoiceIsSaidBesideTheFieldsAndTheMusicStays() throws Exception {
    openDemo(1280);
    change("measures", "99");
    browser().await("document.querySelector('#trouble p')");

    assertThat(text("#trouble")).contains("has no measures '99'");
    assertThat(text("#verdict .answer")).startsWith("Take 'partly 3rd'");
    change("measures", "");
    browser().await("!document.querySelector('#trouble p')");
  }

  @Test
  void anotherScoreCanBeDroppedOnTheMusic() throws Exception {
    openDemo(1280);
    browser()
        .run(
            "(() => {const data = new DataTransfer(); data.items.add(new File(['X:1\\nT:Second\\n"
                + "K:D clef=alto\\nDEFG|'], 'second.abc')); document.dispatchEvent(new"
                + " DragEvent('drop', {dataTransfer: data, cancelable: true}))})()");
    browser().await("document.title === 'Second' && " + ANSWERED);

    assertThat(text("#verdict")).contains("Viola");
  }

  @Test
  void wrongFileIsSaidBesideTheChooser(@TempDir Path other) throws Exception {
    Path file = Files.writeString(other.resolve("scan.pdf"), "%PDF");
    browser().open(server.address(), 1280);
    browser().choose("#file", file);
    browser().await("document.querySelector('#trouble p')");

    assertThat(text("#trouble")).contains("A PDF has no notes");
  }

  @Test
  void pageSaysThatTheProgramHasEnded() throws Exception {
    openDemo(1280);
    server.close();
    change("measures", "3-9");
    browser().await("document.querySelector('#trouble p')");

    assertThat(text("#trouble")).contains("This was not done, because Fingering has stopped");
    assertThat(browser().run("document.querySelector('[name=measures]').value").asText())
        .isEqualTo("3-9");
  }
}
