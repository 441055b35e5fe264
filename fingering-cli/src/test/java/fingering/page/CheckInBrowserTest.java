package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.CheckPages;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page of a check in a real browser, with the rules of axe-core 4.10 (WCAG 2). */
class CheckInBrowserTest extends InBrowser {
  private static Browser shown(CheckPages page, int width) throws Exception {
    Browser shown = browser();
    shown.open(page.in(folder), width);
    return shown;
  }

  @ParameterizedTest
  @EnumSource
  void textNeitherOverlapsNorIsCutOff(CheckPages page) throws Exception {
    for (int width : new int[] {360, 768, 1280}) {
      Browser shown = shown(page, width);
      assertNothingOverlapsOrIsCutOff(shown, width);
      shown.run("document.querySelectorAll('details').forEach(d => d.open = true); 0");
      assertNothingOverlapsOrIsCutOff(shown, width);
      assertThat(shown.complaints()).isEmpty();
      assertThat(shown.requests()).hasSize(1).allMatch(address -> address.startsWith("file:"));
    }
    Browser printed = shown(page, SHEET);
    printed.media("print", "light");
    assertNothingOverlapsOrIsCutOff(printed, SHEET);
  }

  @ParameterizedTest
  @EnumSource
  void findingsArePrintedButOtherDetailsAreNot(CheckPages page) throws Exception {
    Browser printed = shown(page, SHEET);
    printed.media("print", "light");
    assertThat(
            printed
                .run(
                    "Math.min(...[...document.querySelectorAll('li .where')].map(e => e.offsetHeight))")
                .asInt())
        .isPositive();
  }

  @ParameterizedTest
  @EnumSource
  void noSeriousAccessibilityViolationsInLightOrDark(CheckPages page) throws Exception {
    for (String scheme : new String[] {"light", "dark"}) {
      Browser shown = shown(page, 1280);
      shown.media("screen", scheme);
      shown.run(script("/axe.min.js") + ";0");
      JsonNode found =
          shown.run(
              "axe.run(document).then(r => JSON.stringify({passes: r.passes.length, faults:"
                  + " r.violations.map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n =>"
                  + " n.html.slice(0, 120)).join(' | '))}))");
      assertThat(found.path("passes").asInt()).isGreaterThan(10);
      assertThat(StreamSupport.stream(found.path("faults").spliterator(), false))
          .as(scheme)
          .isEmpty();
    }
  }
}
