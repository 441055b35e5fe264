package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.cli.command.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every command lists the files that it wrote, on the error stream only. */
class WrittenTest {
  private static final Path DOCS = Path.of("..", "docs");

  private static final Splitter WORDS = Splitter.on(' ').omitEmptyStrings();

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plan DEMO --write NEW/m.musicxml                       | m.musicxml",
        "plan DEMO --write NEW/m.mxl --output NEW/p.json        | p.json m.mxl",
        "plan DEMO --choices 28 --write NEW/m.xml               | m.xml",
        "plan DEMO --best 2 --output NEW/best.txt               | best.txt",
        "compare DEMO --output NEW/plans.html                   | plans.html",
        "demo                                                   |",
        "marks DEMO --output NEW/marks.txt                      | marks.txt",
        "scale D major --instrument viola --write NEW/d.xml     | d.xml",
        "scale D major --instrument viola --output NEW/d.svg    | d.svg",
        "audition HEARING --write NEW/h --output NEW/h.json     | h.json h",
        "chart viola --output NEW/viola.svg                     | viola.svg",
        "check MARCH --output NEW/found.txt                     | found.txt",
        "check --print-level intermediate --output NEW/my-level.yaml | my-level.yaml",
        "learn MARKED --output NEW/my-weights.yaml | my-weights.yaml",
        "journal add --clean half=40 --journal NEW/my.journal   | my.journal",
        "journal show --journal NEW/my.journal                  |",
        "practice DEMO --from half=30 --to half=48 --by 2026-12-12 --today 2026-11-21"
            + " --calendar NEW/days.ics --exercises NEW/spots --output NEW/day.html"
            + "                                                 | day.html spots days.ics",
        "practice DEMO --from half=30 --to half=48 --by 2026-12-12 --today 2026-11-21 |",
        "plan DEMO                                              |"
      })
  void writtenFilesAreListed(String typed, String files) throws IOException {
    List<Object> words = new ArrayList<>();
    for (String word : WORDS.split(typed)) {
      words.add(
          switch (word) {
            case "DEMO" -> DEMO;
            case "HEARING" -> DOCS.resolve("demo").resolve("hearing.yaml");
            case "MARCH" -> DOCS.resolve("examples").resolve("lanterns.musicxml");
            case "MARKED" -> marked();
            default -> word.replace("NEW", folder.toString());
          });
    }

    Session session = Session.of(words.toArray());

    assertThat(session.code()).isIn(ExitCode.DONE, ExitCode.FINDINGS);
    assertThat(session.complaints()).isEmpty();
    assertThat(session.out()).doesNotContain("Written: " + folder);
    List<Path> expected =
        files == null ? List.of() : WORDS.splitToStream(files).map(folder::resolve).toList();
    assertThat(session.written()).containsExactlyInAnyOrderElementsOf(expected);
    assertThat(expected).allMatch(Files::exists);
  }

  private Path marked() {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", DEMO, "--write", marked).succeeded();
    return marked;
  }

  @Test
  void jsonOnTheTerminalIsUnchanged() {
    Path marked = folder.resolve("marked.mxl");
    Session session = Session.of("plan", DEMO, "--format", "json", "--write", marked);
    assertThat(session.json().get("format").asText()).isEqualTo("fingering-plan");
    assertThat(session.written()).containsExactly(marked);
  }

  @Test
  void refusedFilesAreNotListed() throws IOException {
    Path there = Files.writeString(folder.resolve("there.musicxml"), "mine");
    assertThat(Session.of("plan", DEMO, "--write", there).refused(2).written()).isEmpty();
    assertThat(Session.of("plan", DEMO, "--output", there).refused(2).written()).isEmpty();
  }
}
