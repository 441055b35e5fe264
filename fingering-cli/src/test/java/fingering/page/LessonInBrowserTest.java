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

/** A teacher changes the plan of a lesson in a real browser: by clicks, by dragging and by keys. */
class LessonInBrowserTest extends InBrowser {
  @TempDir Path scores;

  private LocalServer server;

  @BeforeEach
  void startServer() throws Exception {
    server = LocalServer.start(scores, new LessonAdviser(), Clock.systemUTC());
    open(1280);
  }

  @AfterEach
  void stopServer() {
    server.close();
  }

  private void open(int width) throws Exception {
    browser().open(server.address(), width);
    browser().choose("#file", Session.DEMO);
    browser().await("document.querySelector('#verdict .answer')");
  }

  private static Hands hands() {
    return new Hands(browser());
  }

  private static String text(String selector) throws Exception {
    return browser().run("document.querySelector('" + selector + "').textContent").asText();
  }

  private static void chooseNote(int moment) throws Exception {
    hands().click(note(moment));
    browser().await("document.querySelector('#note input[value=\"" + moment + "\"]')");
  }

  private static String note(int moment) {
    return "rect.moment[data-moment=\"" + moment + "\"]";
  }

  private static void awaitRevision(int revision) throws Exception {
    browser().await("document.querySelector('#revision').value === '" + revision + "'");
  }

  private static String chosenWay() throws Exception {
    browser().await("document.querySelector('#note [aria-pressed=true]')");
    return text("#note [aria-pressed=true]");
  }

  private String saved() throws Exception {
    return Files.readString(scores.resolve("demo.yaml"));
  }

  @Test
  void clickedNoteShowsItsWaysAndTheChosenOneChangesThePlan() throws Exception {
    chooseNote(12);
    assertThat(text("#note h2")).isEqualTo("Measure 4, beat 3.5: G4");
    assertThat(chosenWay()).contains("3 on", "1st");
    assertThat(browser().run("document.querySelectorAll('.moment.chosen').length").asInt())
        .isEqualTo(1);

    hands().click("#note button[name=way][aria-pressed=false]");
    awaitRevision(1);
    browser().await("document.querySelector('#note button#lock').textContent === 'Unlock'");
    assertThat(chosenWay()).contains("4 on", "half");
    assertThat(text("#demands")).contains("beat\u00a03.5", "finger\u00a04");
    assertThat(
            browser()
                .run("document.querySelector('" + note(12) + "').getAttribute('class')")
                .asText())
        .contains("chosen", "locked", "changed");
    assertThat(browser().complaints()).isEmpty();
    assertThat(faults(browser())).isEmpty();
  }

  @Test
  void draggedMeasuresTakeADemandThatIsPricedAndDropped() throws Exception {
    hands().drag("#m4", "#m7");
    assertThat(text("#span")).isEqualTo("Measures 4 to 7:");
    hands().click("#range [data-key=stay]");
    awaitRevision(1);
    browser().await("document.querySelector('.chips small').textContent !== ''");
    assertThat(text(".chips li")).contains("3rd position", "without it:");

    hands().click(".chips button");
    awaitRevision(2);
    assertThat(saved()).doesNotContain("stay");
  }

  @Test
  void demandInTheWayIsDroppedByOneClick() throws Exception {
    hands().drag("#m4", "#m7");
    hands().click("#range [data-key=stay]");
    awaitRevision(1);
    hands().drag("#m5", "#m6");
    browser().run("document.querySelector('#position').value = '1'");
    hands().click("#range [data-key=stay]");
    browser().await("document.querySelector('#trouble [name=dropped]')");
    hands().click("#trouble [name=dropped]");
    awaitRevision(2);

    assertThat(saved()).contains("stay: 1@5-6").doesNotContain("3@4-7");
    assertThat(text("#trouble")).isBlank();
  }

  @Test
  void everythingIsDoneByKeys() throws Exception {
    browser().run("document.querySelector('#music').focus()");
    hands().key("ArrowRight", "ArrowRight", 0);
    hands().key("ArrowRight", "ArrowRight", 0);
    browser().await("document.querySelector('#note h2')");
    assertThat(text("#note h2")).startsWith("Measure 0");
    hands().key("ArrowDown", "ArrowDown", 0);
    browser().await("!document.querySelector('#note h2').textContent.startsWith('Measure 0')");

    hands().key("ArrowUp", "ArrowUp", 0);
    hands().key("2", "Digit2", 0);
    awaitRevision(1);
    hands().key("!", "Digit1", Hands.SHIFT);
    browser()
        .await(
            "document.querySelector('#revision').value !== '1'"
                + " || document.querySelector('#trouble p')");
    hands().key("z", "KeyZ", Hands.CONTROL);
    browser().await("document.querySelector('#redo:not(:disabled)')");
    hands().key("y", "KeyY", Hands.CONTROL);
    browser().await("document.querySelector('#redo:disabled')");

    hands().key("ArrowRight", "ArrowRight", Hands.SHIFT);
    hands().key("ArrowRight", "ArrowRight", Hands.SHIFT);
    browser().await("!document.querySelector('#range').hidden");
    assertThat(text("#span")).startsWith("Measures");
    hands().key("Escape", "Escape", 0);
    browser().await("document.querySelector('#range').hidden");
    hands().key("ArrowRight", "ArrowRight", 0);
    browser().await("document.querySelector('#note h2')");
    hands().key("Escape", "Escape", 0);
    browser().await("!document.querySelector('#note h2')");
  }

