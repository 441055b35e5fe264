package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.google.common.base.Splitter;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fingering.demand.DemandKeys;
import fingering.demand.DemandParser;
import fingering.playability.FindingKind;
import fingering.playability.Threshold;
import fingering.scoring.CostRule;
import fingering.scoring.Habit;
import fingering.scoring.HabitNetwork;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instrument.HandKind;
import fingering.tempo.LimitCause;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The schemas in docs/schemas (JSON Schema, draft 2020-12), by the library json-schema-validator:
 * what the program prints and reads is valid, and damaged JSON is not.
 */
final class SchemasTest {
  private static final Path SCHEMAS = DocumentedCommand.DOCS.resolve("schemas");
  private static final String BASE = "file:///schemas/";
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(SchemasTest::text));

  @TempDir Path folder;

  private static String text(String iri) {
    return iri.startsWith(BASE) ? read(SCHEMAS.resolve(iri.substring(BASE.length()))) : null;
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Schema schema(String name) {
    return REGISTRY.getSchema(SchemaLocation.of(BASE + name + ".schema.json"));
  }

  /** What is wrong with JSON. It is passed as text, because the library uses Jackson 3. */
  static List<Error> faults(Schema schema, JsonNode json) {
    return schema.validate(json.toString(), InputFormat.JSON);
  }

  static JsonNode tree(String name) {
    return Session.json(read(SCHEMAS.resolve(name + ".schema.json")));
  }

  private static Stream<String> names() {
    return Stream.of(
        "plan",
        "audition",
        "check",
        "brief",
        "audition-sheet",
        "player",
        "weights",
        "level",
        "tuning",
        "lesson");
  }

  /** A command, and the schema of its JSON. */
  private record Printing(String schema, List<Object> words) {
    static Printing of(String schema, Object... words) {
      return new Printing(schema, Arrays.asList(words));
    }

    JsonNode json() {
      List<Object> all = new ArrayList<>(words);
      all.add("--format");
      all.add("json");
      return Session.json(Session.of(all.toArray()).out());
    }
  }

  static Stream<Printing> printings() {
    Path examples = DocumentedCommand.DOCS.resolve("examples");
    Path imke = examples.resolve("imke.yaml");
    Path jonte = examples.resolve("jonte.yaml");
    Path demo = Session.DEMO;
    return Stream.of(
        Printing.of("plan", "plan", demo),
        Printing.of("plan", "plan", demo, "--choose", "third", "--why", "28.3"),
        Printing.of("plan", "plan", demo, "--choices", "24-25"),
        Printing.of("plan", "plan", demo, "--measures", "17-20", "--best", "2"),
        Printing.of("plan", "plan", demo, "--show", "2=8", "--stay", "3@17-20"),
        Printing.of("plan", "compare", demo, "--with-second"),
        Printing.of("plan", "compare", demo, "--player", jonte),
        Printing.of("plan", "compare", demo, "--player", jonte, "--player", imke),
        Printing.of("plan", "plan", examples.resolve("sluice.musicxml")),
        Printing.of("plan", "scale", "C", "major", "--instrument", "cello", "--octaves", "4"),
        Printing.of("plan", "scale", "F", "major", "--instrument", "bass", "--octaves", "2"),
        Printing.of("plan", "plan", "--abc", "K:G clef=alto\\nL:1/4\\n!open!d Tc !1!B A|[DA]4|"),
        Printing.of("plan", "plan", "--abc", "K:C\\nL:1/1\\nc|"),
        Printing.of("audition", "audition", DocumentedCommand.DOCS.resolve("demo/hearing.yaml")),
        Printing.of("check", "check", examples, "--level", "beginner"),
        Printing.of("check", "check", demo, examples.resolve("absent.xml"), "--show", "risky"));
  }

  @ParameterizedTest
  @MethodSource("printings")
  void outputIsValid(Printing printing) {
    assertThat(faults(schema(printing.schema()), printing.json())).isEmpty();
  }

  /** The schema rejects an unknown field at any place, and another version. */
  @ParameterizedTest
  @MethodSource("printings")
  void damagedOutputIsInvalid(Printing printing) {
    Schema schema = schema(printing.schema());
    ObjectNode whole = (ObjectNode) printing.json();
    whole.put("surplus", 1);
    assertThat(faults(schema, whole)).isNotEmpty();
    whole.remove("surplus");
    for (ObjectNode object : firstOfEach(whole)) {
      object.put("surplus", 1);
      assertThat(faults(schema, whole)).as(object.toString()).isNotEmpty();
      object.remove("surplus");
    }
    for (String field : List.of("format", "version")) {
      JsonNode taken = whole.remove(field);
      assertThat(faults(schema, whole)).as(field).isNotEmpty();
      whole.set(field, taken);
    }
    whole.put("version", 2);
    assertThat(faults(schema, whole)).isNotEmpty();
  }

  /** Every object, but only the first one of each array. */
  private static List<ObjectNode> firstOfEach(JsonNode node) {
    List<ObjectNode> objects = new ArrayList<>();
    if (node instanceof ObjectNode object) {
      objects.add(object);
      object.forEach(child -> objects.addAll(firstOfEach(child)));
    } else if (node instanceof ArrayNode array && !array.isEmpty()) {
      objects.addAll(firstOfEach(array.get(0)));
    }
    return objects;
  }

  @Test
  void anImpossibleNoteIsInvalid() {
    JsonNode plan = Printing.of("plan", "plan", Session.DEMO).json();
    ObjectNode note = (ObjectNode) plan.get("notes").get(3);
    for (var wrong :
        List.of(
            List.of("finger", "5"),
            List.of("position", "3rd"),
            List.of("written", "H4"),
            List.of("midi", "67"))) {
      JsonNode was = note.get(wrong.get(0));
      note.put(wrong.get(0), wrong.get(1));
      assertThat(faults(schema("plan"), plan)).as(wrong.toString()).isNotEmpty();
      note.set(wrong.get(0), was);
    }
    assertThat(faults(schema("plan"), plan)).isEmpty();
  }

  @Test
  void theSheetOfTheDemoIsValid() throws IOException {
    JsonNode sheet = yaml(DocumentedCommand.DOCS.resolve("demo/hearing.yaml"));
    assertThat(faults(schema("audition-sheet"), sheet)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "instrument: lute\nscales:\n  - scale: D major",
        "instrument: viola",
        "instrument: viola\nscales:\n  - octaves: 2",
        "instrument: viola\nexcerpts:\n  - measures: 9-16",
        "instrument: viola\nexcerpts:\n  - file: a.xml\n    abc: 'K:C'",
        "instrument: viola\nscales:\n  - scale: D major\n    octaves: 9",
        "instrument: viola\npositons: 3\nscales:\n  - scale: D major"
      })
  void aDamagedSheetIsInvalidAndRefused(String text) throws IOException {
    Path sheet = Files.writeString(folder.resolve("sheet.yaml"), text);
    assertThat(faults(schema("audition-sheet"), yaml(sheet))).isNotEmpty();
    assertThat(Session.of("audition", sheet).code()).isNotZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "name: Audition\nshow: ['1=4', '2=4', '3=8']\navoid: extensions\nstay: 3@17-20",
        "allow: 1, half\nfix: 6.1=I/4",
        "{\"show\": \"3=8\", \"strings\": [\"I,II@17-20\"]}",
        "show-stay: 3=2\nshow-shift: up first-finger=1\nshow-technique: fourth-finger",
        "allow: [3@17-20]"
      })
  void aBriefIsValidAndRead(String text) throws IOException {
    Path brief = Files.writeString(folder.resolve("brief.yaml"), text);
    assertThat(faults(schema("brief"), yaml(brief))).isEmpty();
    Session.of("plan", Session.DEMO, "--brief", brief).succeeded();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shows: 3=8",
        "show: 3",
        "stay: 3",
        "fix: twelve",
        "avoid: fifth-finger",
        "show-technique: guessing",
        "allow: {position: 3}",
        "plans: []",
        "name: Low\nplans:\n  - allow: '1'"
      })
  void aDamagedBriefIsInvalidAndRefused(String text) throws IOException {
    Path brief = Files.writeString(folder.resolve("brief.yaml"), text);
    assertThat(faults(schema("brief"), yaml(brief))).isNotEmpty();
    assertThat(Session.of("compare", Session.DEMO, "--briefs", brief).code()).isNotZero();
  }

  @Test
  void briefsOfTheHandbookAreValid() throws IOException {
    Path briefs =
        Files.writeString(
            folder.resolve("briefs.yaml"),
            """
            plans:
              - name: low
                allow: 1, half
              - name: up early
                show: 3=8
                avoid: open-strings
            """);
    assertThat(faults(schema("brief"), yaml(briefs))).isEmpty();
  }

  static JsonNode yaml(Path file) throws IOException {
    return new YAMLMapper().readTree(Files.readString(file));
  }

  @ParameterizedTest
  @MethodSource("names")
  void theSchemaIsValid(String name) {
    Schema draft =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(faults(draft, tree(name))).isEmpty();
  }

  /** Unknown fields are rejected, and every field is explained and named in the handbook. */
  @ParameterizedTest
  @MethodSource("names")
  void everyFieldIsExplained(String name) {
    String handbook =
        Stream.of(
                "json.md",
                "briefs.md",
                "audition.md",
                "arrangers.md",
                "player.md",
                "lessons.md",
                "scoring.md",
                "command-line.md")
            .map(page -> read(DocumentedCommand.DOCS.resolve(page)))
            .reduce("", String::concat);
    for (ObjectNode object : all(tree(name))) {
      if (!object.path("properties").isObject()) {
        continue;
      }
      assertThat(object.path("additionalProperties").asBoolean(true)).as(name).isFalse();
      object
          .get("properties")
          .properties()
          .forEach(
              field -> {
                assertThat(handbook).contains(ofARange(field.getKey()));
                assertThat(field.getValue().has("description") || field.getValue().has("$ref"))
                    .as(field.getKey())
                    .isTrue();
              });
    }
  }

  /** A key as the handbook has it, which names only the ends of some ranges: {@code bow-ff}. */
  private static String ofARange(String key) {
    return key.replaceFirst("^bow-(p|mf|f)$", "bow-ff")
        .replaceFirst("^(highest|clefs)-(viola|cello)$", "$1-bass");
  }

  private static List<ObjectNode> all(JsonNode node) {
    List<ObjectNode> objects = new ArrayList<>();
    if (node instanceof ObjectNode object) {
      objects.add(object);
    }
    node.forEach(child -> objects.addAll(all(child)));
    return objects;
  }

  @Test
  void listsOfNamesAreThoseOfTheProgram() {
    assertThat(texts(tree("check").at("/$defs/finding/properties/kind/enum")))
        .isEqualTo(
            new TreeSet<>(Arrays.stream(FindingKind.values()).map(FindingKind::id).toList()));
    String cause = "/$defs/comfortableTempo/properties/limits/items/properties/cause/enum";
    assertThat(texts(tree("plan").at(cause)))
        .isEqualTo(new TreeSet<>(Arrays.stream(LimitCause.values()).map(LimitCause::id).toList()));
    assertThat(DemandKeys.ALL.examples().keySet()).containsExactlyElementsOf(DemandParser.KEYS);
    Set<String> rules = new TreeSet<>(StandardRules.all().stream().map(CostRule::id).toList());
    rules.add(Habit.ID);
    assertThat(names(tree("weights").get("properties"))).isEqualTo(rules);
    assertThat(names(tree("weights").get("patternProperties")))
        .hasSize(2)
        .allMatch(pattern -> pattern.startsWith(hands()))
        .anySatisfy(
            pattern ->
                assertThat(Splitter.on('|').split(pattern.replaceAll(".*\\(|\\)\\$", "")))
                    .containsExactlyInAnyOrderElementsOf(rules));
    for (String count : List.of("minItems", "maxItems")) {
      assertThat(tree("weights").at("/$defs/network/" + count).asInt())
          .isEqualTo(HabitNetwork.SIZE);
    }
    JsonNode level = tree("level");
    for (Threshold threshold : Threshold.values()) {
      assertThat(level.at("/properties/" + threshold.key() + "/description").asText())
          .isEqualTo(threshold.explanation());
    }
    assertThat(texts(level.get("required")))
        .isEqualTo(names(level.get("properties")))
        .hasSize(Threshold.values().length);
    for (String preset : List.of("/$defs/preset/enum", "/properties/preset/enum")) {
      assertThat(texts(tree(preset.contains("defs") ? "level" : "player").at(preset)))
          .isEqualTo(new TreeSet<>(Weights.presets()));
    }
    for (String key : DemandParser.KEYS) {
      assertThat(tree("brief").at("/$defs/brief/properties").has(key)).as(key).isTrue();
      assertThat(tree("lesson").at("/$defs/plan/properties").has(key)).as(key).isTrue();
      assertThat(tree("lesson").at("/$defs/" + key)).isEqualTo(tree("brief").at("/$defs/" + key));
    }
  }

  /** The start of a key for one kind of hand, as a regular expression. */
  private static String hands() {
    return Arrays.stream(HandKind.values())
        .map(hand -> hand.name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining("|", "^(", ")\\."));
  }

  private static Set<String> names(JsonNode object) {
    Set<String> names = new TreeSet<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static Set<String> texts(JsonNode array) {
    Set<String> texts = new TreeSet<>();
    array.forEach(entry -> texts.add(entry.asText()));
    return texts;
  }
}
