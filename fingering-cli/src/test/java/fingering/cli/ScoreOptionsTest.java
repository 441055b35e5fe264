package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ScoreOptionsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"17-20, 17, 20", "9, 9, 9", "B to C, 9, 16", "B to D, 9, 24", "0-1, 0, 1"})
  void onlyTheChosenMeasuresAreRead(String range, int from, int to) {
    JsonNode plan = Session.of("plan", DEMO, "--measures", range, "--format", "json").json();

    List<String> measures = IntStream.rangeClosed(from, to).mapToObj(Integer::toString).toList();
    assertThat(texts(plan.get("notes"), "measure").stream().distinct().toList())
        .isEqualTo(measures);
    assertThat(Session.of("plan", DEMO, "--measures", range).succeeded().lines().get(0))
        .contains(", m. " + (from == to ? from : from + "–" + to) + ", ");
  }

  @Test
  void tempoReplacesThePrintedOneAndChangesTheCost() {
    JsonNode printed = Session.of("compare", DEMO, "--format", "json").json();
    JsonNode fast = Session.of("compare", DEMO, "--tempo", "half=84", "--format", "json").json();

    assertThat(fast.get("tempo").asText()).isEqualTo("half=84");
    assertThat(fast.at("/plans/0/cost/total").asLong())
        .isNotEqualTo(printed.at("/plans/0/cost/total").asLong());
    assertThat(Session.of("compare", DEMO, "--tempo", "half=84").succeeded().lines().get(0))
        .contains(", half = 84; ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Viola", "viola", "2", "P2"})
  void partIsFoundByItsNameNumberOrId(String part) throws IOException {
    JsonNode plan = Session.of("plan", duo(), "--part", part, "--format", "json").json();

    assertThat(plan.get("part").asText()).isEqualTo("Viola");
    assertThat(texts(plan.get("notes"), "written")).containsExactly("D4", "E4");
    assertThat(texts(plan.get("notes"), "part")).containsOnly("P2");
  }

  @Test
  void scoreOfSeveralPartsNeedsAChoice() throws IOException {
    assertThat(Session.of("compare", duo()).refused(2).err()).contains("--part", "Violin", "Viola");
    assertThat(Session.of("compare", duo(), "--part", "Oboe").refused(2).err())
        .contains("Oboe", "Violin", "Viola");
  }

  private Path duo() throws IOException {
    return TinyScore.titled("Duo").part("Violin", "A4", "B4").part("Viola", "D4", "E4").in(folder);
  }

  @Test
  void instrumentMayBeGivenIfThePartNamesNone() throws IOException {
    Path score = TinyScore.titled("Solo").part("Staff 1", "A4", "B4").in(folder);

    JsonNode plan = Session.of("plan", score, "--instrument", "viola", "--format", "json").json();

    assertThat(plan.get("instrument").asText()).isEqualTo("viola");
  }

  @Test
  void withSecondAddsThePlanOfThreePositions() {
    JsonNode three = Session.of("compare", DEMO, "--format", "json").json();
    JsonNode four = Session.of("compare", DEMO, "--with-second", "--format", "json").json();

    assertThat(texts(three.get("plans"), "name"))
        .containsExactly("1st position", "3rd position", "partly 3rd");
    assertThat(texts(four.get("plans"), "name"))
        .containsExactly("1st position", "3rd position", "1st to 3rd", "partly 3rd");
  }

  @Test
  void planUsesOnlyAllowedPositions() {
    JsonNode plan = Session.of("plan", DEMO, "--allow", "1,half", "--format", "json").json();

    assertThat(texts(plan.get("notes"), "position")).isSubsetOf("half", "1");
  }

  @Test
  void noteOutOfReachIsReportedWithItsMeasureAndAdvice() throws IOException {
    Path score = TinyScore.titled("High").part("Viola", "A4", "A5").in(folder);

    Session plan = Session.of("plan", score, "--allow", "1,half").refused(2);

    assertThat(plan.err()).contains("A5", "measure 2", "half, 1", "allow");
  }

  @Test
  void adviceForANoteOutOfReachHelps() throws IOException {
    Path score = TinyScore.titled("High").part("Viola", "A4", "A5").in(folder);

    assertThat(Session.of("plan", score, "--allow", "1,half").refused(2).err()).contains("3");
    Session.of("plan", score, "--allow", "1,half,3").succeeded();
  }
}
