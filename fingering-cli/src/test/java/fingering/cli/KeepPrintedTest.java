package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The option --keep-printed in every command that plans a part. */
final class KeepPrintedTest {
  private static final String TUNE =
      "M:4/4\\nL:1/4\\nK:D clef=treble\\n\"^3rd pos.\"GABc|dABc|\"^1st pos.\"DEFG|A4|]";

  @TempDir Path folder;

  private static List<String> tune(String command, String... more) {
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of(
                command, "--abc", TUNE, "--instrument", "violin", "--keep-printed"),
            java.util.stream.Stream.of(more))
        .toList();
  }

  @Test
  void aPrintedPositionIsKept() throws IOException {
    JsonNode plan = Session.of(tune("plan", "--format", "json").toArray()).json();
    assertThat(plan.get("name").asText()).isEqualTo("as printed");
    assertThat(texts(plan.get("notes"), "position").subList(0, 8)).containsOnly("3");
    assertThat(texts(plan.get("notes"), "position").subList(9, 12)).containsOnly("1");
  }

  @Test
  void withDemandsThePlanIsNamedAfterBoth() throws IOException {
    JsonNode plan =
        Session.of(tune("plan", "--avoid", "open-strings", "--format", "json").toArray()).json();
    assertThat(plan.get("name").asText()).isEqualTo("as printed and demanded");
  }

  @Test
  void aPartWithoutFingeringsGivesNoPlanAsPrinted() {
    Session plan = Session.of("plan", DEMO, "--keep-printed").succeeded();
    assertThat(plan.out()).contains("No finger, string or position is printed");
    assertThat(plan.out()).doesNotContain("as printed");
  }

  @Test
  void aWrittenPlanIsPractisedAsPrinted() {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", DEMO, "--choose", "third", "--write", marked).succeeded();
    String[] more = {"--from", "60", "--to", "96", "--by", "2026-12-12", "--today", "2026-11-21"};
    List<String> chosen =
        practice(DEMO, "--choose", "third", more).lines().stream().skip(3).toList();
    Session kept = practice(marked, "--keep-printed", "", more);
    assertThat(kept.out()).contains("as printed: from quarter = 60");
    // Without the name of the plan and the remarks on it.
    assertThat(kept.lines()).containsAll(chosen.subList(chosen.size() / 2, chosen.size()));
    Session.of(
            "practice",
            marked,
            "--choose",
            "third",
            "--keep-printed",
            "--to",
            "96",
            "--by",
            "2026-12-12")
        .refused(2);
  }

  private static Session practice(Path score, String option, String value, String... more) {
    List<Object> words = new java.util.ArrayList<>(List.of("practice", score, option));
    if (!value.isEmpty()) {
      words.add(value);
    }
    words.addAll(List.of(more));
    return Session.of(words.toArray()).succeeded();
  }

  @Test
  void theExcerptsOfAnAuditionKeepWhatIsPrinted() throws IOException {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", DEMO, "--choose", "third", "--measures", "9-24", "--write", marked)
        .succeeded();
    Path sheet = folder.resolve("sheet.yaml");
    Files.writeString(
        sheet, "instrument: viola\nexcerpts:\n  - file: marked.musicxml\n    measures: 9-24\n");
    JsonNode kept = Session.of("audition", sheet, "--keep-printed", "--format", "json").json();
    JsonNode third =
        Session.of("plan", DEMO, "--choose", "third", "--measures", "9-24", "--format", "json")
            .json();
    assertThat(texts(kept.at("/pieces/0/plan/notes"), "finger"))
        .isEqualTo(texts(third.get("notes"), "finger"));
  }

  @Test
  void thePageNamesItAsPrinted() {
    assertThat(Session.of(tune("plan", "--format", "html").toArray()).succeeded().out())
        .contains("as printed")
        .doesNotContain("free choice");
  }
}
