package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.playability.CheckLevel;
import fingering.scoring.HabitNetwork;
import fingering.scoring.Weights;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas of files that users write accept what the program reads, and nothing else. */
final class UserFileSchemasTest {
  @TempDir Path folder;

  static Stream<Arguments> files() {
    Path resources = Path.of("..", "fingering-core", "src", "main", "resources", "fingering");
    Path examples = DocumentedCommand.DOCS.resolve("examples");
    return Stream.concat(
        Weights.presets().stream()
            .flatMap(
                name ->
                    Stream.of(
                        Arguments.of(
                            "weights",
                            SchemasTest.read(
                                resources.resolve("scoring/weights/" + name + ".yaml"))),
                        Arguments.of(
                            "level",
                            SchemasTest.read(
                                resources.resolve("playability/levels/" + name + ".yaml"))))),
        Stream.of(
            Arguments.of("player", SchemasTest.read(examples.resolve("imke.yaml"))),
            Arguments.of("player", SchemasTest.read(examples.resolve("jonte.yaml"))),
            Arguments.of("player", "positions: half, 1-4, 2½\npatterns: 0-1, augmented second"),
            Arguments.of("player", "positions: 1\nshifts: none\nsize: 375mm\nhand: 102mm"),
            Arguments.of("player", "extensions: []\nsize: 15.5\nhand: small"),
            Arguments.of("weights", "shift: 20"),
            Arguments.of("weights", "{\"shift\": \"20\", \"crossing\": 0}"),
            Arguments.of("weights", "shift: 20\ncello.shift: 15\nviolin.habit: 0"),
            Arguments.of("weights", "violin.habit-network: " + network("-0.25")),
            Arguments.of("weights", "habit: 2\nbass.habit-network: " + network("12")),
            Arguments.of("lesson", "score: " + Session.DEMO.toAbsolutePath()),
            Arguments.of(
                "lesson",
                "score: "
                    + Session.DEMO.toAbsolutePath()
                    + "\ntempo: half = 60\nvoice: 1\nmeasures: 17\nplans: [{allow: 1}]\n"
                    + "hearing: {date: 2026-12-12, tempo: 96}\njournal: no.journal\n"
                    + "circles: {shown: yes, not: [accent, 12.1 dynamic]}"),
            Arguments.of("tuning", "instrument: viola\nstrings: [A4, D4, G3, C3]\nname: own"),
            Arguments.of("tuning", "instrument: viola\nstrings: Ab4, C#4, G3, C3 down to B2")));
  }

  /** A list of as many numbers as a habit network has. */
  private static String network(String number) {
    return Collections.nCopies(HabitNetwork.SIZE, number).toString();
  }

  /** The command that reads a file of that kind. */
  private static Object[] reading(String schema, Path file) {
    return schema.equals("lesson")
        ? new Object[] {"plan", "--lesson", file}
        : schema.equals("level")
            ? new Object[] {"check", Session.DEMO, "--level", file}
            : new Object[] {"plan", Session.DEMO, "--" + schema, file};
  }

  @ParameterizedTest
  @MethodSource("files")
  void aFileIsValidAndRead(String schema, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("my-file.yaml"), text);
    assertThat(SchemasTest.faults(SchemasTest.schema(schema), SchemasTest.yaml(file))).isEmpty();
    assertThat(Session.of(reading(schema, file)).complaints()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          player  | postions: [1, 3]
          player  | positions: {first: 1}
          player  | positions: []
          player  | positions: [[1]]
          player  | patterns: none
          player  | patterns: [0-1, 2-4]
          player  | patterns: 0-1, 2-4
          player  | extensions: back
          player  | shifts: [rest, none]
          player  | shifts: slides
          player  | preset: loud
          player  | preset: [beginner]
          player  | instrument: oud
          player  | hand: huge
          player  | {}
          player  | text
          weights | shft: 20
          weights | shift: -1
          weights | shift: 1.5
          weights | shift: 1000000
          weights | shift: many
          weights | shift: [20]
          weights | flute.shift: 20
          weights | cello.shft: 20
          weights | cello.shift: many
          weights | habit-network: [1, 2]
          weights | cello.habit-network: [1, 2]
          weights | cello.habit-network: 20
          weights | {}
          weights | []
          level   | plan: intermediate
          lesson  | part: Viola
          lesson  | {score: a.xml, parts: Viola}
          lesson  | {score: a.xml, tempo: fast}
          lesson  | {score: a.xml, instrument: oud}
          lesson  | {score: a.xml, plans: []}
          lesson  | {score: a.xml, plans: [{name: low}]}
          lesson  | {score: a.xml, plans: [{choose: best}]}
          lesson  | {score: a.xml, plans: [{choose: first, stays: 3@1}]}
          lesson  | {score: a.xml, plans: [{fix: twelve}]}
          lesson  | {score: a.xml, hearing: 2026-12-12}
          lesson  | {score: a.xml, hearing: {date: soon}}
          lesson  | {score: a.xml, hearing: {}}
          lesson  | {score: a.xml, circles: {shown: often}}
          lesson  | {score: a.xml, circles: {not: [loud]}}
          lesson  | {score: a.xml, circles: {not: [12 shift]}}
          lesson  | {score: a.xml, circles: {only: [shift]}}
          tuning  | instrument: viola
          tuning  | strings: [A4, D4, G3, C3]
          tuning  | {instrument: oud, strings: [A4, D4]}
          tuning  | {instrument: viola, strings: []}
          tuning  | {instrument: viola, strings: [H4]}
          tuning  | {instrument: viola, strings: A4 D4}
          tuning  | {instrument: viola, strings: [A4, D4], name: My tuning}
          tuning  | {instrument: viola, strings: [A4, D4], source: home}
          """)
  void aWrongFileIsNotValidAndNotRead(String schema, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("my-file.yaml"), text);
    assertThat(SchemasTest.faults(SchemasTest.schema(schema), SchemasTest.yaml(file))).isNotEmpty();
    Session.of(reading(schema, file)).refused(2);
  }

  @ParameterizedTest
  @CsvSource({
    "mute-on, soon",
    "mute-on, 3 %",
    "mute-on, [3 s]",
    "haste, 9.5 %",
    "haste, -1",
    "plan, loud",
    "tempo, first-years",
    "extensions, some",
    "strings-at-once, two",
    "highest-viola, [3]",
    "clefs-bass, 'bass, soprano'",
    "clefs-bass, [soprano]",
    "clefs-bass, []",
    "undivided-chord, bad"
  })
  void aLevelWithAWrongValueIsNotValidAndNotRead(String key, String value) throws IOException {
    String text = CheckLevel.text("beginner");
    Path file =
        Files.writeString(
            folder.resolve("my-file.yaml"),
            text.replaceFirst("(?m)^" + key + ":.*$", key + ": " + value));
    assertThat(file).content().isNotEqualTo(text);
    assertThat(SchemasTest.faults(SchemasTest.schema("level"), SchemasTest.yaml(file)))
        .isNotEmpty();
    Session.of(reading("level", file)).refused(2);
  }
}
