package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

/** The HTML pages of an audition and of what to circle. */
class SheetPagesTest {
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");
  private static final Pattern LINK = Pattern.compile("href=\"#([^\"]*)\"");

  private static List<String> pages() {
    return List.of(SheetPages.html("audition"), SheetPages.html("marks"));
  }

  private static String words(String html) {
    return html.replaceAll("<[^>]*>", " ")
        .replace("\u00a0", " ")
        .replaceAll("\\s+", " ")
        .replaceAll(" ([,:.])", "$1");
  }

  @Test
  void everyIdIsUniqueAndEveryLinkHasATarget() {
    for (String page : pages()) {
      List<String> ids = ID.matcher(page).results().map(id -> id.group(1)).toList();
      assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
      assertThat(
              LINK.matcher(page).results().map(link -> link.group(1)).collect(Collectors.toSet()))
          .isNotEmpty()
          .isSubsetOf(ids);
    }
  }

  @Test
  void pagesLoadNothingFromOutside() {
    assertThat(pages())
        .allSatisfy(
            page ->
                assertThat(page)
                    .doesNotContain("http:", "https:", "<script", "<link", "@import", "src="));
  }

  @Test
  void bodiesAreWellFormed() throws Exception {
    for (String page : pages()) {
      String body = page.substring(page.indexOf("<body>"), page.indexOf("</html>"));
      assertThat(
              DocumentBuilderFactory.newInstance()
                  .newDocumentBuilder()
                  .parse(new ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8)))
                  .getElementsByTagName("svg")
                  .getLength())
          .isGreaterThan(10);
    }
  }

  @Test
  void auditionPageHasTheAnswerTheTableAndTheMusicOfEveryPiece() {
    String page = pages().get(0);
    assertThat(words(page))
        .contains("Everything asked for is shown if F major is played in 2nd position")
        .contains("2nd position in 8 stopped notes missing 15 notes 3")
        .contains("2nd position throughout (easiest: 1st position throughout)")
        .contains("stop if it hurts, rest");
    assertThat(Pattern.compile("class=\"music wide-only\"").matcher(page).results()).hasSize(4);
  }

  @Test
  void marksPageHasEveryLineOfTheText() {
    String page = words(pages().get(1));
    List<String> lines =
        Session.of("marks", Session.DEMO)
            .succeeded()
            .out()
            .replaceAll("\n {18}", " ")
            .lines()
            .filter(line -> line.startsWith("  m. "))
            .map(line -> line.strip().replaceFirst("(beat [0-9.]+) +", "$1: "))
            .toList();
    assertThat(lines).hasSizeGreaterThan(15).allSatisfy(line -> assertThat(page).contains(line));
    assertThat(
            LINK.matcher(pages().get(1))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet()))
        .contains("href=\"#m9\"");
  }
}
