package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.text.SummaryText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages and pictures of plans. */
class PageOutputTest {
  private static final int THREE_MEGABYTES = 3_000_000;
  private static final int EIGHT_MEGABYTES = 8_000_000;

  @TempDir Path folder;

  private static String compared(Object... more) {
    Object[] all =
        Stream.concat(Stream.of("compare", Session.DEMO, "--format", "html"), Stream.of(more))
            .toArray();
    return Session.of(all).succeeded().out();
  }

  @Test
  void fileEndingSelectsTheFormat() {
    for (String command : List.of("plan", "compare")) {
      Path page = folder.resolve(command + ".html");
      Path json = folder.resolve(command + ".json");
      Session.of(command, Session.DEMO, "--output", page).succeeded();
      Session.of(command, Session.DEMO, "--output", json).succeeded();
      assertThat(page).content().startsWith("<!DOCTYPE html>");
      assertThat(json).content().startsWith("{");
    }
  }

  @Test
  void pageContainsTheContentOfTheText() {
    String page = compared().replaceAll("&quot;", "\"");
    String text = Session.of("compare", Session.DEMO).succeeded().out().replaceAll("\\s+", " ");
    for (String sentence :
        List.of("3rd position in m. 17–24, otherwise 1st", "up to quarter = 117")) {
      assertThat(text).contains(sentence);
      assertThat(page).contains(sentence);
    }
    assertThat(page).contains(SummaryText.CARE);
  }

  // docs/demo/README.md, written before there was a page: third position in 17 to 24, the rests in
  // 24 and 27, pizzicato in 25.
  @Test
  void shiftsOfTheDemoAreListedAtTheirPlaces() {
    String page = compared();
    String shifts = page.substring(page.indexOf("<h3>partly 3rd</h3>"));
    shifts = shifts.substring(0, shifts.indexOf("</table>"));
    assertThat(shifts).contains("m.\u00a017", "up from 1st to 3rd", "rings with open G");
    assertThat(shifts).contains("m.\u00a025", "down from 3rd to 1st", "in the rest before it");
  }

  /** The lines that {@code marks} prints for the demo: m. 9, beat 1: sudden f after p. */
  @Test
  void circlesAreThoseOfTheMarksCommand() {
    String page = compared().replaceAll("<[^>]*>", " ").replace("\u00a0", " ");
    String text = page.replaceAll("\\s+", " ").replaceAll(" ([,:])", "$1");
    List<String> lines =
        Session.of("marks", Session.DEMO)
            .succeeded()
            .out()
            .replaceAll("\n {18}", " ")
            .lines()
            .filter(line -> line.startsWith("  m. "))
            .map(line -> line.strip().replaceFirst("(beat [0-9.]+) +", "$1: "))
            .toList();
    assertThat(lines).hasSizeGreaterThan(15).contains("m. 9, beat 1: sudden f after p");
    assertThat(lines).allSatisfy(line -> assertThat(text).contains(line));
  }

  // By the rule 'extension' of the plan's costs: the hardest measure of the first-position plan.
  @Test
  void stretchesAreListedNextToTheWarning() {
    String page = compared();
    String strain = page.substring(page.indexOf("Stretches and thumb position"));
    assertThat(strain.substring(0, strain.indexOf(SummaryText.CARE)))
        .contains("'1st position' stretches the hand: ", "href=\"#m28\"");
  }

  @Test
  void newSkillsHaveTheirOwnHeading() {
    String page =
        Session.of(
                "plan", Session.DEMO, "--player", "../docs/examples/imke.yaml", "--format", "html")
            .succeeded()
            .out();
    assertThat(page).containsPattern("<h3>New to this player</h3>\\s*<ul><li>free choice: ");
  }

  @Test
  void plansAreNamedByTheirNamesOutsideTheMusic() {
    String page = compared();
    assertThat(page)
        .contains(
            "<li>Above the staff: partly 3rd</li>",
            "<li>Below it, where it differs: 1st position</li>");
    String rest = page.substring(page.indexOf("id=\"differ\"")).replaceAll("<[^>]*>", " ");
    assertThat(rest).contains("1st position", "3rd position", "partly 3rd");
    assertThat(rest).doesNotContainPattern("\\b[ABC] \\(");
  }

  @Test
  void onePlanHasNoLetter() {
    for (String page :
        List.of(
            Session.of("plan", Session.DEMO, "--choose", "third", "--format", "html")
                .succeeded()
                .out(),
            Session.of("scale", "D", "major", "--instrument", "viola", "--format", "html")
                .succeeded()
                .out(),
            Session.of("plan", Session.DEMO, "--choose", "third", "--format", "svg")
                .succeeded()
                .out())) {
      assertThat(page)
          .doesNotContain("Above the staff", "where it differs", "class=\"key\"")
          .doesNotContain("Where the plans differ", "the plans differ");
    }
  }

