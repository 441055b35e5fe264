package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first minute with the program, and its end, in a real browser. */
class LiveInBrowserTest extends InBrowser {
  @TempDir Path home;

  private LocalServer server;

  @BeforeEach
  void startServer() {
    server = LocalServer.start(home.resolve("Fingering"), new LessonAdviser(), Clock.systemUTC());
  }

  @AfterEach
  void stopServer() {
    server.close();
  }

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').textContent").asText();
  }

  private void openDemo(int width) throws Exception {
    browser().open(server.address(), width);
    assertThat(faults(browser())).isEmpty();
    browser().run("document.querySelector('[hx-post=\"/demo\"] button').click()");
    browser().await("document.querySelector('#verdict .answer')");
  }

  @Test
  void demoIsOneClickFromAnEmptyFolder() throws Exception {
    openDemo(390);
    assertThat(text("h1")).contains("Lanterns on the Millrace");
    assertThat(browser().complaints()).isEmpty();
    assertThat(home.resolve("Fingering").resolve("demo.yaml")).exists();
  }

  @Test
  void pageSaysAtOnceThatTheProgramHasEndedAndKeepsWhatIsTyped() throws Exception {
    openDemo(1280);
    assertThat(text("#gone")).isEmpty();
    browser().run("document.querySelector('[name=measures]').value = '3-9'");
    server.close();
    browser().await("document.querySelector('#gone').textContent");

    assertThat(text("#gone")).contains("Fingering has stopped", "Start Fingering again");
    assertThat(browser().run("document.querySelector('[name=measures]').value").asText())
        .isEqualTo("3-9");
    assertThat(browser().run("document.querySelectorAll('#music .system').length").asInt())
        .isPositive();
    assertThat(faults(browser())).isEmpty();
  }

  @Test
  void pagesOfOneBrowserShareAStreamAndAllSayTheEnd() throws Exception {
    browser().open(server.address(), 1280);
    // More windows than a browser has connections to a server.
    browser().run("window.more = []; 0");
    for (int i = 0; i < 8; i++) {
      browser()
          .send(
              "Runtime.evaluate",
              Browser.node().put("expression", "more.push(open('/'))").put("userGesture", true));
    }
    browser()
        .await(
            "window.more.every(one => one && one.document.readyState === 'complete' && one.location.pathname === '/')");
    server.close();
    browser().await("window.more.every(one => one.document.getElementById('gone').textContent)");
    browser().await("document.getElementById('gone').textContent");
    browser().run("window.more.forEach(one => one.close())");
  }
}
