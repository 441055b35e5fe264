package fingering.page;

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

/** Takes the pictures of the local page for its documentation. */
class OpenPicturesInBrowserTest extends InBrowser {
  private static final int WIDTH = 1180;

  @TempDir Path scores;

  private LocalServer server;

  @BeforeEach
  void openDemo() throws Exception {
    Files.createDirectories(scores.resolve("students"));
    Files.copy(
        Path.of("..", "docs", "examples", "imke.yaml"), scores.resolve("students/imke.yaml"));
    server = LocalServer.start(scores, new LessonAdviser(), Clock.systemUTC());
    browser().open(server.address(), WIDTH);
    browser().choose("#file", Session.DEMO);
    browser().await("document.querySelector('#verdict .answer')");
  }

  @AfterEach
  void stopServer() {
    server.close();
  }

  @Test
  void lesson() throws Exception {
    browser()
        .run(
            "(() => {const field = document.querySelector('[name=student]'); field.selectedIndex ="
                + " 1; field.dispatchEvent(new Event('change', {bubbles: true}))})()");
    browser().await("document.querySelector('#verdict').textContent.includes('imke')");
    Pictures.assertPicture(browser(), "open.png", WIDTH, 900);
  }

  @Test
  void note() throws Exception {
    new Hands(browser()).click("rect.moment[data-moment=\"12\"]");
    browser().await("document.querySelector('#note .ways')");
    Pictures.assertPicture(browser(), "open-note.png", WIDTH, 900);
  }
}
