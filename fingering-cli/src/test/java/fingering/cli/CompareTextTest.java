package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.common.collect.ObjectArrays;
import fingering.cli.terminal.Screen;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class CompareTextTest {
  @TempDir Path folder;

  @Test
  void demoComparesItsPlansByNoteAndByRule() {
    Session demo = Session.of("demo").succeeded();

    assertThat(demo.lines().get(0)).isEqualTo("Lanterns on the Millrace");
    assertThat(demo.out())
        .containsPattern("note +1st position +3rd position +1st to 3rd +partly 3rd\n")
        .containsPattern("Points by rule +1st position +3rd position +1st to 3rd +partly 3rd\n")
        .containsPattern("\n {2}String crossing +\\d+ +\\d+ +\\d+ +\\d+\n")
        .containsPattern("\n {2}Total +\\d+ +\\d+ +\\d+ +\\d+\n")
        .contains("Hardest measures", "Summary");
  }

  @Test
  void demoComparesTheScoreOfTheDocumentation() {
    assertThat(Session.of("demo")).isEqualTo(Session.of("compare", DEMO, "--with-second"));
  }

  @Test
  void comparisonHasALineForEveryNote() {
    Session compare = Session.of("compare", DEMO).succeeded();

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
        .contains("costs " + free + " points, " + (least - free) + " less than the cheapest");
    assertThat(Session.of("compare", DEMO).succeeded().out()).doesNotContain("of free choice");
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
  }

  @Test
  void fourPlansStillFitEightyColumns() {
    assertFits(Session.of("compare", marked(), "--with-second").succeeded());
  }

  @Test
  void headingsOfFourPlansDoNotRunIntoEachOther() {
    Session compare = Session.of("compare", marked(), "--with-second").succeeded();

    assertThat(compare.out())
        .containsPattern("note +1st position +3rd position +1st to 3rd +as printed\n")
        .containsPattern("Points by rule +1st position +3rd position +1st to 3rd +as printed\n");
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
