package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long a teacher waits after a click, on a real part: {@code -Dclicks=SCORE} prints the median
 * and the 95th percentile from click to picture. The times are shown, not tested.
 */
@EnabledIfSystemProperty(named = "clicks", matches = ".+")
class ClicksInBrowserTest extends InBrowser {
  @TempDir Path scores;

  @Test
  void everyClickIsAnswered() throws Exception {
    try (LocalServer server = LocalServer.start(scores, new LessonAdviser(), Clock.systemUTC())) {
      browser().open(server.address(), 1280);
      browser().choose("#file", Path.of(System.getProperty("clicks")));
      browser().await("document.querySelector('#verdict .answer')");
      browser().run("window.clicks = " + script("clicks.js") + ".then(t => window.times = t); 0");
      for (int minutes = 0; minutes < 10 && !done(); minutes++) {
        awaitTimes();
      }
      JsonNode found = browser().run("window.times");
      System.out.printf(Locale.ROOT, "%d moments%n", found.path("notes").asInt());
      for (String what : new String[] {"note", "way", "plan"}) {
        double[] times =
            StreamSupport.stream(found.path("times").path(what).spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .sorted()
                .toArray();
        assertThat(times).isNotEmpty();
        System.out.printf(
            Locale.ROOT,
            "%-5s %d clicks: median %.0f ms, 95th percentile %.0f ms%n",
            what,
            times.length,
            times[times.length / 2],
            times[(int) Math.ceil(times.length * 0.95) - 1]);
      }
    }
  }

  private static boolean done() throws Exception {
    return browser().run("Boolean(window.times)").asBoolean();
  }

  private static void awaitTimes() throws Exception {
    for (int i = 0; i < 600 && !done(); i++) {
      Thread.sleep(100);
    }
  }
}
