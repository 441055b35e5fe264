package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class KeepPlanTest {
  @TempDir Path folder;

  private Path plan(Path score, Object... options) {
    Path file = folder.resolve("plan.json");
    Object[] words = new Object[options.length + 6];
    System.arraycopy(
        new Object[] {"plan", score, "--format", "json", "--output", file}, 0, words, 0, 6);
    System.arraycopy(options, 0, words, 6, options.length);
    Session.of(words).succeeded();
    return file;
  }

  private static JsonNode read(Path file) throws IOException {
    return Session.json(Files.readString(file));
  }

  private static JsonNode keeping(Path score, Object kept, Object... options) {
    Object[] words = new Object[options.length + 6];
    System.arraycopy(
        new Object[] {"plan", score, "--format", "json", "--keep-plan", kept}, 0, words, 0, 6);
    System.arraycopy(options, 0, words, 6, options.length);
    return Session.of(words).json();
  }

  /** The fingering of each note, without the position of the hand under open strings. */
  private static List<String> taken(JsonNode plan) {
    return entries(plan.get("notes")).stream().map(KeepPlanTest::one).toList();
  }

  private static String one(JsonNode note) {
    String finger = note.get("finger").asText();
    String position = finger.equals("0") ? "" : note.get("position").asText();
    return "m. %s: %s on %s by %s in %s"
        .formatted(
            note.get("measure").asText(),
            note.get("written").asText(),
            note.get("string").asText(),
            finger,
            position);
  }

  @ParameterizedTest
  @ValueSource(strings = {"first", "third", "second"})
  void aWholePlanIsKept(String choice) throws IOException {
    Path file = plan(DEMO, "--choose", choice);
    JsonNode again = keeping(DEMO, file);
    assertThat(taken(again)).isEqualTo(taken(read(file)));
    assertThat(again.at("/cost/total").asLong())
        .isLessThanOrEqualTo(read(file).at("/cost/total").asLong());
  }

  @Test
  void someMeasuresAreKeptAndTheOthersPlannedAgain() throws IOException {
    Path file = plan(DEMO, "--choose", "second");
    JsonNode again = keeping(DEMO, file + "@0-4");
    JsonNode free = Session.of("plan", DEMO, "--format", "json").json();
    List<JsonNode> notes = entries(again.get("notes"));
    for (int i = 0; i < notes.size(); i++) {
      int measure = notes.get(i).get("measure").asInt();
      if (measure <= 4) {
        assertThat(one(notes.get(i))).isEqualTo(taken(read(file)).get(i));
      }
      if (measure > 12) {
        assertThat(one(notes.get(i))).isEqualTo(taken(free).get(i));
      }
    }
    assertThat(taken(again)).isNotEqualTo(taken(free));
    assertThat(again.at("/demands/0/demand").asText())
        .matches("play \\d+ notes as in .*plan\\.json, m\\. 0–4");
  }

  @Test
  void aPlanMayHaveMoreOrFewerMeasuresThanThePassage() throws IOException {
    Path whole = plan(DEMO, "--choose", "first");
    JsonNode some = keeping(DEMO, whole, "--measures", "17-24");
    assertThat(taken(read(whole))).containsSubsequence(taken(some));
    Files.delete(whole);
    Path part = plan(DEMO, "--choose", "first", "--measures", "17-24");
    assertThat(taken(keeping(DEMO, part))).containsSubsequence(taken(read(part)));
  }

  @Test
  void aBriefNamesAPlanInItsOwnFolder() throws IOException {
    Path file = plan(DEMO, "--choose", "first");
    Path brief =
        Files.writeString(folder.resolve("brief.yaml"), "keep-plan: plan.json@17-24\nshow: 2=4\n");
    JsonNode planned = Session.of("plan", DEMO, "--brief", brief, "--format", "json").json();
    List<JsonNode> notes = entries(planned.get("notes"));
    for (int i = 0; i < notes.size(); i++) {
      int measure = notes.get(i).get("measure").asInt();
      if (measure >= 17 && measure <= 24) {
        assertThat(one(notes.get(i))).isEqualTo(taken(read(file)).get(i));
      }
    }
    assertThat(planned.get("demands")).hasSize(2);
  }

  /** Measure numbers start again every four measures, as in a part of several movements. */
  private Path movements() throws IOException {
    Path score =
        TinyScore.titled("Suite").part("Viola", "E4", "F4", "G4", "E4", "F4", "G4").in(folder);
    String text = Files.readString(score);
    for (int m = 4; m <= 6; m++) {
      text = text.replace("number=\"" + m + "\"", "number=\"" + (m - 3) + "\"");
    }
    return Files.writeString(score, text);
  }

  @Test
  void notesAreFoundEvenIfMeasureNumbersRepeat() throws IOException {
    Path score = movements();
    // The same notes in another position in each movement: only their place differs.
    JsonNode whole = read(plan(score, "--allow", "1"));
    JsonNode second = Session.of("plan", score, "--allow", "2", "--format", "json").json();
    for (int i = 3; i < 6; i++) {
      ((ArrayNode) whole.get("notes")).set(i, second.get("notes").get(i));
    }
    Path file = Files.writeString(folder.resolve("both.json"), whole.toString());
    assertThat(taken(whole).subList(0, 3)).isNotEqualTo(taken(whole).subList(3, 6));
    assertThat(taken(keeping(score, file))).isEqualTo(taken(whole));

    // Without measure indices, repeated numbers are matched in order.
    for (JsonNode note : whole.get("notes")) {
      ((ObjectNode) note).remove("measureIndex");
    }
    Path bare = Files.writeString(folder.resolve("bare.json"), whole.toString());
    assertThat(taken(keeping(score, bare))).isEqualTo(taken(whole));
  }

  @Test
  void aMeasureThatHasMovedIsFoundByItsNumber() throws IOException {
    Path score = TinyScore.titled("Air").part("Viola", "E4", "F4", "G4").in(folder);
    JsonNode whole = read(plan(score, "--fix", "2.1=III/3@4"));
    for (JsonNode note : whole.get("notes")) {
      ((ObjectNode) note).put("measureIndex", note.get("measureIndex").asInt() + 1);
    }
    ((ObjectNode) whole.get("notes").get(2)).put("measureIndex", 0);
    Path moved = Files.writeString(folder.resolve("moved.json"), whole.toString());
    assertThat(taken(keeping(score, moved)).get(1)).isEqualTo("m. 2: F4 on 3 by 3 in 4");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "E4, G4 | it has F4 in measure 2, onset 0, where the score has G4; plan this music again",
        "E4, G4, E4, D4 | F4 in measure 2, onset 0, where the score has G4, and G4 in measure 3,"
            + " onset 0, where the score has E4, and 1 more difference; plan",
      })
  void notesMissingFromTheScoreAreReported(String notes, String said) throws IOException {
    Path file = plan(TinyScore.titled("Air").part("Viola", "E4", "F4", "G4", "A4").in(folder));
    Path other = TinyScore.titled("Air").part("Viola", notes.split(", ")).in(folder);
    assertThat(Session.of("plan", other, "--keep-plan", file).refused(2).err()).contains(said);
    assertThat(Session.of("plan", other, "--keep-plan", file + "@1").code()).isZero();
  }

  @Test
  void aPlaceWithoutANoteIsReported() throws IOException {
    Path score = TinyScore.titled("Air").part("Viola", "E4", "F4").in(folder);
    JsonNode whole = read(plan(score));
    ((ObjectNode) whole.get("notes").get(1)).put("onset", 2.5);
    Path moved = Files.writeString(folder.resolve("moved.json"), whole.toString());
    assertThat(Session.of("plan", score, "--keep-plan", moved).refused(2).err())
        .contains("F4 in measure 2, onset 2.5, where the score has no note; plan");
  }

  @Test
  void anUnplayablePlanIsReportedAsADemand() {
    Path file = plan(DEMO, "--choose", "first");
    assertThat(
            Session.of("plan", DEMO, "--keep-plan", file + "@17-18", "--allow", "3@17")
                .refused(2)
                .err())
        .contains("as in", "plan.json, m. 17–18", "drop or relax one of these demands");
  }

  @Test
  void aFileThatIsNotAPlanIsRefused() throws IOException {
    Path score = TinyScore.titled("Air").part("Viola", "E4", "F4").in(folder);
    Path violin = folder.resolve("violin.json");
    Session.of("plan", score, "--instrument", "violin", "--format", "json", "--output", violin)
        .succeeded();
    assertThat(Session.of("plan", score, "--keep-plan", violin).refused(2).err())
        .contains("violin.json is a plan for the violin, but this part is for the viola");
    Path several = folder.resolve("several.json");
    Session.of("compare", score, "--format", "json", "--output", several).succeeded();
    assertThat(Session.of("plan", score, "--keep-plan", several).refused(2).err())
        .contains("several.json holds several plans; save the one to keep with");
    Path other = Files.writeString(folder.resolve("other.json"), "{\"format\": \"x\"}");
    assertThat(Session.of("plan", score, "--keep-plan", other).refused(2).err())
        .contains("other.json is not a plan saved with 'plan --format json'");
    Path broken = Files.writeString(folder.resolve("broken.json"), "{\n\"format\": \n");
    assertThat(Session.of("plan", score, "--keep-plan", broken).refused(2).err())
        .contains("line 3 is not JSON");
    assertThat(Session.of("plan", score, "--keep-plan", folder.resolve("no.json")).refused(2).err())
        .contains("There is no file");
    JsonNode plan = read(plan(score));
    ((ObjectNode) plan.get("notes").get(1)).remove("finger");
    Path bad = Files.writeString(folder.resolve("bad.json"), plan.toString());
    assertThat(Session.of("plan", score, "--keep-plan", bad).refused(2).err())
        .contains("its note 2 cannot be read: it has no finger");
    Path low = folder.resolve("low.json");
    Session.of("plan", DEMO, "--measures", "1-2", "--format", "json", "--output", low).succeeded();
    assertThat(Session.of("plan", DEMO, "--measures", "20-24", "--keep-plan", low).refused(2).err())
        .contains(
            "low.json has no note of Viola, which has measures 20 to 24; give a plan of these measures");
    assertThat(Session.of("plan", DEMO, "--keep-plan", low + "@20").refused(2).err())
        .contains("low.json has no note in measure 20 of Viola");
    assertThat(Session.of("plan", DEMO, "--keep-plan", low + "@77").refused(2).err())
        .contains("There is no measure 77 in Viola");
  }
}
