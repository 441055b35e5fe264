package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The HTML page of a check. */
class CheckPageTest {
  private static final Pattern LINK = Pattern.compile("href=\"#([^\"]*)\"");

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void isSelfContainedAndEveryLinkHasATarget(CheckPages page) throws IOException {
    String html = Files.readString(page.in(folder));
    assertThat(html)
        .doesNotContain("http:", "https:", "<script", "<link", "@import", "src=", "<iframe");
    assertThat(LINK.matcher(html).results().map(link -> " id=\"" + link.group(1) + "\""))
        .isNotEmpty()
        .allMatch(html::contains);
  }

  @Test
  void containsTheFindingsOfTheText() throws IOException {
    String html = Files.readString(CheckPages.ORCHESTRA.in(folder));
    assertThat(html)
        .contains("<h1>Lanterns on the Weir: can it be played?</h1>")
        .contains("B1 is below the lowest string of the cello", "Violin I", "Not checked: Flute.")
        .contains("Players and their teachers have the last word.");
  }

  @Test
  void bodyIsWellFormed() throws Exception {
    String html = Files.readString(CheckPages.SEVERAL.in(folder));
    String body = html.substring(html.indexOf("<body>"), html.indexOf("</html>"));
    assertThat(
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(
                    new ByteArrayInputStream(
                        body.replace(" open>", ">").getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagName("table")
                .getLength())
        .isGreaterThan(2);
  }

  @Test
  void findingsShowTheirMeasuresWithTheNoteInARing() throws IOException {
    String html = Files.readString(CheckPages.ORCHESTRA.in(folder));
    String cello = html.substring(html.indexOf("B1 is below the lowest string"));
    String finding = cello.substring(0, cello.indexOf("</li>"));
    assertThat(finding)
        .contains("<svg class=\"music\" role=\"img\"", "Measure 12:", "class=\"ring\"");
    assertThat(finding).doesNotContain("Measure 11:", "Measure 13:");
  }

  // Each drawn finding takes some kilobytes.
  @Test
  void onlySomeFindingsAreDrawnTheMostSevereFirst() throws IOException {
    StringBuilder tune = new StringBuilder("M:4/4\nL:1/8\nK:D clef=alto\n");
    for (int measure = 1; measure <= 60; measure++) {
      tune.append("\"_").append(measure).append("\"d'2 [C,^C,] z a'4|");
    }
    Path file = Files.writeString(folder.resolve("many.abc"), tune + "]\n");
    String html =
        Session.of("check", file, "--instrument", "viola", "--part", "1", "--format", "html").out();
    assertThat(html.split("class=\"pair\"", -1).length).isGreaterThan(1);
    assertThat(html.split("<svg class=\"music\" role=", -1).length - 1).isBetween(1, 40);
    assertThat(html.length()).isLessThan(3_000_000);
  }

  @Test
  void textOfTheScoreIsEscaped() throws IOException {
    Path score = TinyScore.titled("Fish &amp; &lt;b&gt;chips").part("Violin", "A4").in(folder);
    assertThat(Session.of("check", score, "--format", "html").succeeded().out())
        .contains("<h1>Fish &amp; &lt;b&gt;chips: can it be played?</h1>")
        .doesNotContain("<b>");
  }
}
