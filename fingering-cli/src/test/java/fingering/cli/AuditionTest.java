package fingering.cli;

import static fingering.cli.Session.entries;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AuditionTest {
  private static final Path HEARING = Path.of("..", "docs", "demo", "hearing.yaml");

  private static final String TUNE =
      """
        - abc: |
            T:Weir
            M:3/4
            L:1/4
            Q:1/4=80
            K:Gm clef=alto
            D|G>AB|(c2 d)|(e/d/) (c/B/) A|G2|]
      """;

  @TempDir Path folder;

  private Path sheet(String text) throws IOException {
    return Files.writeString(folder.resolve("sheet.yaml"), text);
  }

  private static int stopped(JsonNode plan, String position) {
    return (int)
        entries(plan.get("notes")).stream()
            .filter(note -> note.get("position").asText().equals(position))
            .filter(note -> !note.get("finger").asText().equals("0"))
            .count();
  }

  @Test
  void printedPlansShowWhatTheAuditionAsksFor() {
    JsonNode answer = Session.of("audition", HEARING, "--format", "json").json();

    assertThat(answer.get("met").asBoolean()).isTrue();
    for (String position : List.of("1", "2", "3")) {
      assertThat(
              entries(answer.get("pieces")).stream()
                  .mapToInt(piece -> stopped(piece.get("plan"), position))
                  .sum())
          .isGreaterThanOrEqualTo(8);
    }
    long extra = 0;
    for (JsonNode piece : entries(answer.get("pieces"))) {
      assertThat(piece.at("/plan/cost/total").asLong())
          .isEqualTo(piece.get("cheapest").asLong() + piece.get("extra").asLong());
      extra += piece.get("extra").asLong();
    }
    assertThat(answer.get("extra").asLong()).isEqualTo(extra).isPositive();
  }

  @Test
  void sheetNamesItsStudentAndTakesExcerptsFromLessons() throws IOException {
    Path mill = Path.of("..", "docs", "examples");
    Files.copy(mill.resolve("mill.musicxml"), folder.resolve("mill.musicxml"));
    Files.copy(mill.resolve("imke.yaml"), folder.resolve("imke.yaml"));
    Files.writeString(
        folder.resolve("lesson.yaml"),
        """
        score: mill.musicxml
        part: Viola
        measures: 1-3
        tempo: quarter = 66
        plans: [{name: mine, stay: 3@1-2}]
        """);
    Path sheet =
        sheet(
            """
            instrument: viola
            student: imke
            positions: 3
            excerpts: [{lesson: lesson.yaml, measures: 1-2}]
            """);

    assertThat(Session.of("audition", sheet).succeeded().out())
        .contains("; player: " + folder.resolve("imke.yaml"))
        .contains(", m. 1–2: 3rd position throughout");
    JsonNode piece = Session.of("audition", sheet, "--format", "json").json().at("/pieces/0/plan");
    assertThat(piece.at("/tempo").toString() + piece.at("/tempi")).contains("66");

    sheet("instrument: viola\nexcerpts:\n  - lesson: lesson.yaml\n    file: mill.musicxml\n");
    assertThat(Session.of("audition", sheet).refused(2).err())
        .contains("line 4: an excerpt needs either 'file'");
    sheet("instrument: viola\nstudent: jonte\nscales: [{scale: D major}]\n");
    assertThat(Session.of("audition", sheet).refused(2).err())
        .contains("names the student jonte, but there is no player file");
  }

  @Test
  void theAnswerComesFirst() {
    List<String> lines = Session.of("audition", HEARING).succeeded().out().lines().toList();
    assertThat(lines.get(0)).isEqualTo("Placement hearing, Ossmere Summer Music Fortnight: viola");
    assertThat(String.join(" ", lines.subList(1, 3)))
        .isEqualTo(
            "Everything asked for is shown if F major is played in 2nd position; the other pieces"
                + " keep their easiest fingering.");
    assertThat(lines)
        .contains(
            "3. F major, 1 octave: 2nd position throughout (easiest: 1st position throughout)")
        .contains("  fingering audition " + HEARING + " --write hearing");
  }

  @Test
  void easiestFingeringsThatShowEverythingAreNamed() throws IOException {
    Path sheet = sheet("instrument: viola\npositions: 1\nscales: [{scale: D major}]\n");
    assertThat(Session.of("audition", sheet).succeeded().out().replaceAll("\\s+", " "))
        .contains("Everything asked for is shown with the easiest fingering of every piece.");
    Path free = sheet("instrument: viola\nscales: [{scale: D major}]\n");
    assertThat(Session.of("audition", free).succeeded().out().replaceAll("\\s+", " "))
        .contains("Nothing special is required: every piece keeps its easiest fingering.");
  }

  @Test
  void impossibleSkillsAreNamedBeforeThePossibleOnes() throws IOException {
    Path sheet =
        sheet("instrument: viola\npositions: [1, 5=90]\nscales: [{scale: D major, octaves: 1}]\n");
    Session unmet = Session.of("audition", sheet);
    assertThat(unmet.code()).isEqualTo(1);
    assertThat(unmet.out().replaceAll("\\s+", " "))
        .startsWith("Audition: viola 5th position in 90 stopped notes cannot be shown")
        .contains("Everything else is shown with the easiest fingering of every piece.");
  }

  @Test
  void pointsAndNotesArePrintedOnRequestOnly() {
    String brief = Session.of("audition", HEARING).succeeded().out();
    assertThat(brief).doesNotContain("point");
    assertThat(Session.of("audition", HEARING, "--costs").succeeded().lines())
        .anyMatch(line -> line.startsWith("Where each could be shown alone"))
        .contains("   568 points, 8 more than the easiest plan")
        .contains("Points by rule                     free choice")
        .allMatch(line -> line.length() <= 80);
    assertThat(Session.of("audition", HEARING, "--notes").succeeded().out().lines().count())
        .isGreaterThan(brief.lines().count() + 30);
  }

  @Test
  void afterWritingThePracticeIsNext() {
    Path target = folder.resolve("out");
    assertThat(Session.of("audition", HEARING, "--write", target).succeeded().lines())
        .contains(
            "  fingering practice "
                + target.resolve("3-f-major-1-octave.musicxml")
                + " --keep-printed \\");
  }

  // The command 'plan' makes the same demand on one piece.
  @Test
  void offerCostsAsMuchAsAPlanThatShowsTheSame() {
    JsonNode answer = Session.of("audition", HEARING, "--format", "json").json();
    JsonNode second = answer.at("/asked/1");
    assertThat(second.get("cheapest").asInt()).isZero();
    JsonNode offer =
        entries(second.get("offers")).stream()
            .filter(one -> one.get("piece").asInt() == 4)
            .findFirst()
            .orElseThrow();
    Object[] excerpt = {
      "plan", Session.DEMO, "--measures", "A to 32", "--tempo", "quarter=96", "--format", "json"
    };
    Object[] showing = Stream.concat(Stream.of(excerpt), Stream.of("--show", "2=8")).toArray();

    assertThat(offer.get("extra").asLong())
        .isEqualTo(
            Session.of(showing).json().at("/cost/total").asLong()
                - Session.of(excerpt).json().at("/cost/total").asLong());
  }

  @Test
  void sheetIsReadFromYamlAndJson() throws IOException {
    Path yaml =
        sheet("title: T\ninstrument: viola\npositions: 1, 2=4\nscales:\n  - scale: D major\n");
    Path json =
        Files.writeString(
            folder.resolve("sheet.json"),
            "{\"title\": \"T\", \"instrument\": \"viola\", \"positions\": [\"1\", \"2=4\"],"
                + " \"scales\": [{\"scale\": \"D major\"}]}");
    String ofYaml = Session.of("audition", yaml).succeeded().out();

    assertThat(Session.of("audition", json).succeeded().out().replace(json.toString(), "" + yaml))
        .isEqualTo(ofYaml);
    assertThat(ofYaml)
        .contains("1st position in 8 stopped notes", "2nd position in 4 stopped notes");
  }

  @Test
  void demandsOnAPieceApplyToThatPiece() throws IOException {
    Path sheet = sheet("instrument: viola\nexcerpts:\n" + TUNE + "    allow: 3\n" + TUNE);
    JsonNode pieces = Session.of("audition", sheet, "--format", "json").json().get("pieces");

    assertThat(stopped(pieces.get(0).get("plan"), "3")).isPositive();
    assertThat(stopped(pieces.get(0).get("plan"), "1")).isZero();
    assertThat(stopped(pieces.get(1).get("plan"), "1")).isPositive();
    assertThat(stopped(pieces.get(1).get("plan"), "3")).isZero();
  }

  // Scales in one position are fingered alike in every school: a scale in 3rd shows 3rd.
  @Test
  void scalesDoNotCountIfOnlyExcerptsMustShowSkills() throws IOException {
    String asked = "instrument: viola\npositions: 3=4\n";
    String pieces = "scales:\n  - scale: D major\n    octaves: 1\n    allow: 3\nexcerpts:\n" + TUNE;

    JsonNode all = Session.of("audition", sheet(asked + pieces), "--format", "json").json();
    assertThat(all.get("extra").asLong()).isZero();
    JsonNode excerpts =
        Session.of("audition", sheet(asked + "shown-in: excerpts\n" + pieces), "--format", "json")
            .json();
    assertThat(excerpts.get("extra").asLong()).isPositive();
    assertThat(stopped(excerpts.at("/pieces/1/plan"), "3")).isGreaterThanOrEqualTo(4);
  }

  // The tune has twelve notes, so that no way to take it stops fourteen.
  @Test
  void positionInOnePieceIsNotSharedByTwo() throws IOException {
    String pieces = "excerpts:\n" + TUNE + "    name: one\n" + TUNE + "    name: two\n";
    Path sheet = sheet("instrument: viola\npositions: 1=14\n" + pieces);
    assertThat(Session.of("audition", sheet).succeeded().out()).contains("1st position");
    Path whole = sheet("instrument: viola\ncounted: in-one-piece\npositions: 1=14\n" + pieces);
    Session unmet = Session.of("audition", whole);
    assertThat(unmet.code()).isEqualTo(1);
    assertThat(unmet.out().replaceAll("\\s+", " "))
        .startsWith(
            "Audition: viola 1st position in 14 stopped notes cannot be shown in one of these")
        .contains("only 9 notes: choose another scale or excerpt, or ask for less.");
    assertThat(unmet.err()).contains("1 of 1 skills asked for in ", " cannot be shown");
  }

  @Test
  void unplannablePiecesAreListedWithTheirLinesAndTheRestIsPlanned() throws IOException {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Path sheet =
        sheet(
            "instrument: viola\n" // 1
                + "scales:\n" // 2
                + "  - scale: D major\n" // 3
                + "    allow: 3\n" // 4
                + "  - scale: G major\n" // 5
                + "    tempo: quick\n" // 6
                + "excerpts:\n" // 7
                + "  - file: demo.musicxml\n" // 8
                + "    measures: Q to D\n" // 9
                + "  - file: missing.musicxml\n" // 10
                + "  - file: demo.musicxml\n" // 11
                + "    stay: 3@40\n" // 12
                + "  - file: demo.musicxml\n" // 13
                + "    part: Oboe\n" // 14
                + TUNE);
    Session session = Session.of("audition", sheet);

    assertThat(session.code()).isEqualTo(1);
    assertThat(session.err().lines()).hasSize(1);
    assertThat(session.err()).startsWith("fingering: 6 of 7 pieces of ");
    assertThat(session.out().replaceAll("\\s+", " "))
        .contains(
            "6 of 7 pieces cannot be planned: see the end.",
            "7. Weir, m. 0–4: 1st position",
            "line 3: With these demands, the viola has at most 1 octave of D major",
            "line 6: 'quick' is not a tempo",
            "line 9: Viola has no measures 'Q to D'",
            "line 10: There is no file ",
            "line 12: There is no measure 40 in Viola",
            "line 14: ");
    JsonNode json = Session.json(Session.of("audition", sheet, "--format", "json").out());
    assertThat(texts(json.get("problems"), "line"))
        .containsExactly("3", "6", "9", "10", "12", "14");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          title: x                                                     | line 1: the sheet lists nothing to play
          scales: [{scale: D major}]                                   | line 1: 'instrument' is missing; add it, such as 'instrument: viola'
          instrument: oud@scales: [{scale: D major}]                   | line 1: no instrument 'oud'
          instrument: viola@piano: 3                                   | line 2: there is no key 'piano' in an audition sheet; choose from title,
          instrument: viola@scales: 3                                  | line 2: 'scales' is a list with one item or more, such as '- scale: D major'
          instrument: viola@scales: [{key: D}]                         | line 2: there is no key 'key' in a scale
          instrument: viola@excerpts: [{scale: D}]                     | line 2: there is no key 'scale' in an excerpt
          instrument: viola@positions: 3=x@scales: [{scale: D major}]  | line 2: '3=x' does not say what to show and how much of it
          instrument: viola@counted: twice@scales: [{scale: D major}]  | line 2: 'counted' is together or in-one-piece, not 'twice'
          instrument: viola@scales: [{octaves: 1}]                     | line 2: 'scale' is missing; add it, such as 'scale: D major'
          title: [x                                                    | line 1: a list or bracket is not closed
          """)
  void unreadableSheetIsRejectedWithItsLine(String text, String message) throws IOException {
    assertThat(Session.of("audition", sheet(text.replace("@", "\n") + "\n")).refused(2).err())
        .contains("sheet.yaml, ", message);
  }

  @Test
  void piecesAreWrittenToANewFolderAndGiveTheSamePlans() throws IOException {
    Path target = folder.resolve("hearing");
    JsonNode answer = Session.of("audition", HEARING, "--write", target, "--format", "json").json();

    try (Stream<Path> files = Files.list(target)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "1-c-major-3-octaves.musicxml",
              "2-g-melodic-minor-2-octaves.musicxml",
              "3-f-major-1-octave.musicxml",
              "4-lanterns-on-the-millrace.musicxml");
    }
    JsonNode third = answer.at("/pieces/2");
    JsonNode again =
        Session.of("plan", third.get("written").asText(), "--keep-printed", "--format", "json")
            .json();
    assertThat(again.get("notes")).isEqualTo(third.at("/plan/notes"));
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(target);
    }
  }

  @Test
  void piecesWithTheSameNameHaveDifferentFiles() throws IOException {
    Path sheet = sheet("instrument: viola\nscales: [{scale: D major}, {scale: D major}]\n");
    Path target = folder.resolve("twice");
    Session.of("audition", sheet, "--write", target).succeeded();

    assertThat(target.resolve("1-d-major-2-octaves.musicxml")).exists();
    assertThat(target.resolve("2-d-major-2-octaves.musicxml")).exists();
  }

  @Test
  void existingFolderIsLeftUnchanged() throws IOException {
    Path mine = Files.createDirectory(folder.resolve("mine"));

    assertThat(Session.of("audition", HEARING, "--write", mine).refused(2).err())
        .contains("already exists, so nothing was written");
    assertThat(mine).isEmptyDirectory();
  }

  @Test
  void newSkillsAndTheRoleOfTheTeacherAreMentioned() {
    Path imke = Path.of("..", "docs", "examples", "imke.yaml");
    String out = Session.of("audition", HEARING, "--player", imke).succeeded().out();

    assertThat(out.replaceAll("\\s+", " "))
        .contains(
            "new to this player: ", "stop if it hurts, rest", "Your teacher has the last word");
    assertThat(out.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void sheetForAnotherInstrumentThanThePlayersIsRejected() throws IOException {
    Path imke = Path.of("..", "docs", "examples", "imke.yaml");
    Path sheet = sheet("instrument: cello\nscales: [{scale: D major}]\n");

    assertThat(Session.of("audition", sheet, "--player", imke).refused(2).err())
        .contains("is for the cello, but the player of ", "plays the viola");
  }

  @Test
  void documentationShowsTheSheetAndTheOutput() throws IOException {
    String document = Files.readString(Path.of("..", "docs", "audition.md"));
    String printed =
        Session.of("audition", HEARING)
            .succeeded()
            .out()
            .replace(HEARING.toString(), "docs/demo/hearing.yaml");
    String asked = Files.readString(HEARING);

    assertThat(document).contains(indented(printed)).contains(indented(asked));
  }

  private static String indented(String text) {
    StringBuilder shown = new StringBuilder();
    text.lines().forEach(line -> shown.append(line.isEmpty() ? "" : "    " + line).append('\n'));
    return shown.toString();
  }
}
