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
  void textOfTheScoreIsEscaped() throws IOException {
    Path score = TinyScore.titled("Fish &amp; &lt;b&gt;chips").part("Violin", "A4").in(folder);
    assertThat(Session.of("check", score, "--format", "html").succeeded().out())
        .contains("<h1>Fish &amp; &lt;b&gt;chips: can it be played?</h1>")
        .doesNotContain("<b>");
  }
}
