package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The file that a student takes home, opened from a disk in a real browser. */
class GiftInBrowserTest extends InBrowser {
  /** A sound card that only computes what it would play; the test moves its clock. */
  private static final String RECORDER =
      """
      window.AudioContext = class extends OfflineAudioContext {
        constructor() { super(1, 44100 * 12, 44100); window.recorder = this; this.now = 0; }
        get currentTime() { return this.now; }
        get outputLatency() { return 0; }
        resume() {}
        suspend() {}
      };
      window.field = (name) => document.querySelector('[data-player="' + name + '"]');
      0
      """;

  /** Level, largest jump from sample to sample, and the pitch in the middle of a note. */
  private static final String LISTEN =
      """
      (async () => {
        const samples = (await recorder.startRendering()).getChannelData(0);
        let peak = 0, jump = 0;
        for (let i = 1; i < samples.length; i++) {
          peak = Math.max(peak, Math.abs(samples[i]));
          jump = Math.max(jump, Math.abs(samples[i] - samples[i - 1]));
        }
        const power = (from, hertz) => {
          let re = 0, im = 0;
          const size = 16384;
          for (let i = 0; i < size; i++) {
            const w = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / size);
            re += w * samples[from + i] * Math.cos(2 * Math.PI * hertz * i / 44100);
            im += w * samples[from + i] * Math.sin(2 * Math.PI * hertz * i / 44100);
          }
          return Math.hypot(re, im);
        };
        const pitch = (second, near) => {
          let best = near;
          for (let cents = -60; cents <= 60; cents++) {
            const hertz = near * 2 ** (cents / 1200);
            if (power(Math.round(second * 44100), hertz) > power(Math.round(second * 44100), best))
              best = hertz;
          }
          return 1200 * Math.log2(best / near);
        };
        const quiet = (second) => {
          const from = Math.round(second * 44100);
          return Math.max(...samples.slice(from, from + 2205).map(Math.abs));
        };
        return JSON.stringify({peak, jump, pitches: %s, quiet: %s});
      })()
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

  /** The file for a score, which the browser then shows without a server. */
  private Path gift(Path score, int width) throws Exception {
    browser().open(server.address(), 1280);
    browser().choose("#file", score);
    browser().await("document.querySelector('#player:not([hidden])')");
    return kept(width);
  }

  /** The file for the lesson that is shown. */
  private Path kept(int width) throws Exception {
    String page =
        browser()
            .run(
                "fetch(document.querySelector('a[href$=\"/gift\"]').href).then((answer) =>"
                    + " answer.text())")
            .asText();
    Path file = Files.writeString(scores.resolve("gift.html"), page);
    browser().open(file, width);
    return file;
  }

  @ParameterizedTest
  @CsvSource({"360, light", "1280, dark"})
  void fileNeedsNothingElseAndPlays(int width, String scheme) throws Exception {
    Path file = gift(Session.DEMO, width);
    browser().media("screen", scheme);
    assertThat(Files.size(file)).isLessThan(1_000_000);
    assertThat(browser().run("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    browser().run("document.querySelector('[data-player=play]').click()");
    browser().await("document.querySelector('.moment.now[data-moment=\"2\"]')");
    browser().run("document.querySelector('[data-player=play]').click()");
    assertThat(faults(browser())).isEmpty();
    // The icon belongs to the page of the server that was shown before.
    assertThat(browser().complaints()).allMatch(complaint -> complaint.contains("/favicon.ico"));
    assertThat(browser().requests())
        .filteredOn(address -> !address.endsWith("/favicon.ico"))
        .hasSize(1)
        .allMatch(address -> address.startsWith("file:"));
  }

  /** A tune that is so long that its music is packed. */
  private Path tune(int measures) throws Exception {
    String line = "GABc dBcA|dcBA GBAG|ABcd edcB|cBAG A2G2|\n";
    return Files.writeString(
        scores.resolve("long.abc"),
        "X:1\nM:4/4\nL:1/16\nQ:1/4=160\nK:G clef=alto\n"
            + line.replace(" ", "GABc ").repeat(measures / 4));
  }

  /**
   * The first is so long that the long lines are packed, the second that the short ones are, too.
   */
  @ParameterizedTest
  @CsvSource({"200, true", "420, false"})
  void longMusicIsUnpackedByTheBrowser(int measures, boolean plain) throws Exception {
    Path file = gift(tune(measures), 360);
    String page = Files.readString(file);
    assertThat(Files.size(file)).isLessThan(1_000_000);
    assertThat(page.contains("class=\"music short\"")).isEqualTo(plain);
    assertThat(page.contains("The music is packed in this file")).isEqualTo(!plain);
    browser().await("document.querySelector('.narrow-only #nm0')");
    assertThat(browser().run("document.querySelectorAll('.packed, .short').length").asInt())
        .isZero();
    assertThat(
            browser()
                .run("document.querySelectorAll('.played .narrow-only .target').length")
                .asInt())
        .isEqualTo(
            browser().run("document.querySelectorAll('.played .wide-only .target').length").asInt())
        .isEqualTo(measures);
    browser().run("document.querySelector('[data-player=play]').click()");
    browser().await("document.querySelector('.narrow-only .moment.now[data-moment=\"2\"]')");
    browser().run("document.querySelector('[data-player=play]').click()");
  }

  @ParameterizedTest
  @ValueSource(ints = {200, 420})
  void unpackedMusicIsAccessible(int measures) throws Exception {
    gift(tune(measures), 360);
    browser().await("document.querySelector('.narrow-only #nm0')");
    assertThat(faults(browser())).isEmpty();
  }

  @Test
  void ticksOfTheLadderStayInTheBrowser() throws Exception {
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    Files.copy(Session.DEMO, scores.resolve("demo.musicxml"));
    Files.writeString(
        scores.resolve("weir.journal"), today.minusDays(1) + " 18:30 | quarter=66 | all |\n");
    Path lesson =
        Files.writeString(
            scores.resolve("weir.yaml"),
            "score: demo.musicxml\nhearing: {date: %s, tempo: quarter = 96}\njournal: weir.journal\n"
                .formatted(today.plusDays(10)));
    browser().open(server.address(), 1280);
    browser().run("[...document.links].find(a => a.textContent === 'weir.yaml').click()");
    browser().await("document.querySelector('#player:not([hidden])')");
    assertThat(lesson).exists();
    Path file = kept(390);
    String ticks = "[...document.querySelectorAll('.days input')].map((one) => one.checked)";
    assertThat(browser().run(ticks + ".length").asInt()).isGreaterThan(5);
    assertThat(browser().run(ticks + ".includes(true)").asBoolean()).isFalse();
    browser().run("document.querySelectorAll('.days input')[1].click()");
    assertThat(faults(browser())).isEmpty();

    browser().open("about:blank", 390);
    browser().open(file, 390);
    assertThat(browser().run(ticks + ".indexOf(true)").asInt()).isEqualTo(1);
    browser().run("document.querySelectorAll('.days input')[1].click()");
    browser().open(file, 390);
    assertThat(browser().run(ticks + ".includes(true)").asBoolean()).isFalse();
  }

  @Test
  void tapsChooseMeasures() throws Exception {
    gift(Session.DEMO, 360);
    String tap =
        "(() => {const box = document.querySelector('#nm%d').getBoundingClientRect();"
            + " document.elementFromPoint(box.left + box.width / 2, box.top + 20)"
            + ".dispatchEvent(new MouseEvent('click', {bubbles: true, clientX: box.left + box.width"
            + " / 2, clientY: box.top + 20}))})()";
    String fields =
        "['from', 'to'].map((one) => document.querySelector(`[data-player=${one}]`).value).join()";
    browser().run("document.querySelector('#nm1').scrollIntoView()");
    browser().run(tap.formatted(1));
    assertThat(browser().run(fields).asText()).isEqualTo("1,1");
    browser().run(tap.formatted(3));
    assertThat(browser().run(fields).asText()).isEqualTo("1,3");
    assertThat(browser().run("document.querySelectorAll('.narrow-only .chosen').length").asInt())
        .isEqualTo(3);
    browser().run(tap.formatted(2));
    browser().run(tap.formatted(2));
    assertThat(browser().run(fields).asText()).isEqualTo(",");
  }

  /** Bowed, plucked and double-stopped notes with clicks: a half, a rest, two halves and so on. */
  @Test
  void tonesAreInTuneAndDoNotCrackle() throws Exception {
    Path tune =
        Files.writeString(
            scores.resolve("tones.abc"),
            "X:1\nM:2/4\nL:1/4\nQ:1/4=60\nK:C clef=alto\nA2|z2|C2|\"^pizz.\"G2|\"^arco\"[GA]2|A2|\n");
    gift(tune, 1280);
    browser()
        .run(
            RECORDER
                + ";(() => {const tempo = field('tempo'); tempo.value = 60;"
                + " tempo.dispatchEvent(new Event('input')); field('count-in').checked = false;"
                + " field('play').click(); return new Promise((done) => {const step ="
                + " setInterval(() => {recorder.now += 0.1; if (recorder.now > 11.9)"
                + " {clearInterval(step); done(1);}}, 30);});})()");
    // The music begins after a tenth of a second. A pitch is in cents from equal temperament.
    JsonNode heard =
        browser()
            .run(
                LISTEN.formatted(
                    "[pitch(0.6, 440), pitch(4.6, 261.626), pitch(6.15, 391.995), pitch(8.6,"
                        + " 391.995), pitch(8.6, 440), pitch(10.6, 440)]",
                    "[quiet(3.7), quiet(2.6)]"));
    assertThat(heard.path("peak").asDouble()).isBetween(0.2, 1.0);
    heard
        .path("pitches")
        .forEach(
            cents -> assertThat(cents.asDouble()).as(heard.toString()).isCloseTo(0, within(2.0)));
    // A click of the tone itself is a jump; the metronome at 1760 Hz rises by 0.063 a sample.
    assertThat(heard.path("jump").asDouble()).isLessThan(0.15);
    heard.path("quiet").forEach(level -> assertThat(level.asDouble()).isLessThan(1e-4));
  }
}
