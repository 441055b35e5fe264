package fingering.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.Pages;
import fingering.cli.SheetPages;
import fingering.engraving.glyph.Glyph;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The page of plans in a real browser. The places of letters are measured; accessibility is checked
 * with axe-core 4.10 (W3C, WCAG 2).
 */
class PageInBrowserTest extends InBrowser {
  /** The page fits, as it opens and with everything that is folded. */
  private static void assertFits(Pages page, int width) throws Exception {
    Browser shown = shown(page, width);
    assertNothingOverlapsOrIsCutOff(shown, width);
    unfold(shown);
    assertNothingOverlapsOrIsCutOff(shown, width);
  }

  private static void unfold(Browser shown) throws Exception {
    shown.run("document.querySelectorAll('details').forEach(d => d.open = true); 0");
  }

  private static Browser shown(Pages page, int width) throws Exception {
    Browser shown = browser();
    shown.open(page.in(folder), width);
    return shown;
  }

  @ParameterizedTest
  @EnumSource
  void textNeitherOverlapsNorIsCutOffOnAPhone(Pages page) throws Exception {
    assertFits(page, 360);
  }

  @ParameterizedTest
  @EnumSource
  void textNeitherOverlapsNorIsCutOffOnATablet(Pages page) throws Exception {
    assertFits(page, 768);
  }

  @ParameterizedTest
  @EnumSource
  void textNeitherOverlapsNorIsCutOffOnADesktop(Pages page) throws Exception {
    assertFits(page, 1280);
  }

