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

/** A teacher makes a student, and sees an excerpt for two students side by side. */
class StudentsInBrowserTest extends InBrowser {
  @TempDir Path teacher;

  private static void choose(String field, String value) throws Exception {
    browser()
        .run(
            ("(() => {const field = document.querySelector('[name=%s]'); field.focus();"
                    + " field.value = '%s';"
                    + " field.dispatchEvent(new Event('change', {bubbles: true}))})()")
                .formatted(field, value));
  }

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').textContent").asText();
  }

  private static void assertFits(int width) throws Exception {
    assertThat(browser().run("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();
    assertThat(browser().complaints()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void studentIsMadeAndSeenBesideAnother(int width) throws Exception {
    Path students = Files.createDirectories(teacher.resolve("students"));
    Files.copy(Session.DEMO.resolveSibling("../examples/imke.yaml"), students.resolve("imke.yaml"));
    try (LocalServer server = LocalServer.start(teacher, new LessonAdviser(), Clock.systemUTC())) {
      browser().open(server.addressOf(Session.DEMO), width);
      browser().await("document.querySelector('#verdict .answer')");
      String score = browser().run("location.pathname").asText();
      String base = "http://127.0.0.1:" + server.port();

      browser().open(base + "/students/new", width);
      choose("name", "Ada");
      browser().run("document.querySelector('#save').click()");
      browser().await("document.querySelector('#e-instrument')");
      assertThat(browser().run("document.querySelector('[name=name]').value").asText())
          .isEqualTo("Ada");
      choose("instrument", "viola");
      browser().await("document.querySelector('[name=patterns-SECOND_THIRD]')");
      assertThat(browser().run("document.activeElement.name").asText()).isEqualTo("instrument");
      assertFits(width);
      browser().run("document.querySelector('#save').click()");
      browser().await("document.querySelector('#said p')");
      assertThat(text("#said")).contains("Saved: ");
      assertThat(text("#title")).isEqualTo("Student: Ada");
      assertThat(browser().run("location.pathname").asText()).matches("/students/[\\w-]{24}");
      assertThat(students.resolve("Ada.yaml")).content().contains("preset: beginner");

      browser().open(base + score + "/students", width);
      browser().run("document.querySelectorAll('.ticks input')[0].click()");
      browser().await("document.querySelectorAll('.beside li').length === 1");
      browser().run("document.querySelectorAll('.ticks input')[1].click()");
      browser().await("document.querySelectorAll('.beside li').length === 2");
      browser().await("document.querySelector('.excerpts svg')");
      assertThat(text(".beside")).contains("Ada:", "Imke:");
      assertFits(width);
      browser().media("screen", "dark");
      assertThat(faults(browser())).isEmpty();
    }
  }
}
