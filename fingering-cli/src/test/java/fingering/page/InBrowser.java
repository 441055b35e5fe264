package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tests of pages in a browser, which starts before the first of a class and ends after the last.
 */
@Tag("browser")
abstract class InBrowser {
  /** The width of A4 without the margins of the page, at 96 pixels per inch. */
  static final int SHEET = 695;

  private static final String NO_BROWSER =
      "There is no Chromium on this machine, so the page is not looked at: install 'chromium'.";

  @TempDir static Path folder;

  private static Optional<Browser> browser = Optional.empty();

  @BeforeAll
  static void start() throws Exception {
    Optional<Path> program = Browser.program();
    if (program.isEmpty()) {
      System.err.println(NO_BROWSER);
    }
    Assumptions.assumeTrue(program.isPresent(), NO_BROWSER);
    browser = Optional.of(Browser.start(program.get()));
  }

  @AfterAll
  static void stop() throws Exception {
    if (browser.isPresent()) {
      browser.get().end();
    }
  }

  static Browser browser() {
    return browser.orElseThrow();
  }

  static String script(String name) throws IOException {
    try (InputStream in = InBrowser.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Serious faults by the rules of axe-core. */
  static List<String> faults(Browser shown) throws Exception {
    shown.run(script("/axe.min.js") + ";0");
    JsonNode found =
        shown.run(
            "axe.run(document).then(r => JSON.stringify({passes: r.passes.length, faults:"
                + " r.violations.filter(v => v.impact === 'serious' || v.impact === 'critical')"
                + ".map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 120))"
                + ".join(' | '))}))");
    assertThat(found.path("passes").asInt()).isGreaterThan(10);
    return StreamSupport.stream(found.path("faults").spliterator(), false)
        .map(JsonNode::asText)
        .toList();
  }

  static void assertNothingOverlapsOrIsCutOff(Browser shown, int width) throws Exception {
    JsonNode measured = shown.run(script("measure.js"));
    assertThat(measured.path("width").asInt()).isEqualTo(width);
    assertThat(measured.path("texts").asInt()).isGreaterThan(50);
    assertThat(StreamSupport.stream(measured.path("faults").spliterator(), false))
        .as("at %d pixels", width)
        .isEmpty();
  }
}