  @ParameterizedTest
  @EnumSource
  void textNeitherOverlapsNorIsCutOffInPrint(Pages page) throws Exception {
    Browser shown = shown(page, SHEET);
    shown.media("print", "light");
    assertNothingOverlapsOrIsCutOff(shown, SHEET);
    unfold(shown);
    assertNothingOverlapsOrIsCutOff(shown, SHEET);
    JsonNode pdf = shown.send("Page.printToPDF", Browser.node().put("preferCSSPageSize", false));
    byte[] bytes = Base64.getDecoder().decode(pdf.path("data").asText());
    assertThat(new String(bytes, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    assertThat(bytes.length).isGreaterThan(10_000);
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 768, 1280})
  void practicePageFitsAndLoadsNothing(int width) throws Exception {
    Browser shown = browser();
    shown.open(Pages.practice(folder), width);
    assertNothingOverlapsOrIsCutOff(shown, width);
    assertThat(shown.complaints()).isEmpty();
    assertThat(shown.requests()).hasSize(1).allMatch(address -> address.startsWith("file:"));
  }

  @Test
  void practicePageFitsInPrintAndIsAccessible() throws Exception {
    Browser shown = browser();
    for (String scheme : new String[] {"light", "dark"}) {
      shown.open(Pages.practice(folder), 1280);
      shown.media("screen", scheme);
      assertThat(faults(shown)).as(scheme).isEmpty();
    }
    shown.open(Pages.practice(folder), SHEET);
    shown.media("print", "light");
    assertNothingOverlapsOrIsCutOff(shown, SHEET);
  }

  @ParameterizedTest
  @ValueSource(strings = {"audition", "marks"})
  void pagesOfSheetsFitAndAreAccessible(String command) throws Exception {
    Path page = SheetPages.of(command, folder);
    Browser shown = browser();
    for (int width : new int[] {360, 768, 1280}) {
      shown.open(page, width);
      assertNothingOverlapsOrIsCutOff(shown, width);
    }
    assertThat(shown.complaints()).isEmpty();
    for (String scheme : new String[] {"light", "dark"}) {
      shown.open(page, 1280);
      shown.media("screen", scheme);
      assertThat(faults(shown)).as(scheme).isEmpty();
    }
    shown.open(page, SHEET);
    shown.media("print", "light");
    assertNothingOverlapsOrIsCutOff(shown, SHEET);
  }

  // ISO 216 and ANSI/ASME Y14.1, in inches.
  @ParameterizedTest
  @CsvSource({"8.27, 11.69", "8.5, 11"})
  void pageFitsWithinTheMarginsOfBothPaperSizes(double wide, double high) throws Exception {
    Browser shown = shown(Pages.DEMO, SHEET);
    shown.media("print", "light");
    JsonNode pdf =
        shown.send(
            "Page.printToPDF", Browser.node().put("paperWidth", wide).put("paperHeight", high));
    String text =
        new String(
            Base64.getDecoder().decode(pdf.path("data").asText()), StandardCharsets.ISO_8859_1);
    long pages = Pattern.compile("/Type\\s*/Page\\b").matcher(text).results().count();
    // The music on one side, the differences and the figures on another.
    assertThat(pages).isBetween(1L, 2L);
    String box = "/MediaBox\\s*\\[0 0 %d".formatted((int) Math.floor(wide * 72));
    assertThat(Pattern.compile(box).matcher(text).find()).isTrue();
  }

  @ParameterizedTest
  @EnumSource
  void consoleStaysEmptyAndNetworkIsNotUsed(Pages page) throws Exception {
    Browser shown = shown(page, 1280);
    assertThat(shown.complaints()).isEmpty();
    assertThat(shown.requests()).hasSize(1).allMatch(address -> address.startsWith("file:"));
  }

  @Test
  void overlapOfWordsAndNotesIsDetected() throws Exception {
    Browser shown = shown(Pages.DEMO, 768);
    shown.run(
        "(() => { const words = document.querySelector('.music .words'); const note ="
            + " words.closest('svg').querySelector('[href=\"#"
            + Glyph.HEAD_BLACK.id()
            + "\"]');"
            + " words.setAttribute('x', +note.getAttribute('x') - 20);"
            + " words.setAttribute('y', +note.getAttribute('y') + 5); })()");
    assertThat(shown.run(script("measure.js")).path("faults").toString())
        .contains("' over #" + Glyph.HEAD_BLACK.id());
  }

  @Test
  void overlapAndCutOffTextAreDetected() throws Exception {
    Browser shown = shown(Pages.DEMO, 768);
    shown.run(
        "(() => { const words = document.querySelector('.music .words');"
            + " words.after(words.cloneNode(true)); const far = words.cloneNode(true);"
            + " far.setAttribute('x', '-400'); words.after(far); })()");
    JsonNode faults = shown.run(script("measure.js")).path("faults");
    assertThat(faults.toString()).contains("' over '", "cut by its picture", "beyond the page");
  }

  @ParameterizedTest
  @EnumSource(names = {"DEMO", "BASS"})
  void noSeriousAccessibilityViolationsInLightOrDark(Pages page) throws Exception {
    for (String scheme : new String[] {"light", "dark"}) {
      Browser shown = shown(page, 1280);
      shown.media("screen", scheme);
      unfold(shown);
      assertThat(faults(shown)).as(scheme).isEmpty();
    }
  }

  // What a reader has opened is printed; what is folded is not.
  @Test
  void onlyWhatIsOpenIsPrinted() throws Exception {
    Browser shown = shown(Pages.DEMO, SHEET);
    shown.media("print", "light");
    String height = "document.querySelector('#more').offsetHeight";
    assertThat(shown.run(height).asInt()).isZero();
    shown.run("document.querySelector('#more details').open = true; 0");
    assertThat(shown.run(height).asInt()).isPositive();
    assertThat(shown.run("document.querySelectorAll('#more details')[1].offsetHeight").asInt())
        .isZero();
  }

  @Test
  void keyboardReachesTheMusicFirstAndEveryLinkHasATarget() throws Exception {
    Browser shown = shown(Pages.DEMO, 1280);
    JsonNode links =
        shown.run(
            "JSON.stringify({first: document.querySelector('a').getAttribute('href'), lost:"
                + " [...document.querySelectorAll('a')].filter(a =>"
                + " !document.querySelector(a.getAttribute('href'))).map(a => a.outerHTML)})");
    assertThat(links.path("first").asText()).isEqualTo("#music");
    assertThat(links.path("lost")).isEmpty();
  }
}