  @Test
  void slursAreChangedByClicksAndKeys() throws Exception {
    chooseNote(0);
    hands().click("#slur");
    awaitRevision(1);
    browser().await("document.querySelector('#slurs li')");
    assertThat(text("#slurs")).contains("Slur from m. 0, beat 3 to m. 0, beat 3.5");
    browser().await("document.querySelector('#separate')");
    assertThat(faults(browser())).isEmpty();
    assertThat(browser().complaints()).isEmpty();

    chooseNote(5);
    browser().run("document.querySelector('#music').focus()");
    hands().key("s", "KeyS", 0);
    assertThat(text("#slurring")).startsWith("A slur begins");
    assertThat(browser().run("document.querySelectorAll('.moment.slurring').length").asInt())
        .isEqualTo(1);
    hands().key("Escape", "Escape", 0);
    assertThat(text("#slurring")).isEmpty();
    hands().key("s", "KeyS", 0);
    hands().key("ArrowRight", "ArrowRight", 0);
    hands().key("s", "KeyS", 0);
    awaitRevision(2);
    assertThat(text("#slurring")).isEmpty();
    browser().await("document.querySelectorAll('#slurs li').length === 2");
    browser().await("document.querySelector('#note input[value=\"6\"]')");

    hands().click("#slurs button");
    awaitRevision(3);
    browser().await("document.querySelectorAll('#slurs li').length === 1");
    assertThat(saved()).contains("slurs: {2.1: ").doesNotContain("0.3");
  }

  @Test
  void pageStaysWhereItWasScrolledTo() throws Exception {
    open(390);
    chooseNote(0);
    browser().run("document.querySelector('#music').focus()");
    browser().run("window.scrollTo(0, document.body.scrollHeight)");
    String last = "document.querySelector('#music .system:last-child').getBoundingClientRect().top";
    int before = browser().run(last).asInt();

    hands().key("1", "Digit1", 0);
    awaitRevision(1);
    browser().await("document.querySelector('#note form[data-post=free]')");
    browser().awaitQuiet();
    assertThat(browser().run(last).asInt()).isEqualTo(before);
  }

  @Test
  void buttonOfANoteWorksWhileAnotherNoteIsLoading() throws Exception {
    chooseNote(0);
    browser()
        .run(
            "{document.querySelector('#music').focus();"
                + "document.querySelector('#music').dispatchEvent(new KeyboardEvent('keydown',"
                + " {key: 'ArrowRight', code: 'ArrowRight', bubbles: true}));"
                + "document.querySelector('#lock').click();0}");
    awaitRevision(1);
    assertThat(text("#note h2")).isNotEmpty();
    assertThat(saved()).contains("fix: 0.3=");
  }

  @Test
  void firstAndLastMeasureAreTapped() throws Exception {
    open(768);
    hands().click("#pick");
    hands().click("#m2");
    hands().click("#m3");
    assertThat(text("#span")).isEqualTo("Measures 2 to 3:");
    hands().click("#pick");
    assertThat(browser().run("document.querySelector('#range').hidden").asBoolean()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 768, 1280})
  void pageWithAnOpenNoteFitsTheWindow(int width) throws Exception {
    open(width);
    chooseNote(12);

    assertThat(browser().run("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    assertThat(faults(browser())).isEmpty();
  }

  @Test
  void thousandQuickClicksLeaveALessonThatCanBeRead() throws Exception {
    browser()
        .run(
            "(async () => {for (let i = 0; i < 1000; i++) {"
                + " const notes = document.querySelectorAll('rect.moment');"
                + " const box = notes[(i * 37) % notes.length].getBoundingClientRect();"
                + " const at = {bubbles: true, clientX: box.x + 2, clientY: box.y + 2, button: 0};"
                + " const line = notes[(i * 37) % notes.length].closest('svg');"
                + " line.dispatchEvent(new PointerEvent('pointerdown', at));"
                + " line.dispatchEvent(new MouseEvent('click', at));"
                + " if (i % 20 === 0) { await new Promise(r => setTimeout(r, 120));"
                + " const way = document.querySelector('#note [aria-pressed=false]');"
                + " if (way) way.click(); }}})()");
    // An answer on its way may still move the music under the pointer.
    browser().awaitQuiet();
    Thread.sleep(1000);
    browser().awaitQuiet();
    chooseNote(3);
    String lesson = saved();
    assertThat(Session.of("lesson", "show", scores.resolve("demo.yaml")).succeeded().out())
        .isNotEmpty();
    assertThat(lesson).contains("fix:");
    assertThat(text("#verdict")).contains("Take 'partly 3rd'");
  }

  @Test
  void fieldsFollowAnUndo() throws Exception {
    browser()
        .run(
            "(() => {const field = document.querySelector('[name=measures]'); field.value = '3-9';"
                + " field.dispatchEvent(new Event('change', {bubbles: true}))})()");
    awaitRevision(1);
    hands().click("#undo");
    awaitRevision(2);

    browser().await("document.querySelector('[name=measures]').value === ''");
  }

  @Test
  void twoTabsOnOneLessonShowTheSame() throws Exception {
    chooseNote(12);
    hands().click("#note button[name=way][aria-pressed=false]");
    awaitRevision(1);
    String page = browser().run("location.pathname").asText();
    // Another tab changes the lesson.
    browser()
        .run(
            "fetch('"
                + page
                + "/plan', {method: 'POST', body: 'revision=1&plan=first', headers: {'X-Page':"
                + " document.body.dataset.token}}).then(r => r.status)");
    hands().click(".switch input[value=third] + span");
    browser().await("document.querySelector('#trouble p')");

    assertThat(text("#trouble")).contains("changed in another window");
    assertThat(browser().run("document.querySelector('.switch :checked').value").asText())
        .isEqualTo("first");
  }
}
