package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.command.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An excerpt is typed from paper in a real browser, from the empty page to its plans. */
class TypeInBrowserTest extends InBrowser {
  /** Sixteen measures of our own. */
  private static final String SIXTEEN =
      """
      !mf!(G2A2) (B>c)d2 | (g/f/e/d/ c/B/A/G/) F2 ^C2 | "^pizz."!f!.D.F.A.d [DA]2 z2 | "^arco"(g4 ^f2) z2 |
      !p!(3(GAB) (3(cde) f2 e2 | d4- d2 c2 | LG/A/B/c/ d/e/f/g/ a2 g2 | !trill!A6 z2 |
      G,2 (A,B,) C2 D2 | vE2 uF2 G2 A2 | B>A G>F E2 D2 | C8 |
      _B2 A2 G2 F2 | (E2 D2) (C2 B,2) | A,2 B,2 C2 D2 | E8 |]
      """;

  private static final String AWAITED =
      """
      (() => new Promise(done => {
        const music = document.getElementById('music');
        const start = performance.now();
        const watch = new MutationObserver(() => {
          if (!music.hasAttribute('aria-busy')) {
            watch.disconnect();
            requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - start)));
          }
        });
        watch.observe(music, {attributes: true});
        const box = document.getElementById('abc');
        box.focus();
        %s
      }))()
      """;

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

  private void open(int width) throws Exception {
    // The page of the test before must not ask whether to leave.
    browser().open("about:blank", width);
    browser().open(server.address(), width);
    browser().run("[...document.links].find(a => a.pathname === '/type').click()");
    browser().await("document.querySelector('.typing .system')");
  }

  private static JsonNode run(String script) throws Exception {
    return browser().run(script);
  }

  private static String text(String selector) throws Exception {
    return run("document.querySelector('" + selector + "').textContent").asText();
  }

  private static String box() throws Exception {
    return run("document.getElementById('abc').value").asText();
  }

  /** Does something in the page, and waits until it is drawn; returns the milliseconds. */
  private static double drawn(String script) throws Exception {
    return run(AWAITED.formatted(script)).asDouble();
  }

  /** Types at the cursor, as a key does. */
  private static double typed(String text) throws Exception {
    return drawn(
        "document.execCommand('insertText', false, %s)"
            .formatted(Browser.node().textNode(text).toString()));
  }

  private static void chosen(String field, String value) throws Exception {
    drawn(
        ("const f = document.querySelector('[name=%s]'); f.value = '%s';"
                + " f.dispatchEvent(new Event('change', {bubbles: true}))")
            .formatted(field, value));
  }

  private static void pressed(String name) throws Exception {
    drawn("document.querySelector('[data-act][aria-label^=\"" + name + "\"]').click()");
  }

  private static void cursorAtEnd() throws Exception {
    run("(() => {const b = document.getElementById('abc'); b.focus();"
        + " b.setSelectionRange(b.value.length, b.value.length)})()");
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void sixteenMeasuresAreTypedSavedAndPlanned(int width) throws Exception {
    open(width);
    assertThat(text("#heard")).startsWith("1 measure.");
    chosen("instrument", "Viola");
    chosen("key", "G");
    chosen("title", "Study at the Weir");
    typed(SIXTEEN);

    assertThat(box()).contains("V:1 name=\"Viola\"", "K:G clef=alto", "T:Study at the Weir");
    assertThat(text("#heard")).isEqualTo("16 measures. Nothing to correct.");
    assertThat(run("document.querySelectorAll('#music .system svg').length").asInt())
        .isGreaterThan(2);
    assertThat(run("document.documentElement.scrollWidth").asInt()).isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();

    run("document.querySelector('.save button').click()");
    browser().await("document.querySelector('#saved a')");
    assertThat(text("#saved")).contains("Saved as Study at the Weir.abc");
    assertThat(Files.readString(scores.resolve("Study at the Weir.abc"))).contains("(G2A2) (B>c)d2");
    run("document.querySelector('#saved a').click()");
    browser().await("document.querySelector('#verdict .answer')");
    assertThat(text("#verdict")).contains("Viola");
    assertThat(browser().complaints()).isEmpty();

    run("[...document.links].find(a => a.pathname === '/type').click()");
    browser().await("document.querySelector('.typing .system')");
    assertThat(box()).contains("(G2A2) (B>c)d2");
    assertThat(run("document.querySelector('[name=instrument]').value").asText())
        .isEqualTo("Viola");
  }

  @Test
  void faultsLeadToTheirPlacesAndTheRestIsDrawn() throws Exception {
    open(1280);
    typed("C2 D2 E2 F2 | C2 D2 k E2 | G2 A2 B2 c2 |]");

    assertThat(text("#heard")).isEqualTo("3 measures. 2 places to look at:");
    assertThat(text("#faults"))
        .contains("Line 9, column 15: measure 2 has 3 beats, 4 expected.")
        .contains("Line 9, column 21: the sign 'k' is not used");
    assertThat(run("document.querySelectorAll('.misfit').length").asInt()).isEqualTo(1);
    assertThat(run("document.querySelector('#m1').matches('.misfit')").asBoolean()).isTrue();

    run("document.querySelectorAll('#faults button')[1].click()");
    assertThat(run("document.activeElement.id").asText()).isEqualTo("abc");
    typed("F2 ");
    run("document.activeElement.setSelectionRange(0, 0)");
    browser().run("document.querySelectorAll('#faults button')[0].click()");
    assertThat(run("document.activeElement.value.slice(document.activeElement.selectionStart)")
            .asText())
        .startsWith("k E2");
  }
}
