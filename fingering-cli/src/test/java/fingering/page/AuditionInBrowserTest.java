package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A teacher puts an audition sheet together, and adds a scale by its fingering. */
class AuditionInBrowserTest extends InBrowser {
  @TempDir Path teacher;

  private static void click(String selector) throws Exception {
    browser().run("document.querySelector('" + selector + "').click()");
  }

  private static void set(String field, String value) throws Exception {
    browser().run("document.querySelector('" + field + "').value = '" + value + "'");
  }

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').innerText").asText();
  }

  private static void assertFits(int width) throws Exception {
    assertThat(browser().run("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();
    assertThat(browser().complaints()).isEmpty();
  }

  private static void await(String expression) throws Exception {
    browser().await(expression);
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void sheetIsPutTogether(int width) throws Exception {
    Files.copy(Session.DEMO, teacher.resolve("demo.musicxml"));
    try (LocalServer server = LocalServer.start(teacher, new LessonAdviser(), Clock.systemUTC())) {
      browser().open(server.address(), width);
      browser().open("http://127.0.0.1:" + server.port() + "/audition", width);
      set("[name=name]", "Lake");
      set("[name=instrument]", "viola");
      assertFits(width);
      click("form button");
      await("document.querySelector('#plans p')");

      click("#positions-4");
      await("document.querySelector('#said p')");
      browser().run("document.querySelector('#e-music').selectedIndex = 1");
      set("#e-measures", "A to 32");
      click("#e-go");
      await("document.querySelector('#pieces li')");
      await("document.querySelector('#piece1 svg')");
      assertThat(browser().run("document.querySelector('#e-measures').value").asText())
          .isEqualTo("A to 32");
      assertThat(text("#verdict")).contains("Lanterns on the Millrace shows 2nd position");

      click("#scale a");
      await("document.querySelector('#ways svg')");
      browser()
          .run(
              "document.querySelector('#s-tonic').value = 'F';"
                  + "document.querySelector('#s-octaves').value = '1';"
                  + "document.querySelector('#s-octaves')"
                  + ".dispatchEvent(new Event('change', {bubbles: true}))");
      await("document.querySelector('[id=\"way-allow=2\"]')");
      assertFits(width);
      click("[id=\"way-allow=2\"]");
      await("document.querySelector('[id=\"way-allow=2\"]').defaultChecked");
      click("#add button");
      await("document.querySelector('#kept a')");
      click("#kept a");
      await("document.querySelector('#piece2 svg')");
      assertThat(text("#verdict"))
          .contains("Everything asked for is shown with the easiest fingering of every piece.");
      assertFits(width);
      browser().media("screen", "dark");
      assertThat(faults(browser())).isEmpty();
      browser().media("print", "light");
      assertThat(browser().run("document.querySelector('#sheet').checkVisibility()").asBoolean())
          .isFalse();
      assertThat(text(".paper")).isEqualTo("Lake: viola");
      browser().media("screen", "light");
    }
  }
}
