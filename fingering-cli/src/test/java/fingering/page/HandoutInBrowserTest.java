package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.Handouts;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Handouts as a browser prints them. */
class HandoutInBrowserTest extends InBrowser {
  /** The least share of a side, from its upper edge, that is filled. */
  private static final double FULL = 0.9;

  static Stream<Arguments> sheets() {
    return Stream.of(Handouts.values())
        .flatMap(each -> Stream.of("a4", "letter").map(paper -> Arguments.of(each, paper)));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void fillsExactlyOneSide(Handouts handout, String paper) throws Exception {
    Browser shown = browser();
    shown.open(handout.in(folder, paper), SHEET);
    shown.media("print", "light");
    JsonNode pdf = shown.send("Page.printToPDF", Browser.node().put("preferCSSPageSize", true));
    String text =
        new String(
            Base64.getDecoder().decode(pdf.path("data").asText()), StandardCharsets.ISO_8859_1);
    assertThat(Pattern.compile("/Type\\s*/Page\\b").matcher(text).results().count()).isEqualTo(1);
    // Points: 210 mm and 8.5 inches (ISO 216, ANSI/ASME Y14.1).
    String box = "/MediaBox\\s*\\[0 0 " + (paper.equals("a4") ? "59[456]" : "612");
    assertThat(Pattern.compile(box).matcher(text).find()).isTrue();
  }

  /** Nothing reaches beyond the side, into the next part of it, or into the other column. */
  @ParameterizedTest
  @MethodSource("sheets")
  void nothingIsCutAndNoSideIsHalfEmpty(Handouts handout, String paper) throws Exception {
    Browser shown = browser();
    shown.open(handout.in(folder, paper), 1000);
    shown.media("print", "light");
    JsonNode measured =
        shown.run(
            """
            (() => {
              const sheet = document.querySelector('.sheet');
              const box = sheet.getBoundingClientRect();
              const faults = [];
              let below = box.top;
              for (const part of sheet.children) {
                const r = part.getBoundingClientRect();
                if (r.top < below - 0.6) faults.push(part.className + ' covers the part above');
                below = r.bottom;
                for (const e of part.querySelectorAll('p, td, th, h2, .music svg')) {
                  const b = e.getBoundingClientRect();
                  if (b.left < box.left - 1 || b.right > box.right + 1 || b.bottom > r.bottom + 5)
                    faults.push(e.tagName + ' ' + e.textContent.slice(0, 20) + ' is cut');
                  if (e.scrollWidth > e.clientWidth + 1 && e.tagName !== 'svg' && e.clientWidth > 0)
                    faults.push(e.textContent.slice(0, 20) + ' is too wide');
                }
              }
              let last = -1e9;
              for (const line of sheet.querySelectorAll(':scope > .music > svg')) {
                const b = line.getBoundingClientRect();
                if (b.top < last - 8) faults.push('lines of music overlap');
                last = b.bottom;
              }
              return JSON.stringify({faults, filled: (below - box.top) / box.height});
            })()
            """);
    assertThat(measured.path("faults")).as(measured.toString()).isEmpty();
    assertThat(measured.path("filled").asDouble()).isBetween(FULL, 1.0);
  }

  @Test
  void fitsAPhoneAndIsAccessible() throws Exception {
    Browser shown = browser();
    shown.open(Handouts.DEMO.in(folder, "a4"), 360);
    assertThat(shown.run("document.documentElement.scrollWidth").asInt()).isLessThanOrEqualTo(360);
    assertThat(shown.complaints()).isEmpty();
    assertThat(shown.requests()).hasSize(1).allMatch(address -> address.startsWith("file:"));
    shown.run(script("/axe.min.js") + ";0");
    JsonNode found =
        shown.run(
            "axe.run(document).then(r => JSON.stringify({faults: r.violations.filter(v => v.impact"
                + " === 'serious' || v.impact === 'critical').map(v => v.id + ': ' +"
                + " v.nodes[0].html.slice(0, 120))}))");
    assertThat(found.path("faults")).as(found.toString()).isEmpty();
  }
}
