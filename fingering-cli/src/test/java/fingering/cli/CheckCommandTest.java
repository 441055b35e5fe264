package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
  static final Path LANTERNS = Path.of("..", "docs", "examples", "lanterns.musicxml");

  @TempDir Path folder;

  private Path quiet(String name) throws IOException {
    Path inside = Files.createDirectories(folder.resolve(name).toAbsolutePath().getParent());
    Path tiny = TinyScore.titled("Quiet " + name).part("Viola", "D4", "E4", "D4").in(inside);
    return Files.move(tiny, folder.resolve(name));
  }

  private static List<String> files(Session session) {
    return Session.texts(Session.json(session.out()).path("scores"), "file");
  }

  private List<String> named(String... names) {
    return Stream.of(names).map(name -> folder.resolve(name).toString()).toList();
  }

  /** The whole text, as an arranger reads it. */
  @Test
  void textOfAnOrchestraScore() throws IOException {
    String golden;
    try (var in = CheckCommandTest.class.getResourceAsStream("lanterns.txt")) {
      golden = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    Session session = Session.of("check", LANTERNS, "--level", "intermediate");
    assertThat(session.err()).isEmpty();
    assertThat(session.out()).isEqualTo(golden);
    assertThat(session.lines()).allMatch(line -> line.length() <= 80);
    assertThat(session.code()).isEqualTo(1);
  }

  @Test
  void theAnswerComesFirst() throws IOException {
    assertThat(String.join(" ", Session.of("check", LANTERNS).lines().subList(0, 2)))
        .isEqualTo(
            "Lanterns on the Weir: 1 note cannot be played (Violoncello, m. 12); 6 risky places;"
                + " difficulty 7 of 10 at most (Violin I).");
    assertThat(Session.of("check", quiet("quiet.musicxml")).succeeded().lines().get(0))
        .startsWith("Quiet quiet.musicxml: every note can be played; nothing is risky; difficulty");
  }

  @Test
  void textSaysWhoPlaysAndHowToChangeIt() {
    assertThat(Session.of("check", LANTERNS).out().replaceAll("\\s+", " "))
        .contains("for advanced students (level common-practice)")
        .contains("for a section, as in an orchestra; if one player has it, check it");
    Object[] changed = {"check", LANTERNS, "--played-by", "one-player"};
    assertThat(Session.of(changed).out()).contains("one player)").doesNotContain("is assumed");
  }

  /** The checked parts of the example. */
  private static JsonNode lanterns() {
    return Session.json(Session.of("check", LANTERNS, "--format", "json").out())
        .path("scores")
        .path(0)
        .path("parts");
  }

  @Test
  void measuresOfAPassageWithGapsAreListedInJsonAsInText() {
    JsonNode divided = lanterns().path(1).path("findings").path(0);

    assertThat(divided.path("kind").asText()).isEqualTo("divisi-not-marked");
    assertThat(Session.texts(divided.path("places"), "measure")).containsExactly("4", "8");
    assertThat(Session.of("check", LANTERNS).out()).contains("m. 4, 8: The part does not say");
  }

  // Open strings: cello C2 G2 D3 A3, bass as written E2 A2 D3 G3, violin's lowest G3; S. Adler, The
  // Study of Orchestration (from memory).
  @Test
  void notesBelowTheLowestStringAreFoundAtTheirPlaces() {
    JsonNode parts = lanterns();
    JsonNode cello = parts.path(3);
    assertThat(cello.path("instrument").asText()).isEqualTo("cello");
    JsonNode low = cello.path("findings").path(cello.path("findings").size() - 1);
    assertThat(low.path("kind").asText()).isEqualTo("out-of-range");
    assertThat(low.path("severity").asText()).isEqualTo("unplayable");
    assertThat(low.path("measure").asText()).isEqualTo("12");
    assertThat(low.path("notes").path(0).path("written").asText()).isEqualTo("B1");
    assertThat(low.has("places")).isFalse();
    assertThat(Session.texts(parts.path(4).path("findings"), "kind")).contains("out-of-range");
    assertThat(Session.texts(parts.path(1).path("findings"), "kind")).contains("chord-no-hand");
  }

  @Test
  void exitCodeDependsOnFailOn() throws IOException {
    Path quiet = quiet("quiet.musicxml");
    assertThat(Session.of("check", quiet).succeeded().out()).contains("1 Viola");
    assertThat(Session.of("check", LANTERNS, "--part", "Viola").code()).isEqualTo(1);
    Session mild = Session.of("check", LANTERNS, "--part", "Viola", "--fail-on", "unplayable");
    assertThat(mild.succeeded().out()).contains("risky: no time for pizzicato");
    Session low =
        Session.of("check", LANTERNS, "--part", "6", "--part", "P5", "--show", "unplayable");
    assertThat(low.code()).isEqualTo(1);
    assertThat(low.out()).contains("unplayable: out of range").doesNotContain("  risky:");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "check SCORE --jobs 0",
        "check SCORE --fail-on everything",
        "check SCORE --instrument viola",
        "check SCORE --format svg",
        "check SCORE --played-by nobody"
      })
  void mistypedCommandsAreRejected(String typed) {
    Object[] words =
        Stream.of(typed.split(" ", -1)).map(w -> w.equals("SCORE") ? LANTERNS : w).toArray();
    assertThat(Session.of(words).refused(2).err()).contains("--help");
  }

  @Test
  void badFileDoesNotStopOthers() throws IOException {
    quiet("a.musicxml");
    Files.writeString(folder.resolve("b.xml"), "no score");
    Files.writeString(folder.resolve("c.musicxml"), "<score-partwise><part-list>");
    quiet("d.musicxml");

    Session session = Session.of("check", folder);

    assertThat(session.code()).isEqualTo(2);
    assertThat(session.err().lines())
        .hasSize(2)
        .allMatch(line -> line.startsWith("fingering: ") && line.endsWith("."))
        .anyMatch(line -> line.contains("b.xml"))
        .anyMatch(line -> line.contains("c.musicxml"));
    assertThat(session.out()).contains("Quiet a.musicxml", "Quiet d.musicxml", "Not checked");
  }

  @Test
  void scoreWithoutStringPartsIsReported() throws IOException {
    Path horn = TinyScore.titled("Horn alone").part("Horn", "A4").in(folder);
    Session session = Session.of("check", horn);
    assertThat(session.code()).isEqualTo(2);
    assertThat(session.err()).contains("nothing was checked", "--part", "--instrument");
    assertThat(
            Session.of("check", horn, "--part", "Horn", "--instrument", "viola").succeeded().out())
        .contains("1 Horn");
  }

  @Test
  void foldersAndPatternsAreExpanded() throws IOException {
    quiet("b/two.musicxml");
    quiet("b/deep/one.xml");
    quiet("a/three.musicxml");
    quiet(".hidden/four.musicxml");
    Files.writeString(folder.resolve("b/notes.txt"), "bring the mutes");

    assertThat(files(Session.of("check", folder, "--format", "json")))
        .isEqualTo(named("a/three.musicxml", "b/deep/one.xml", "b/two.musicxml"));
    assertThat(files(Session.of("check", folder + "/b/*.musicxml", "--format", "json")))
        .isEqualTo(named("b/two.musicxml"));
    assertThat(files(Session.of("check", folder + "/**.{xml,mxl}", "--format", "json")))
        .isEqualTo(named("b/deep/one.xml"));
    // Named twice, checked once, in the order of the command.
    Session session =
        Session.of("check", folder.resolve("b"), folder, folder + "/*/t*", "--format", "json");
    assertThat(files(session))
        .isEqualTo(named("b/deep/one.xml", "b/two.musicxml", "a/three.musicxml"));
  }

  @Test
  void missingFilesAreReported() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Session session =
        Session.of("check", empty, folder + "/*.mxl", folder.resolve("no.mxl"), "--format", "json");
    assertThat(session.code()).isEqualTo(2);
    assertThat(session.err().lines()).hasSize(3);
    assertThat(Session.json(session.out()).path("summary").path("problems")).hasSize(3);
  }

  @Test
  void resultsAreInTheOrderOfTheFilesForAnyNumberOfThreads() throws IOException {
    List<String> names =
        IntStream.range(0, 40).mapToObj(i -> String.format("%02d.musicxml", i)).toList();
    for (int i = 0; i < names.size(); i++) {
      if (i % 13 == 7) {
        Files.copy(LANTERNS, folder.resolve(names.get(i)));
      } else {
        quiet(names.get(i));
      }
    }
    Session many = Session.of("check", folder, "--format", "json", "--jobs", "4");
    assertThat(files(many)).isEqualTo(named(names.toArray(String[]::new)));
    assertThat(many.code()).isEqualTo(1);
    assertThat(many.out())
        .isEqualTo(Session.of("check", folder, "--format", "json", "--jobs", "1").out());
  }

  @Test
  void teacherCanChangeALevel() throws IOException {
    Path own = folder.resolve("our-level.yaml");
    Session.of("check", "--print-level", "intermediate", "--output", own).succeeded();
    Session.of("check", "--print-level", "intermediate", "--output", own).refused(2);
    String text = Files.readString(own);
    String findings = "position beyond the level";
    Object[] command = {"check", LANTERNS, "--part", "Violin I", "--level", own};
    assertThat(Session.of(command).out()).contains(findings, own.toString());

    Files.writeString(
        own, text.replaceFirst("(?m)^highest-violin:\\s*\\S+", "highest-violin: any"));
    assertThat(Session.of(command).out()).doesNotContain(findings);

    Files.writeString(own, text.replaceFirst("(?m)^highest-violin:\\s*\\S+", "highest-violin: up"));
    assertThat(Session.of(command).refused(2).err()).contains("our-level.yaml, line ", "'up'");
    Session.of("check", LANTERNS, "--level", "virtuoso").refused(2);
  }

  @Test
  void everyFormatIsWrittenToANewFileOnly() throws IOException {
    for (String format : List.of("text", "json", "sarif", "html")) {
      Path file = folder.resolve("found." + (format.equals("text") ? "txt" : format));
      Session session = Session.of("check", LANTERNS, "--format", format, "--output", file);
      assertThat(session.complaints()).isEmpty();
      assertThat(session.out()).isEmpty();
      assertThat(session.code()).isEqualTo(1);
      assertThat(file).content().contains("Violoncello").endsWith("\n");
      String before = Files.readString(file);
      Session.of("check", LANTERNS, "--format", format, "--output", file).refused(2);
      assertThat(file).hasContent(before);
    }
    Session.of("check", LANTERNS, "--output", folder.resolve("none").resolve("f.txt")).refused(2);
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).hasSize(4);
    }
  }

  @Test
  void jsonFormatAndVersionAreStable() {
    JsonNode json = Session.json(Session.of("check", LANTERNS, "--format", "json").out());
    assertThat(json.path("format").asText()).isEqualTo("fingering-check");
    assertThat(json.path("version").asInt()).isEqualTo(1);
    assertThat(json.path("level").asText()).isEqualTo("common-practice");
    assertThat(json.path("summary").path("exitCode").asInt()).isEqualTo(1);
    JsonNode score = json.path("scores").path(0);
    assertThat(score.path("leftOut")).hasSize(1);
    int counted = 0;
    for (JsonNode part : Session.entries(score.path("parts"))) {
      counted += part.path("findings").size();
      assertThat(part.path("difficulty").path("grade").asInt()).isBetween(1, 10);
      assertThat(part.path("playedBy").asText()).isEqualTo("section");
    }
    JsonNode counts = score.path("counts");
    assertThat(
            counts.path("unplayable").asInt()
                + counts.path("risky").asInt()
                + counts.path("worth-knowing").asInt())
        .isEqualTo(counted)
        .isPositive();
  }
}
