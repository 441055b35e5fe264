package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An arranger asks on the local page whether an orchestra can play a score. */
class CheckLiveInBrowserTest extends InBrowser {
  @TempDir Path teacher;

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').textContent").asText();
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void levelIsChosenAndTheFindingsFollow(int width) throws Exception {
    Path score = Session.DEMO.resolveSibling("../examples/lanterns.musicxml");
    try (LocalServer server = LocalServer.start(teacher, new LessonAdviser(), Clock.systemUTC())) {
      browser().open(server.addressOf(score), width);
      browser().await("document.querySelector('#verdict .answer')");
      browser().run("document.querySelector('a[href$=\"/check\"]').click()");
      browser().await("document.querySelector('#found .answer')");
      assertThat(text("#found .answer")).contains("1 note cannot be played");
      browser()
          .run(
              "(() => {const level = document.querySelector('[name=level]'); level.focus();"
                  + " level.value = 'intermediate';"
                  + " level.dispatchEvent(new Event('change', {bubbles: true}))})()");
      browser().await("document.querySelector('#found .answer').textContent.includes('2 notes')");
      assertThat(text("#found")).contains("m. 6, beat 1:", "Write it an octave lower");
      assertThat(browser().run("document.activeElement.name").asText()).isEqualTo("level");
      assertThat(
              browser()
                  .run(
                      "Math.max(...[...document.querySelectorAll('#found .noted svg')].map(e =>"
                          + " e.getBoundingClientRect().width))")
                  .asDouble())
          .isBetween(100.0, 460.0);
      assertThat(browser().run("document.documentElement.scrollWidth").asInt())
          .isLessThanOrEqualTo(width);
      for (String scheme : new String[] {"light", "dark"}) {
        browser().media("screen", scheme);
        assertThat(faults(browser())).isEmpty();
      }
      assertThat(browser().complaints()).isEmpty();
    }
  }
}
