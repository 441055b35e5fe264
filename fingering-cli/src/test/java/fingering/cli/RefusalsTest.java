package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class RefusalsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "comparee",
        "compare",
        "plan",
        "demo extra",
        "demo --loud",
        "compare DEMO --mesures 1-2",
        "compare DEMO DEMO",
        "compare DEMO --tempo",
        "compare DEMO --tempo quatre=96",
        "compare DEMO --tempo quarter=0",
        "compare DEMO --format pdf",
        "compare DEMO --instrument kazoo",
        "plan DEMO --allow ninetieth",
        "plan DEMO --choose fist",
        "plan DEMO --choose third --keep-printed",
        "plan DEMO --best 0",
        "plan DEMO --best 21",
        "plan DEMO --best few",
        "plan DEMO --best 3 --choose third",
        "plan DEMO --best 3 --write never.musicxml",
        "plan DEMO --best 3 --why 3.1",
        "plan DEMO --why 3",
        "plan DEMO --why third",
        "plan DEMO --preset loud",
        "chart",
        "chart kazoo",
        "chart violin --position ninetieth",
        "chart violin --key J-Dur",
        "chart violin --key G#-major",
        "chart violin --format json",
        "chart cello --at 3"
      })
  void mistypedCommandIsRefusedAndPointsToItsHelp(String typed) {
    Object[] words =
        Splitter.on(' ')
            .omitEmptyStrings()
            .splitToStream(typed)
            .map(word -> word.equals("DEMO") ? DEMO : word)
            .toArray();

    assertThat(Session.of(words).refused(2).err()).contains("--help");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "nosuch --help          | there is no command 'fingering nosuch'; choose one of open, demo",
        "--help nosuch          | there is no command 'fingering nosuch'; choose one of open, demo",
        "plna --help            | did you mean 'plan'?",
        "journal shwo --help    | there is no command 'fingering journal shwo'; did you mean 'show'?",
        "help plan --help       | 'fingering plan --help'",
        "part.musicxml --help   | put one before the file",
        "--loud --help          | no option --loud"
      })
  void helpForAnUnknownCommandIsRefused(String typed, String reason) {
    Object[] words = Splitter.on(' ').omitEmptyStrings().splitToList(typed).toArray();

    assertThat(Session.of(words).refused(2).err()).contains(reason);
  }

  @Test
  void missingFileIsReported() {
    assertUnreadable(folder.resolve("none.musicxml"), "none.musicxml");
  }

  @Test
  void folderIsNotAScore() {
    assertUnreadable(folder, "is a folder");
  }

  @Test
  void emptyFileIsNotAScore() throws IOException {
    assertUnreadable(Files.createFile(folder.resolve("empty.musicxml")), "is empty");
  }

  @Test
  void randomBytesAreNotAScore() throws IOException {
    byte[] noise = new byte[999];
    new java.util.Random(7).nextBytes(noise);
    assertUnreadable(Files.write(folder.resolve("noise.musicxml"), noise), "noise.musicxml");
    assertUnreadable(written("plain.musicxml", "ceci n'est pas une partition"), "MusicXML");
    assertUnreadable(written("broken.musicxml", "<score-partwise><part-list>"), "");
    assertUnreadable(written("page.xml", "<html><body/></html>"), "");
    assertUnreadable(written("cut.mxl", "PK\u0003\u0004cut short"), "");
  }

  private Path written(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static void assertUnreadable(Path score, String reason) {
    for (String command : new String[] {"compare", "plan"}) {
      String err = Session.of(command, score).refused(2).err();
      assertThat(err).contains(reason);
      assertThat(err.strip()).endsWith(".");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"90-99", "20-17", "Z", "B to Q"})
  void missingMeasuresAreRejected(String range) {
    assertThat(Session.of("compare", DEMO, "--measures", range).refused(2).err()).contains("Viola");
  }

  @Test
  void partWithoutThirdPositionHasNoSuchPlan() throws IOException {
    Path score = TinyScore.titled("Low").part("Viola", "C3", "D3").in(folder);

    assertThat(Session.of("plan", score, "--choose", "third").refused(2).err())
        .contains("3rd position", "choose first or free");
  }
}
