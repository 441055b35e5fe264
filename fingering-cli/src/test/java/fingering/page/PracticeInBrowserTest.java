package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A teacher practises, prints and saves a lesson on the local page. */
class PracticeInBrowserTest extends InBrowser {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path scores;

  private LocalServer server;

  @BeforeEach
  void startServer() throws Exception {
    Files.copy(Session.DEMO, scores.resolve("demo.musicxml"));
    Files.writeString(
        scores.resolve("lantern.yaml"), "score: demo.musicxml\npart: 1\nmeasures: 1-32\n");
    server = LocalServer.start(scores, new LessonAdviser(), CLOCK);
  }

  @AfterEach
  void stopServer() {
    server.close();
  }

  private void openLesson(int width) throws Exception {
    browser().open(server.address(), width);
    browser()
        .run(
            "[...document.querySelectorAll('a')].find(a => a.textContent ==="
                + " 'lantern.yaml').click()");
    browser().await("document.querySelector('#music .system')");
  }

  private static void fill(String selector, String value) throws Exception {
    browser().run("document.querySelector('%s').value = '%s'; 0".formatted(selector, value));
  }

  private static void click(String selector) throws Exception {
    // A form that was just answered does not work before it has settled.
    browser().awaitQuiet();
    browser().run("document.querySelector('%s').click()".formatted(selector));
  }

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').textContent").asText();
  }

  private static void awaitText(String selector, String part) throws Exception {
    browser()
        .await(
            "(document.querySelector('%s') || {textContent: ''}).textContent.includes('%s')"
                .formatted(selector, part));
  }

  /** The rings, once their number stays: the lines that are not on screen come later. */
  private static int rings() throws Exception {
    return browser()
        .run(
            "new Promise(done => {let last = -1; const look = () => {const now ="
                + " [...document.querySelectorAll('#music .ring')].map(ring =>"
                + " ring.getAttribute('d').split('M').length - 1).reduce((a, b) => a + b, 0);"
                + " if (now === last) {done(now);} else {last = now; setTimeout(look, 600);}};"
                + " look();})")
        .asInt();
  }

  private static void assertFits(int width) throws Exception {
    assertThat(browser().run("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();
    assertThat(browser().complaints()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void teacherSetsTheHearingAndWritesTheJournal(int width) throws Exception {
    openLesson(width);
    click(".tools a");
    awaitText("#today", "Fill in the hearing");
    fill("[name=date]", "2026-12-12");
    fill("#hearing [name=tempo]", "quarter=96");
    click("#set");
    awaitText("#today", "Play it once");
    fill("[name=clean]", "quarter=66");
    click("#clean");
    awaitText(".days .first", "Wed 2 Dec next");
    assertThat(text(".answer")).startsWith("Start at quarter = ");
    assertThat(browser().run("document.querySelectorAll('.progress svg').length").asInt())
        .isEqualTo(1);
    assertThat(browser().run("document.querySelectorAll('#spots .spot svg').length").asInt())
        .isGreaterThan(2);

    fill("[name=note]", "tired");
    click("#bad");
    awaitText("#progress table", "tired");
    assertFits(width);
    click("#back");
    awaitText("#trouble", "was removed");
    assertThat(Files.readString(scores.resolve("lantern.journal")))
        .contains("quarter=66")
        .doesNotContain("tired");

    fill("[name=clean]", "fast");
    click("#clean");
    awaitText("#trouble", "is not a tempo");
    assertThat(browser().run("document.querySelector('[name=clean]').value").asText())
        .isEqualTo("fast");
  }

  @Test
  void sheetOfTheServerPrintsAsOneSide() throws Exception {
    openLesson(1280);
    browser().run("location.href = document.querySelectorAll('.tools a')[1].href");
    browser().await("document.querySelector('#print')");
    assertThat(
            browser()
                .run("getComputedStyle(document.querySelector('.sheet')).backgroundColor")
                .asText())
        .as("its own style is allowed")
        .isEqualTo("rgb(255, 255, 255)");
    assertFits(1280);
    browser().run("window.print = () => { document.title = 'printing'; }; 0");
    click("#print");
    assertThat(browser().run("document.title").asText()).isEqualTo("printing");

    browser().media("print", "light");
    JsonNode pdf = browser().send("Page.printToPDF", Browser.node().put("preferCSSPageSize", true));
    String printed =
        new String(
            Base64.getDecoder().decode(pdf.path("data").asText()), StandardCharsets.ISO_8859_1);
    assertThat(Pattern.compile("/Type\\s*/Page\\b").matcher(printed).results().count())
        .isEqualTo(1);
    browser().media("screen", "light");
  }

  @Test
  void savedPartCanBeDownloaded() throws Exception {
    openLesson(1280);
    click("#keep summary");
    click("#keep form button");
    awaitText("#written", "Saved as lantern-excerpt.musicxml");
    String same =
        browser()
            .run(
                "fetch(document.querySelector('#written a').href).then(r => r.text())"
                    + ".then(t => JSON.stringify({text: t}))")
            .path("text")
            .asText();
    assertThat(same).isEqualTo(Files.readString(scores.resolve("lantern-excerpt.musicxml")));
    assertThat(browser().run("document.querySelectorAll('#music .system').length").asInt())
        .isGreaterThan(2);
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void ringIsTakenAwayAndComesBack(int width) throws Exception {
    openLesson(width);
    click("#circling summary");
    browser().await("document.querySelector('#rings')");
    assertThat(rings()).isZero();
    click("#rings");
    browser().await("document.querySelector('#music .ring')");
    browser().await("document.querySelector('#rings').checked");
    int all = rings();
    String first = ".kinds li input[type=checkbox]";
    browser().run("document.querySelector('" + first + "').focus()");
    click(first);
    browser().await("!document.querySelector('" + first + "').checked");
    awaitText(".kinds legend", "(" + (things() - 1) + " of ");
    assertThat(rings()).isEqualTo(all - 1);
    assertThat(browser().run("document.activeElement.matches('" + first + "')").asBoolean())
        .as("the focus stays")
        .isTrue();
    click(first);
    awaitText(".kinds legend", "(" + things() + " of ");
    assertThat(rings()).isEqualTo(all);
    assertFits(width);
  }

  private static int things() throws Exception {
    return browser()
        .run("document.querySelectorAll('.kinds fieldset:first-child li').length")
        .asInt();
  }
}
