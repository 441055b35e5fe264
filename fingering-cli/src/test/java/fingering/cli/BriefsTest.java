package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BriefsTest {
  @TempDir Path folder;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void planThatLeavesFirstPositionOnlyForHalfSaysWhere() {
    assertThat(
            Session.of("plan", DEMO, "--choose", "first", "--fix", "2.1=II/4@half")
                .succeeded()
                .lines()
                .get(1))
        .startsWith("Half position in m. 2, otherwise 1st: 2 shifts,");
  }

  @Test
  void planListsWhereItMeetsDemandsAndTheirCost() {
    Session plan =
        Session.of("plan", DEMO, "--show", "1=4", "--show", "2=4", "--show", "3=4").succeeded();
    assertThat(plan.out())
        .contains("Demands on 'as demanded'")
        .containsPattern("show 2nd position in 4 stopped notes: m\\. \\d+")
        .contains("It costs nothing", "Without it: 1 shift fewer");
  }

  @Test
  void theNotesThatShowASkillAreStoppedInThatPosition() {
    JsonNode plan = Session.of("plan", DEMO, "--show", "2=5", "--format", "json").json();
    JsonNode shown = plan.at("/demands/0/notes");
    assertThat(shown.size()).isGreaterThanOrEqualTo(5);
    for (JsonNode index : shown) {
      JsonNode note = plan.get("notes").get(index.asInt());
      assertThat(note.get("position").asText()).isEqualTo("2");
      assertThat(note.get("finger").asText()).isNotEqualTo("0");
    }
  }

  @Test
  void ownPlansAreSideBySide() {
    Session compared =
        Session.of("compare", DEMO, "--plan", "low=allow 1,half", "--plan", "up=show 3=8")
            .succeeded();
    assertThat(compared.out()).containsPattern("\n +low +up\n");
  }

  @Test
  void briefsInYamlAndJsonGiveTheSamePlans() throws IOException {
    Path yaml =
        file(
            "b.yaml", "plans:\n  - name: low\n    allow: 1, half\n  - name: up\n    show: [3=8]\n");
    Path json =
        file(
            "b.json",
            "{\"plans\": [{\"name\": \"low\", \"allow\": \"1, half\"}, {\"name\": \"up\", \"show\": \"3=8\"}]}");
    JsonNode ofYaml = Session.of("compare", DEMO, "--briefs", yaml, "--format", "json").json();
    assertThat(texts(ofYaml.get("plans"), "name")).containsExactly("low", "up");
    assertThat(Session.of("compare", DEMO, "--briefs", json, "--format", "json").json())
        .isEqualTo(ofYaml);
  }

  @Test
  void briefIsPlannedByName() throws IOException {
    Path brief = file("stay.yaml", "stay: 3@5-8\n");
    JsonNode plan = Session.of("plan", DEMO, "--brief", brief, "--format", "json").json();
    assertThat(plan.get("name").asText()).isEqualTo("stay");
    assertThat(entries(plan.get("notes")))
        .filteredOn(note -> note.get("measure").asText().equals("6"))
        .isNotEmpty()
        .allMatch(note -> note.get("position").asText().equals("3"));
  }

  @Test
  void badLineIsReportedWithItsNumber() throws IOException {
    Path bad = file("bad.yaml", "name: x\nshow:\n  - 3=8\n  - three\n");
    assertThat(Session.of("plan", DEMO, "--brief", bad).refused(2).err())
        .contains("bad.yaml, line 4: 'three' does not say what to show and how much of it");
    Path key = file("key.yaml", "name: x\nhide: 3\n");
    assertThat(Session.of("plan", DEMO, "--brief", key).refused(2).err())
        .contains(
            "key.yaml, line 2: there is no key 'hide' in a file of briefs; choose from name, allow, strings");
    Path broken = file("broken.yaml", "name: [x\n");
    assertThat(Session.of("plan", DEMO, "--brief", broken).refused(2).err())
        .contains(
            "broken.yaml, line 1: a list or bracket is not closed; check the commas and brackets");
  }

  @Test
  void impossiblePlanIsReportedNextToTheOthers() {
    Session compared =
        Session.of("compare", DEMO, "--plan", "low=allow 1", "--plan", "no=allow 1; show 3=1")
            .succeeded();
    assertThat(compared.out().replaceAll("\\s+", " "))
        .contains(
            "'no' cannot be planned. No fingering of this passage can both stay in 1st position and");
  }

  @Test
  void invalidDemandsAreRejectedInOneSentence() {
    Session.of("plan", DEMO, "--avoid", "thumbs").refused(2);
    Session.of("plan", DEMO, "--stay", "3").refused(2);
    Session.of("compare", DEMO, "--plan", "low").refused(2);
    Session.of("plan", DEMO, "--allow", "1", "--show", "3=2").refused(2);
  }
}
