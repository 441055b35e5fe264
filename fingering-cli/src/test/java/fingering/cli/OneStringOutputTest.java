package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** String marks in a part, and the output shown in docs/briefs.md. */
final class OneStringOutputTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Path SLUICE = DOCS.resolve("examples").resolve("sluice.musicxml");

  @TempDir Path folder;

  private static List<String> page() throws IOException {
    return Files.readAllLines(DOCS.resolve("briefs.md")).stream()
        .filter(line -> line.startsWith("    "))
        .map(line -> line.substring(4))
        .toList();
  }

  /** The lines from the first that begins with a text to the last that contains another. */
  private static List<String> lines(Session session, String from, String to) {
    List<String> all = session.lines();
    int first = 0;
    while (!all.get(first).startsWith(from)) {
      first++;
    }
    int last = first;
    while (!all.get(last).contains(to)) {
      last++;
    }
    return all.subList(first, last + 1);
  }

  @Test
  void pageShowsTheRemarkOnStrings() throws IOException {
    Session plan = Session.of("plan", SLUICE).succeeded();
    assertThat(page()).containsSequence(lines(plan, "Note: plans stay", "end of its line)"));
    assertThat(page())
        .containsSequence(lines(plan, "Note: 'free choice' leaves", "below the string"));
  }

  @Test
  void pageShowsHowPrintedPositionsAreRead() throws IOException {
    String typed =
        page().stream().filter(line -> line.contains("3rd pos.\"GABc")).findFirst().orElseThrow();
    String tune = typed.substring(typed.indexOf('\'') + 1, typed.lastIndexOf('\''));
    Session plan =
        Session.of("plan", "--abc", tune, "--instrument", "violin", "--keep-printed").succeeded();
    assertThat(page()).containsSequence(lines(plan, "Note: 'as printed' keeps", "to the end"));
  }

  @Test
  void pageShowsTheFingeringsOfTwoMeasures() throws IOException {
    Session choices = Session.of("plan", DEMO, "--choices", "24-25").succeeded();
    assertThat(page()).containsSequence(lines(choices, "  m.  beat", "  A4"));
    assertThat(page()).containsSequence(lines(choices, "Fingerings in", "in m. 25."));
  }

  @Test
  void pageShowsTheCostOfKeepingAnEarlierPlan() throws IOException {
    Path second = folder.resolve("second.json");
    Session.of("plan", DEMO, "--choose", "second", "--format", "json", "--output", second)
        .succeeded();
    Session kept = Session.of("plan", DEMO, "--keep-plan", second + "@0-4").succeeded();
    String price = "Without it: 1 fewer shift";
    assertThat(String.join(" ", page()))
        .containsSubsequence("Demands on", "- play 13 notes as in second.json, m. 0–4. " + price);
    assertThat(kept.out().replaceAll("\\s+", " ")).contains("play 13 notes as in", price);
  }

  private static List<String> strings(JsonNode plan, int from, int to) {
    return entries(plan.get("notes")).stream()
        .filter(note -> note.get("measure").asInt() >= from && note.get("measure").asInt() <= to)
        .map(note -> note.get("string").asText())
        .toList();
  }

  @Test
  void everyPlanFollowsTheStringMarksAndJsonListsExceptions() {
    JsonNode plan = Session.of("plan", SLUICE, "--format", "json").json();
    assertThat(strings(plan, 1, 4)).containsOnly("4");
    assertThat(strings(plan, 6, 7)).containsOnly("3");
    assertThat(plan.get("remarks").toString())
        .contains("'sul G' in m. 1–4 (to the rest)", "for B♭3 in measure 8, beat 3");
    JsonNode compared = Session.of("compare", SLUICE, "--format", "json").json();
    for (JsonNode one : entries(compared.get("plans"))) {
      assertThat(strings(one, 1, 4)).containsOnly("4");
    }
    assertThat(compared.get("remarks").toString()).contains("'1st position' leaves the string of");
  }

  @Test
  void wordsCanBeIgnored() {
    JsonNode plan = Session.of("plan", SLUICE, "--ignore-words", "--format", "json").json();
    assertThat(strings(plan, 1, 4)).contains("3");
    assertThat(plan.get("remarks")).isEmpty();
  }

  @Test
  void demandsOverrideTheWords() {
    JsonNode plan = Session.of("plan", SLUICE, "--strings", "D@3", "--format", "json").json();
    assertThat(strings(plan, 3, 3)).containsOnly("3");
    assertThat(strings(plan, 1, 2)).containsOnly("4");
    assertThat(plan.get("remarks").toString()).contains("ruled out by your demands");
  }
}
