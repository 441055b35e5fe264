package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.practice.PracticeText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The HTML page for the practice of a plan. */
class PracticePageTest {
  @TempDir Path folder;

  private static String words(String html) {
    return html.replaceAll("<[^>]*>", " ")
        .replace("\u00a0", " ")
        .replaceAll("\\s+", " ")
        .replaceAll(" ([,:.])", "$1");
  }

  @Test
  void pageContainsEverythingInTheText() {
    String page = words(Pages.practised("--from", "quarter=60").succeeded().out());
    String text = Pages.practisedAsText("--from", "quarter=60").succeeded().out();
    List<String> lines =
        text.lines()
            .map(line -> line.strip().replaceFirst("^- ", ""))
            .filter(line -> !line.isEmpty())
            .map(line -> line.replaceAll("\\s+", " "))
            .toList();
    assertThat(lines).hasSizeGreaterThan(25);
    assertThat(lines).allSatisfy(line -> assertThat(page).contains(line));
    assertThat(page).contains("m. 9, beat 1: sudden f after p", PracticeText.CARE);
  }

  @Test
  void spotsShowTheirExercisesInNotesAndTheLadderHasBoxesToTick() {
    String page = Pages.practised("--from", "quarter=60").succeeded().out();
    String spots = page.substring(page.indexOf("id=\"spots\""), page.indexOf("id=\"days\""));
    assertThat(spots.split("class=\"spot\"", -1)).hasSizeGreaterThan(3);
    assertThat(spots.split("music wide-only", -1)).hasSameSizeAs(spots.split("\"spot\"", -1));
    assertThat(page.split("class=\"box\"", -1).length).isGreaterThan(8);
    assertThat(page.split(PracticeText.CARE, -1)).hasSize(2);
  }

  @Test
  void progressIsDrawnInTheUnitOfTheGoal() throws IOException {
    String page = Files.readString(Pages.practice(folder));
    assertThat(page).contains("<figure class=\"progress\"><svg", "goal: quarter = 96");
    // half = 40 is quarter = 80
    assertThat(page).contains("to 80 on Thursday 3 December 2026");
    assertThat(page).contains("Journal, line 3 is skipped");
  }

  @Test
  void nothingIsDrawnWithoutAJournal() {
    assertThat(Pages.practised("--from", "quarter=60").succeeded().out())
        .doesNotContain("<figure", "From the journal");
  }

  @Test
  void journalWithoutATempoIsReported() throws IOException {
    Path journal = Files.writeString(folder.resolve("empty.journal"), "# nothing yet\n");
    assertThat(Pages.practised("--from", "quarter=60", "--journal", journal).succeeded().out())
        .doesNotContain("<figure")
        .contains("The journal has no clean tempo yet.");
  }

  @Test
  void pageLoadsNothingFromOutside() throws IOException {
    assertThat(Files.readString(Pages.practice(folder)).replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http:", "https:", "<script", "<link", "@import", "src=");
  }
}
