package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.tables.Position;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compares the tables in docs/presets.md with the plans of the program. */
final class PresetExamplesTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final List<String> PRESETS = List.of("beginner", "intermediate", "advanced");

  @ParameterizedTest
  @ValueSource(strings = {"song", "mill", "ladder"})
  void documentationShowsThePlansOfThePresets(String example) throws IOException {
    Path score = DOCS.resolve("examples").resolve(example + ".musicxml");
    List<JsonNode> plans =
        PRESETS.stream()
            .map(preset -> Session.of("plan", score, "--preset", preset, "--format", "json").json())
            .toList();

    String page = Files.readString(DOCS.resolve("presets.md"));
    assertThat(tables(page)).contains(table(plans));
  }

  private static List<List<String>> tables(String page) {
    List<List<String>> tables = new ArrayList<>();
    tables.add(new ArrayList<>());
    for (String line : page.lines().toList()) {
      List<String> last = tables.get(tables.size() - 1);
      if (line.startsWith("|")) {
        last.add(line);
      } else if (!last.isEmpty()) {
        tables.add(new ArrayList<>());
      }
    }
    return tables;
  }

  private static List<String> table(List<JsonNode> plans) {
    Stream<String> head =
        Stream.of("| m. | notes | " + String.join(" | ", PRESETS) + " |", "|---|---|---|---|---|");
    List<Map<String, String>> cells = plans.stream().map(PresetExamplesTest::cells).toList();
    Map<String, String> notes = written(plans.get(0));
    Stream<String> rows =
        notes.keySet().stream()
            .map(
                measure ->
                    "| %s | %s | %s |"
                        .formatted(
                            measure,
                            notes.get(measure),
                            cells.stream()
                                .map(cell -> cell.get(measure))
                                .collect(Collectors.joining(" | "))));
    return Stream.concat(head, rows).toList();
  }

  private static Map<String, String> written(JsonNode plan) {
    Map<String, String> notes = new LinkedHashMap<>();
    for (JsonNode note : Session.entries(plan.get("notes"))) {
      String name = note.get("written").asText().replace('#', '♯').replaceAll("(?<=.)b", "♭");
      notes.merge(note.get("measure").asText(), name, (before, now) -> before + " " + now);
    }
    return notes;
  }

  /**
   * A finger for every note, the string where it changes, the position where a finger enters it.
   */
  private static Map<String, String> cells(JsonNode plan) {
    List<String> strings = List.of("I", "II", "III", "IV");
    Map<String, String> cells = new LinkedHashMap<>();
    String position = "1";
    int string = 0;
    for (JsonNode note : Session.entries(plan.get("notes"))) {
      String measure = note.get("measure").asText();
      String finger = note.get("finger").asText();
      String mark = "";
      if (!finger.equals("0") && !note.get("position").asText().equals(position)) {
        position = note.get("position").asText();
        mark = "(" + Position.parse(position).display() + ") ";
      }
      if (!cells.containsKey(measure) || note.get("string").asInt() != string || !mark.isEmpty()) {
        string = note.get("string").asInt();
        mark = mark + strings.get(string - 1) + " ";
      }
      String apart = mark.isEmpty() ? " " : ", ";
      cells.merge(measure, mark + finger, (before, now) -> before + apart + now);
    }
    return cells;
  }
}
