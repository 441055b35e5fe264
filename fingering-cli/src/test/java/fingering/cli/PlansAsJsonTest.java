package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlansAsJsonTest {
  /** The open strings of a viola, I to IV, by their number in MusicXML. */
  private static final Map<Integer, Integer> OPEN = Map.of(1, 69, 2, 62, 3, 55, 4, 48);

  private static JsonNode demo;

  @TempDir Path folder;

  @BeforeAll
  static void compareTheDemo() {
    demo = Session.of("compare", DEMO, "--with-second", "--format", "json").json();
  }

  @Test
  void comparisonStartsWithItsFormat() {
    List<String> fields = demo.properties().stream().map(Map.Entry::getKey).toList();

    assertThat(fields).startsWith("format", "version").contains("plans", "remarks");
    assertThat(demo.get("format").asText()).isEqualTo("fingering-plan");
    assertThat(demo.get("version").asInt()).isEqualTo(1);
    assertThat(demo.get("title").asText()).isEqualTo("Lanterns on the Millrace");
    assertThat(demo.get("instrument").asText()).isEqualTo("viola");
    assertThat(demo.get("tempo").asText()).isEqualTo("quarter=96");
    assertThat(texts(demo.get("plans"), "name"))
        .containsExactly("1st position", "3rd position", "1st to 3rd", "partly 3rd");
  }

  @Test
  void everyNoteHasItsPlaceAndItsFingering() {
    for (JsonNode plan : entries(demo.get("plans"))) {
      for (JsonNode note : entries(plan.get("notes"))) {
        assertThat(note.properties().stream().map(Map.Entry::getKey))
            .contains(
                "part", "measure", "onset", "written", "midi", "string", "finger", "position");
        assertThat(note.get("part").asText()).isEqualTo("P1");
        assertThat(note.get("measure").isTextual()).isTrue();
        assertThat(note.get("onset").isNumber()).isTrue();
        assertThat(note.get("midi").isInt()).isTrue();
        assertThat(note.get("string").isInt()).isTrue();
        assertThat(note.get("finger").asText()).isIn("0", "1", "2", "3", "4");
        assertThat(note.get("position").asText()).isNotEmpty();
      }
    }
  }

  @Test
  void notesAreThoseOfTheScoreInItsOrder() {
    List<String> score =
        Engraving.sounding(DEMO).stream().map(Engraving.Sounding::toString).toList();

    for (JsonNode plan : entries(demo.get("plans"))) {
      List<String> planned =
          entries(plan.get("notes")).stream()
              .map(
                  note ->
                      new Engraving.Sounding(
                              note.get("measure").asText(),
                              note.get("onset").asDouble(),
                              note.get("written").asText(),
                              note.get("midi").asInt())
                          .toString())
              .toList();
      assertThat(planned).isEqualTo(score);
    }
  }

  @Test
  void everyPointOfATotalBelongsToARuleAndANote() {
    for (JsonNode plan : entries(demo.get("plans"))) {
      JsonNode cost = plan.get("cost");
      long byRule = 0;
      long byNote = 0;
      for (JsonNode rule : entries(cost.get("rules"))) {
        long charged = entries(rule.get("notes")).stream().mapToLong(PlansAsJsonTest::cost).sum();
        assertThat(charged).as(rule.get("name").asText()).isEqualTo(cost(rule));
        assertThat(rule.get("explanation").asText()).isNotBlank();
        byRule += cost(rule);
        byNote += charged;
        for (JsonNode charge : entries(rule.get("notes"))) {
          assertThat(plan.get("notes").has(charge.get("note").asInt())).isTrue();
        }
      }
      assertThat(cost.get("total").isIntegralNumber()).isTrue();
      assertThat(byRule).isEqualTo(cost.get("total").asLong());
      assertThat(byNote).isEqualTo(cost.get("total").asLong());
    }
  }

  private static long cost(JsonNode node) {
    assertThat(node.get("cost").isIntegralNumber()).isTrue();
    return node.get("cost").asLong();
  }

  @Test
  void onlyTheNoteOfAnOpenStringIsOpenAndStoppedNotesAreHigher() {
    for (JsonNode plan : entries(demo.get("plans"))) {
      int open = 0;
      for (JsonNode note : entries(plan.get("notes"))) {
        int string = OPEN.get(note.get("string").asInt());
        if (note.get("finger").asText().equals("0")) {
          assertThat(note.get("midi").asInt()).as(note.toString()).isEqualTo(string);
          open++;
        } else {
          assertThat(note.get("midi").asInt()).as(note.toString()).isGreaterThan(string);
        }
      }
      assertThat(plan.at("/counts/openStrings").asInt()).isEqualTo(open).isPositive();
    }
  }

  @Test
  void thirdPositionPlanStaysThereForEightStoppedNotesInARow() {
    assertThat(longestStay(demo.at("/plans/1"), "3")).isGreaterThanOrEqualTo(8);
    assertThat(longestStay(demo.at("/plans/0"), "3")).isZero();
  }

  @Test
  void planOfThreePositionsShowsEachOfThem() {
    assertThat(List.of("1", "2", "3"))
        .allSatisfy(
            position -> assertThat(longestStay(demo.at("/plans/2"), position)).isPositive());
  }

  private static int longestStay(JsonNode plan, String position) {
    int longest = 0;
    int stay = 0;
    for (JsonNode note : entries(plan.get("notes"))) {
      if (!note.get("finger").asText().equals("0")) {
        stay = note.get("position").asText().equals(position) ? stay + 1 : 0;
        longest = Math.max(longest, stay);
      }
    }
    return longest;
  }

  @Test
  void firstPlanOfTheDemoNeverLeavesHalfAndFirstPosition() {
    JsonNode first = demo.at("/plans/0");

    assertThat(first.at("/counts/notesOutside").asInt()).isZero();
    assertThat(texts(first.get("notes"), "position")).isSubsetOf("half", "1");
  }

  @Test
  void firstPlanLeavesFirstPositionOnlyWhereItMarksANoteOutside() throws IOException {
    Path score = TinyScore.titled("High").part("Viola", "A4", "B4", "A5", "B4").in(folder);

    JsonNode compared = Session.of("compare", score, "--format", "json").json();

    List<JsonNode> notes = entries(compared.at("/plans/0/notes"));
    assertThat(notes).filteredOn(note -> note.get("outside").asBoolean()).hasSize(1);
    assertThat(notes.get(2).get("outside").asBoolean()).isTrue();
    assertThat(notes)
        .filteredOn(note -> !note.get("outside").asBoolean())
        .extracting(note -> note.get("position").asText())
        .isSubsetOf("half", "1");
    assertThat(compared.get("remarks").toString())
        .contains("'1st position' leaves its positions for 1 note");
  }

  @Test
  void onePlanHasTheSameFormWithoutAListOfPlans() {
    JsonNode third = Session.of("plan", DEMO, "--choose", "third", "--format", "JSON").json();

    assertThat(third.has("plans")).isFalse();
    assertThat(third.get("version").asInt()).isEqualTo(1);
    assertThat(third.get("name")).isEqualTo(demo.at("/plans/1/name"));
    assertThat(third.get("notes")).isEqualTo(demo.at("/plans/1/notes"));
    assertThat(third.get("cost")).isEqualTo(demo.at("/plans/1/cost"));
  }

  @Test
  void freePlanNeverCostsMoreThanTheOthers() {
    long free = Session.of("plan", DEMO, "--format", "json").json().at("/cost/total").asLong();

    for (JsonNode plan : entries(demo.get("plans"))) {
      assertThat(free).isLessThanOrEqualTo(plan.at("/cost/total").asLong());
    }
  }
}
