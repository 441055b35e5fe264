package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
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
        const music = document.getElementById('staff');
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
    run(
        "(() => {const b = document.getElementById('abc'); b.focus();"
            + " b.setSelectionRange(b.value.trimEnd().length, b.value.trimEnd().length)})()");
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
    assertThat(run("document.querySelectorAll('#staff .system svg').length").asInt())
        .isGreaterThan(2);
    assertThat(run("document.documentElement.scrollWidth").asInt()).isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();

    run("document.querySelector('.save button').click()");
    browser().await("document.querySelector('#saved a')");
    assertThat(text("#saved")).contains("Saved as Study at the Weir.abc");
    assertThat(Files.readString(scores.resolve("Study at the Weir.abc")))
        .contains("(G2A2) (B>c)d2");
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
  void fieldsWriteTheLinesAboveTheNotesAndFollowThem() throws Exception {
    open(1280);
    chosen("instrument", "Cello");
    chosen("key", "Dm");
    chosen("meter", "3/4");
    chosen("unit", "1/4");
    chosen("beat", "3/8");
    chosen("speed", "72");
    chosen("first", "41");
    chosen("title", "Weir");
    assertThat(box())
        .isEqualTo(
            """
            X:1
            T:Weir
            V:1 name="Cello"
            M:3/4
            L:1/4
            Q:3/8=72
            %%propagate-accidentals octave
            %%setbarnb 41
            K:Dm clef=bass
            C,, G,, D, |
            """);

    drawn(
        "box.value = 'T:Other\\nM:6/8\\nK:F#m clef=tenor\\nA3 B3|'; box.dispatchEvent(new Event('input'))");
    assertThat(fields("title", "key", "clef", "meter", "unit", "first"))
        .isEqualTo("Other F#m tenor 6/8  ");
    chosen("unit", "1/8");
    chosen("clef", "alto");
    assertThat(box()).isEqualTo("T:Other\nM:6/8\nL:1/8\nK:F#m clef=alto\nA3 B3|");
  }

  @Test
  void openStringsFillAMeasureUntilTheyAreTypedOver() throws Exception {
    open(1280);
    chosen("instrument", "Viola");
    for (String meter : List.of("2/4", "3/4", "6/8", "4/4")) {
      chosen("meter", meter);
      assertThat(text("#heard")).as(meter).isEqualTo("1 measure. Nothing to correct.");
    }
    assertThat(notes()).isEqualTo("C,2 G,2 D2 A2 |");
    typed("C8 |");
    chosen("meter", "3/4");
    assertThat(notes()).isEqualTo("C8 |");
  }

  @Test
  void titleIsWrittenWhileItIsTyped() throws Exception {
    open(1280);
    drawn(
        "const f = document.querySelector('[name=title]'); f.focus(); f.value = 'Weir ';"
            + " f.dispatchEvent(new Event('input', {bubbles: true}))");
    assertThat(box()).contains("T:Weir \n");
    assertThat(fields("title")).isEqualTo("Weir ");
  }

  private static String fields(String... names) throws Exception {
    return run("%s.map(name => document.querySelector('[name=' + name + ']').value).join(' ')"
            .formatted("['" + String.join("','", names) + "']"))
        .asText();
  }

  @Test
  void buttonsChangeTheNoteBeforeTheCursor() throws Exception {
    open(1280);
    typed("C");
    for (String button :
        List.of("Sharp", "Octave up", "Twice", "Dotted", "Staccato", "mf", "tie")) {
      pressed(button);
    }
    assertThat(notes()).isEqualTo("!mf!.^c3-");
    for (String button :
        List.of("Natural", "Octave down", "Octave down", "Half", "tie", "Staccato", "Accent")) {
      pressed(button);
    }
    assertThat(notes()).isEqualTo("L!mf!=C,3/2");

    typed(" D E");
    drawn(
        "box.setSelectionRange(box.value.length - 4, box.value.length - 1); "
            + "document.querySelector('[data-act=around]').click()");
    assertThat(notes()).isEqualTo("L!mf!=C,3/2 (D E)");
    cursorAtEnd();
    pressed("Bar line");
    pressed("pizz.");
    typed("G");
    pressed("rest");
    assertThat(notes()).isEqualTo("L!mf!=C,3/2 (D E) | \"^pizz.\"Gz");
  }

  private static String notes() throws Exception {
    return box().lines().reduce((first, last) -> last).orElseThrow();
  }

  @Test
  void textSurvivesAReloadAndAProgramThatHasEnded() throws Exception {
    open(1280);
    typed("A B c d |");
    browser().run("window.before = true; location.reload()");
    browser().await("!window.before && document.querySelector('.typing .system')");
    assertThat(notes()).isEqualTo("A B c d |");

    server.close();
    cursorAtEnd();
    typed("e f");
    assertThat(text("#trouble")).contains("Your text is still here");
    assertThat(box()).contains("e f");
    assertThat(run("document.querySelectorAll('#staff .system').length").asInt()).isPositive();
  }

  @Test
  void takenNameIsSaidBesideTheField() throws Exception {
    Files.writeString(scores.resolve("weir.abc"), "mine");
    open(1280);
    typed("A B c d |");
    run(
        "document.querySelector('[name=name]').value = 'weir';"
            + " document.querySelector('.save button').click()");
    browser().await("document.querySelector('#named p')");
    assertThat(text("#named")).contains("There is already a file weir.abc");
    assertThat(scores.resolve("weir.abc")).hasContent("mine");
  }

  @Test
  void measureOfTheMusicLeadsToItsText() throws Exception {
    open(1280);
    typed("C2 D2 E2 F2 | G2 A2 B2 c2 |]");
    run(
        "(() => {const at = document.querySelector('#m1').getBoundingClientRect();"
            + " document.elementFromPoint(at.left + 9, at.top + 9).dispatchEvent(new MouseEvent('click',"
            + " {bubbles: true, clientX: at.left + 9, clientY: at.top + 9}))})()");
    assertThat(
            run("document.activeElement.value.slice(document.activeElement.selectionStart)")
                .asText())
        .startsWith("G2 A2");
    browser().await("document.querySelector('#m1.here')");
  }

  @Test
  void faultsLeadToTheirPlacesAndTheRestIsDrawn() throws Exception {
    open(1280);
    typed("C2 D2 E2 F2 | C2 D2 k E2 | G2 A2 B2 c2 |]");

    assertThat(text("#heard")).isEqualTo("3 measures. 2 places to look at:");
    assertThat(text("#faults"))
        .contains("Line 10, column 15: measure 2 has 3 beats, 4 expected.")
        .contains("Line 10, column 21: the sign 'k' is not used");
    assertThat(run("document.querySelectorAll('.misfit').length").asInt()).isEqualTo(1);
    assertThat(run("document.querySelector('#m1').matches('.misfit')").asBoolean()).isTrue();

    run("document.querySelectorAll('#faults button')[1].click()");
    assertThat(run("document.activeElement.id").asText()).isEqualTo("abc");
    typed("F2 ");
    run("document.activeElement.setSelectionRange(0, 0)");
    browser().run("document.querySelectorAll('#faults button')[0].click()");
    assertThat(
            run("document.activeElement.value.slice(document.activeElement.selectionStart)")
                .asText())
        .startsWith("k E2");
  }
}