  // The order of the page: the answer, the music, the differences, the figures, then the rest.
  @Test
  void answerComesFirstAndTheRestIsFolded() {
    String page = compared();
    assertThat(
            List.of(
                page.indexOf("<strong>Take 'partly 3rd'"),
                page.indexOf("<section id=\"music\""),
                page.indexOf("<section id=\"differ\""),
                page.indexOf("<section id=\"figures\""),
                page.indexOf("<section id=\"more\"")))
        .isSorted()
        .doesNotContain(-1);
    String more = page.substring(page.indexOf("<section id=\"more\""));
    assertThat(more.replaceAll("(?s)<details>.*?</details>", ""))
        .doesNotContain("<table", "<ul", "<svg");
  }

  // The plan in 1st position differs from the one in partly 3rd only where the hand is in 3rd.
  @Test
  void measuresThatDecideAreListedAndTheOthersFolded() {
    String page = compared();
    String differ = page.substring(page.indexOf("<section id=\"differ\""));
    String listed = differ.substring(0, differ.indexOf("<details>"));
    assertThat(Pattern.compile("href=\"#m(\\d+)\"").matcher(listed).results())
        .extracting(measure -> Integer.parseInt(measure.group(1)))
        .containsExactly(17, 18, 19, 20, 21, 22, 23, 24);
    assertThat(listed).contains("↑3rd II 1 3 2");
    assertThat(differ).contains("21 more measures");
  }

  // docs/demo/README.md: the hand moves to third position in measure 17, and back in 25.
  @Test
  void handIsDrawnOnlyWhereItMoves() {
    String page =
        Session.of("plan", Session.DEMO, "--choose", "partly", "--format", "html")
            .succeeded()
            .out();
    assertThat(Pattern.compile("<title>(The hand in [^<]*)").matcher(page).results())
        .extracting(title -> title.group(1))
        .containsExactly("The hand in measures 16 to 17", "The hand in measures 24 to 25");
    String still =
        Session.of("plan", Session.DEMO, "--choose", "first", "--format", "html").succeeded().out();
    assertThat(still).doesNotContain("The hand over time", "The hand in measures");
  }

  @Test
  void warningAppearsOnce() {
    for (String page :
        List.of(compared(), Pages.practised("--from", "quarter=60").succeeded().out())) {
      assertThat(Pattern.compile("class=\"care\"").matcher(page).results()).hasSize(1);
    }
  }

  @Test
  void everyDemandHasItsPriceInWords() {
    String page = compared("--stay", "1@1-8");
    assertThat(page)
        .contains("The price of each demand", "keep the hand in 1st position, m. 1–8. It costs");
  }

  @Test
  void pageNeverOverwritesAFile() throws IOException {
    Path file = Files.writeString(folder.resolve("page.html"), "mine");
    Session.of("compare", Session.DEMO, "--format", "html", "--output", file).refused(2);
    assertThat(file).hasContent("mine");
  }

  @Test
  void whyAndChoicesAreNotDrawn() {
    Session refused = Session.of("plan", Session.DEMO, "--why", "17.2", "--format", "html");
    assertThat(refused.refused(2).err()).contains("--why", "html");
  }

  @Test
  void textOfTheScoreIsEscaped() throws IOException {
    Path file = TinyScore.titled("Fish &amp; &lt;b&gt;chips").part("Violin", "A4", "B4").in(folder);
    String page = Session.of("compare", file, "--format", "html").succeeded().out();
    assertThat(page).contains("<h1>Fish &amp; &lt;b&gt;chips</h1>").doesNotContain("<b>");
  }

  private static String tune(int measures) {
    String[] groups = {
      "DEFG ABcB AGFE D2E2", "c2BA B2AG (cBAG) F2E2", "(dcBA) (GABc) dcdB A4", "[DA]4 (3ABA G2 FEDE"
    };
    return "M:4/4\nL:1/16\nK:D clef=alto\n"
        + IntStream.range(0, measures)
            .mapToObj(m -> groups[(m * 5 + m / 7) % groups.length])
            .collect(Collectors.joining("|"))
        + "|]";
  }

  private static String page(int measures) {
    return Session.of(
            "compare", "--instrument", "viola", "--abc", tune(measures), "--format", "html")
        .succeeded()
        .out();
  }

  @Test
  void fourMeasuresFillLessThanTheLimit() {
    assertThat(page(4)).contains("Measure 1:", "Measure 4:").doesNotContain("Measure 5:");
  }

  @Test
  void fourHundredMeasuresStayUnderThreeMegabytes() {
    String page = page(400);
    assertThat(page).contains("Measure 400:");
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(THREE_MEGABYTES);
  }

  // 12800 notes, more than any part of this length has.
  @Test
  void fourHundredMeasuresOfThirtySecondsStayUnderEightMegabytes() {
    String[] beats = {"DEFGAGFE", "GABAGFED", "Bcdedcba", "defedcBA"};
    String tune =
        "M:4/4\nL:1/32\nK:Gm clef=alto\n"
            + IntStream.range(0, 400)
                .mapToObj(
                    m ->
                        IntStream.range(0, 4)
                            .mapToObj(beat -> beats[(m * 3 + beat) % beats.length])
                            .collect(Collectors.joining(" ")))
                .collect(Collectors.joining("|"))
            + "|]";
    String page =
        Session.of("compare", "--instrument", "viola", "--abc", tune, "--format", "html")
            .succeeded()
            .out();
    assertThat(page).contains("12800 notes");
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(EIGHT_MEGABYTES);
  }
}
