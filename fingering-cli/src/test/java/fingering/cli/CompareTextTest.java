package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.common.collect.ObjectArrays;
import fingering.cli.terminal.Screen;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class CompareTextTest {
  @TempDir Path folder;

  @Test
  void theVerdictComesFirst() {
    Session demo = Session.of("demo").succeeded();

    assertThat(demo.lines().get(0)).startsWith("Lanterns on the Millrace: Viola, m. 0–32");
    assertThat(demo.lines().get(1)).startsWith("Take 'partly 3rd': 3rd position in m. 17–24");
    assertThat(demo.lines().size()).isLessThanOrEqualTo(30);
    assertThat(demo.out())
        .containsPattern("\n +1st position +partly 3rd\n")
        .containsPattern("\nPlan +shifts +crossings +4th fingers +comfortable up to\n")
        .containsPattern("\n1st to 3rd +\\d+ +\\d+ +\\d+ +quarter = \\d+\n")
        .contains("\nNext\n  fingering open\n  fingering compare ")
        .doesNotContain("points");
  }

  @Test
  void onlyMeasuresThatDifferAreListed() {
    List<String> measures =
        Session.of("compare", DEMO).lines().stream()
            .filter(line -> line.startsWith("m. "))
            .map(line -> line.substring(3, 5))
            .toList();
    JsonNode plans = Session.of("compare", DEMO, "--format", "json").json().get("plans");
    Set<String> differing = new LinkedHashSet<>();
    List<JsonNode> first = entries(plans.get(0).get("notes"));
    List<JsonNode> partly = entries(plans.get(2).get("notes"));
    for (int i = 0; i < first.size(); i++) {
      if (!places(first.get(i)).equals(places(partly.get(i)))) {
        differing.add(first.get(i).get("measure").asText());
      }
    }
    assertThat(measures).containsExactlyElementsOf(differing);
  }

  /** String, finger and, of a stopped note, the position. */
  private static List<String> places(JsonNode note) {
    String finger = note.get("finger").asText();
    return List.of(
        note.get("string").asText(),
        finger,
        finger.equals("0") ? "" : note.get("position").asText());
  }

  @Test
  void aPlanThatIsOnlyHarderSaysSo() {
    String open = "M:4/4\\nL:1/4\\nK:D\\nD E F G|A B c d|e d c B|A4|";
    assertThat(Session.of("compare", "--abc", open, "--instrument", "violin").succeeded().out())
        .contains("\nStay in 1st position. '3rd position' is harder, mostly because of '");
  }

  @Test
  void aPlanThatIsEasierButNeedsMoreSaysSoInOneSentence() {
    String kestrel =
        "M:4/4\\nL:1/8\\nQ:1/4=88\\nK:Gm clef=alto\\n!mf! D2 G>A B2 A2 | (cBAG) ^F2 D2 |"
            + " (GABc) d2 (ed) | c2 B2 A4 | !f! (d2 e>d) g2 f2 | (edcB) (AGFE) |"
            + " D2 (^FA) (dcBA) | !p! G6 z2 |";
    assertThat(
            Session.of(
                    "compare",
                    "--abc",
                    kestrel,
                    "--instrument",
                    "viola",
                    "--player",
                    "../docs/examples/imke.yaml")
                .succeeded()
                .out()
                .replaceAll("\\s+", " "))
        .contains(
            "Compared with '1st position', it is easier, mostly because of 'shift', but needs 2");
  }

  @Test
  void costsAreOnRequest() {
    Session demo = Session.of("demo", "--costs", "--notes").succeeded();

    assertThat(demo.out())
        .containsPattern("note +1st position +3rd position +1st to 3rd +partly 3rd\n")
        .containsPattern("Points by rule +1st position +3rd position +1st to 3rd +partly 3rd\n")
        .containsPattern("\n {2}String crossing +\\d+ +\\d+ +\\d+ +\\d+\n")
        .containsPattern("\n {2}Total +\\d+ +\\d+ +\\d+ +\\d+\n")
        .contains("Hardest measures", "'3rd position' leaves its position for");
  }

  @Test
  void demoComparesTheScoreOfTheDocumentation() {
    assertThat(Session.of("demo").answer())
        .isEqualTo(Session.of("compare", DEMO, "--with-second").answer());
  }

  @Test
  void comparisonHasALineForEveryNoteOnRequest() {
    Session compare = Session.of("compare", DEMO, "--notes").succeeded();

    long notes = compare.lines().stream().filter(CompareTextTest::ofNote).count();
    assertThat(notes).isEqualTo(Engraving.sounding(DEMO).size());
  }

  @Test
  void cheaperFreePlanIsMentioned() {
    String tune = "M:4/4\\nL:1/8\\nQ:1/4=80\\nK:D\\nD2 F2 A3 B|c2 d2 e2 dc|B2 g2 f3 e|d6 A2|";
    JsonNode compared = json("compare", "--abc", tune);
    long least =
        entries(compared.get("plans")).stream()
            .mapToLong(CompareTextTest::total)
            .min()
            .orElseThrow();
    long free = total(json("plan", "--abc", tune));

    assertThat(free).isLessThan(least);
    assertThat(compared.get("remarks").toString())
        .contains("A plan with free choice of positions ('free') is easier than all of these");
    assertThat(Session.of("compare", DEMO).succeeded().out()).doesNotContain("free choice");
  }

  private static JsonNode json(Object... arguments) {
    return Session.of(
            ObjectArrays.concat(
                arguments,
                new Object[] {"--instrument", "viola", "--format", "json"},
                Object.class))
        .json();
  }

  private static long total(JsonNode plan) {
    return plan.at("/cost/total").asLong();
  }

  private static boolean ofNote(String line) {
    return line.matches("[ 0-9]{4} *[0-9.+]+ {2}[A-G][♭♯]?\\d.*");
  }

  @Test
  void comparisonFitsEightyColumns() {
    assertFits(Session.of("compare", DEMO).succeeded());
    assertFits(Session.of("compare", DEMO, "--with-second").succeeded());
    assertFits(Session.of("plan", DEMO).succeeded());
    assertFits(Session.of("compare", DEMO, "--notes", "--costs").succeeded());
  }

  @Test
  void fourPlansStillFitEightyColumns() {
    Path marked = marked();
    assertFits(Session.of("compare", marked, "--with-second").succeeded());
    assertFits(Session.of("compare", marked, "--with-second", "--notes", "--costs").succeeded());
  }

  @Test
  void outputIsPlainTextIfNotOnATerminal() {
    for (String command : List.of("compare", "plan")) {
      assertThat(Session.of(command, DEMO).succeeded().out()).doesNotContain("\u001b");
    }
  }

  @Test
  void helpFitsEightyColumns() {
    assertFits(Session.of("--help").succeeded());
    for (String command : List.of("demo", "compare", "plan", "chart")) {
      Session help = Session.of(command, "--help").succeeded();
      assertFits(help);
      assertThat(help.out()).contains("Usage: fingering " + command, "Example");
    }
    assertThat(Session.of("--version").succeeded().out()).startsWith("fingering ");
  }

  private Path marked() {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", DEMO, "--choose", "third", "--write", marked).succeeded();
    return marked;
  }

  private static void assertFits(Session session) {
    int columns = Math.max(80, Screen.columns());
    assertThat(session.lines()).isNotEmpty();
    assertThat(session.lines().stream().filter(line -> line.length() > columns)).isEmpty();
  }
}
