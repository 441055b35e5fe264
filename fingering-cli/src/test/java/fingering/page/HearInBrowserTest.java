package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The music is played in a real browser, with its sound off. */
class HearInBrowserTest extends InBrowser {
  /** Milliseconds between what sounds and what is marked that nobody notices. */
  private static final double LATE = 50;

  /** Keeps the time at which each moment is marked, by the clock of the page. */
  private static final String WATCH =
      """
      window.seen = [];
      new MutationObserver((changes) => changes.forEach((change) => {
        const frame = change.target;
        if (frame.matches && frame.matches('rect.moment.now') && frame.getClientRects().length)
          window.seen.push([Number(frame.dataset.moment), performance.now()]);
      })).observe(document.body, {subtree: true, attributeFilter: ['class']});
      window.field = (name) => document.querySelector('[data-player="' + name + '"]');
      window.put = (name, value) => {
        const one = window.field(name);
        if (one.type === 'checkbox') one.checked = value; else one.value = value;
        one.dispatchEvent(new Event('input', {bubbles: true}));
        one.dispatchEvent(new Event('change', {bubbles: true}));
      };
      0
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

  private void openDemo() throws Exception {
    browser().open(server.address(), 1280);
    browser().choose("#file", Session.DEMO);
    browser().await("document.querySelector('#player:not([hidden])')");
    browser().run(WATCH);
  }

  private static void put(String field, String value) throws Exception {
    browser().run("put('%s', %s)".formatted(field, value));
  }

  private static void click(String field) throws Exception {
    browser().run("field('%s').click()".formatted(field));
  }

  /** The moments in the order in which they were marked, and the times in milliseconds. */
  private static List<double[]> seen() throws Exception {
    JsonNode all = browser().run("JSON.stringify({seen: window.seen})").path("seen");
    List<double[]> seen = new ArrayList<>();
    all.forEach(one -> seen.add(new double[] {one.get(0).asDouble(), one.get(1).asDouble()}));
    return seen;
  }

  private static List<Integer> moments() throws Exception {
    return seen().stream().map(one -> (int) one[0]).toList();
  }

  private static JsonNode table() throws Exception {
    return browser()
        .run(
            "fetch(document.querySelector('#player').dataset.sound).then((answer) => answer.text())");
  }

  @Test
  void soundingNotesAreMarkedInOrderAndOnTime() throws Exception {
    openDemo();
    put("count-in", "false");
    click("play");
    browser().await("window.seen.length > 24");
    List<double[]> seen = seen();
    click("play");
    JsonNode table = table().path("moments");

    double first = seen.get(0)[1] - table.get(0).get(1).asDouble() / 1000;
    for (int i = 0; i < seen.size(); i++) {
      assertThat(seen.get(i)[0]).isEqualTo(table.get(i).get(0).asDouble());
      assertThat(seen.get(i)[1] - first)
          .as("moment " + i)
          .isCloseTo(table.get(i).get(1).asDouble() / 1000, within(LATE));
    }
    assertThat(browser().run("document.querySelectorAll('.moment.now').length").asInt()).isZero();
    assertThat(browser().complaints()).isEmpty();
  }

  @Test
  void chosenMeasuresAreLoopedAndTheTempoFollowsTheSlider() throws Exception {
    openDemo();
    put("count-in", "false");
    put("loop", "true");
    put("from", "'3'");
    put("to", "'3'");
    click("play");
    browser().await("window.seen.length > 3");
    int start = moments().get(0);
    browser().await("window.seen.filter((one) => one[0] === " + start + ").length > 2");
    List<double[]> laps = seen().stream().filter(one -> one[0] == start).toList();
    // A measure of three quarters at 96.
    assertThat(laps.get(1)[1] - laps.get(0)[1]).isCloseTo(1875, within(LATE));

    put("tempo", "'48'");
    browser().run("window.seen = []");
    browser().await("window.seen.filter((one) => one[0] === " + start + ").length > 2");
    List<double[]> slow = seen().stream().filter(one -> one[0] == start).toList();
    assertThat(slow.get(2)[1] - slow.get(1)[1]).isCloseTo(3750, within(LATE));
    assertThat(browser().run("field('mark').textContent").asText()).isEqualTo("quarter = 48");
    click("play");
  }

  @Test
  void playingSurvivesNewLinesOfMusic() throws Exception {
    openDemo();
    put("count-in", "false");
    click("play");
    browser().await("window.seen.length > 4");
    browser()
        .run(
            "document.querySelectorAll('#music .system').forEach((line) => line.outerHTML ="
                + " line.outerHTML)");
    browser()
        .run(
            "document.body.dispatchEvent(new CustomEvent('htmx:afterRequest', {detail:"
                + " {requestConfig: {verb: 'post', path: ''}}}))");
    browser().await("window.seen.length > 14");
    assertThat(moments().stream().distinct().toList())
        .startsWith(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
    assertThat(browser().run("document.querySelectorAll('.moment.now').length").asInt())
        .isLessThanOrEqualTo(1);
    click("play");
  }

  @Test
  void otherMeasuresBringTheirOwnTable() throws Exception {
    openDemo();
    browser()
        .run(
            "(() => {const field = document.querySelector('[name=measures]'); field.value = '9-12';"
                + " field.dispatchEvent(new Event('change', {bubbles: true}))})()");
    browser().await("document.querySelector('#s-9') && !document.querySelector('#s-0')");
    put("count-in", "false");
    Thread.sleep(1000);
    click("play");
    browser().await("window.seen.length > 2");
    click("play");
    assertThat(moments().subList(0, 3)).containsExactly(0, 1, 2);
    assertThat(table().path("measures").get(0).path("number").asText()).isEqualTo("9");
  }

  @Test
  void spaceBarPlaysWhileTheMusicHasTheFocus() throws Exception {
    openDemo();
    String key =
        "document.querySelector('%s').dispatchEvent(new KeyboardEvent('keydown', {code: 'Space',"
            + " bubbles: true, cancelable: true}))";
    browser().run(key.formatted("[name=measures]"));
    assertThat(browser().run("fingeringPlayer.playing()").asBoolean()).isFalse();
    browser().run(key.formatted("#music"));
    assertThat(browser().run("fingeringPlayer.playing()").asBoolean()).isTrue();
    browser().run(key.formatted("#music"));
    assertThat(browser().run("fingeringPlayer.playing()").asBoolean()).isFalse();
  }

  @Test
  void measuresChosenInTheMusicAreThoseThatArePlayed() throws Exception {
    openDemo();
    browser()
        .run(
            "document.dispatchEvent(new CustomEvent('measures', {detail: {from: 9, to: 10}}));"
                + " put('count-in', false)");
    assertThat(browser().run("field('from').value + '-' + field('to').value").asText())
        .isEqualTo("9-10");
    click("play");
    browser().await("window.seen.length > 1");
    click("play");
    assertThat(moments().get(0)).isEqualTo(25);
  }

  @Test
  void unknownMeasureIsSaidBesideTheFields() throws Exception {
    openDemo();
    put("from", "'99'");
    assertThat(browser().run("field('trouble').textContent").asText())
        .isEqualTo("There is no measure 99 in this music.");
  }
}
