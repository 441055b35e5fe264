package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Runs every command that README.md or a page of docs shows in a block, in the order of the page.
 * Other tests compare the output.
 */
final class EveryCommandTest {
  @TempDir Path folder;

  static List<Path> pages() throws IOException {
    return DocumentedCommand.pages().stream()
        .filter(page -> !DocumentedCommand.of(page).isEmpty())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyCommandOfThePageRuns(Path page) throws IOException {
    Workplace workplace = prepared();
    for (DocumentedCommand shown : DocumentedCommand.of(page)) {
      Session session = workplace.run(shown.command());
      String what = shown.command() + "\n" + session.err();
      if (shown.refused()) {
        assertThat(session.code()).as(what).isIn(1, 2);
        assertThat(shown.printed()).as(what).contains(session.err().strip());
      } else if (shown.command().startsWith("fingering check ")) {
        assertThat(session.code()).as(what).isIn(0, 1);
      } else {
        assertThat(session.code()).as(what).isZero();
      }
    }
  }

  @Test
  void thereAreCommandsToRun() throws IOException {
    assertThat(pages()).hasSizeGreaterThan(12);
    assertThat(pages().stream().flatMap(page -> DocumentedCommand.of(page).stream()))
        .hasSizeGreaterThan(80);
  }

  @Test
  void wrongCommandsFail() throws IOException {
    assertThat(prepared().run("fingering compare part.musicxml --nonsense").code()).isEqualTo(2);
    assertThat(prepared().run("fingering compare absent.musicxml").code()).isNotZero();
  }

  /** A workplace with scores under the names that pages use for a reader's own. */
  private Workplace prepared() throws IOException {
    Path here = Files.createTempDirectory(folder, "here");
    Workplace workplace = new Workplace(here);
    workplace.with("part.musicxml", "demo/demo.musicxml");
    for (String own : List.of("encore.musicxml", "suites/march.musicxml")) {
      workplace.with(own, "examples/lanterns.musicxml");
    }
    Files.createDirectories(workplace.file("more"));
    Stream.of(
            "fingering plan docs/demo/demo.musicxml --write quartet.mxl",
            "fingering plan docs/examples/song.musicxml --write suite.mxl",
            "fingering plan docs/examples/mill.musicxml --write more/mill.mxl",
            "fingering plan docs/examples/song.musicxml --write sonata.musicxml",
            "fingering plan docs/examples/ladder.musicxml --write etudes.musicxml")
        .forEach(command -> ran(workplace, command));
    return workplace;
  }

  private static void ran(Workplace workplace, String command) {
    try {
      assertThat(workplace.run(command).code()).isZero();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
