package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons of several students on the same music, side by side. */
final class LessonsSideBySideTest {
  @TempDir Path folder;

  @BeforeEach
  void copy() throws IOException {
    MillFolder.fill(folder);
  }

  private Path file(String name) {
    return folder.resolve(name);
  }

  @Test
  void studentsOfTheSameMusicAreShownSideBySide() throws IOException {
    String mill = "score: mill.musicxml\npart: Viola\nmeasures: 1-4\n";
    Path imke =
        Files.writeString(
            file("a.yaml"),
            mill + "student: imke\nplans: [{name: mine, stay: 3@1-2, fix: 4.1=II/3}]\n");
    Path jonte =
        Files.writeString(
            file("b.yaml"), mill + "student: jonte\nplans: [{name: low, choose: first}]\n");

    List<String> lines = Session.of("compare", "--lesson", imke, "--lesson", jonte).lines();

    assertThat(lines).allMatch(line -> line.length() <= 80);
    assertThat(lines)
        .contains(
            "They play 4 of 4 measures differently.",
            "      imke                                  jonte",
            "m. 1  3rd IV 2 3 4 III 1 2 1 IV 4 3         III 0 1 2 3 II 0 III 3 2 1");
    assertThat(lines.get(lines.size() - 2)).matches("imke, mine +1 +9 +8  quarter = \\d+");
    assertThat(lines.get(lines.size() - 1)).matches("jonte, low +0 +14 +0  quarter = \\d+");
    assertThat(Session.of("compare", "--lesson", jonte, "--lesson", jonte).succeeded().out())
        .contains("They play every note the same way.");
  }

  @Test
  void studentsOfOtherMusicAreNotComparedWithThem() throws IOException {
    Path one = Files.writeString(file("one.yaml"), "score: mill.musicxml\nmeasures: 1-4\n");
    Path two = Files.writeString(file("two.yaml"), "score: mill.musicxml\nmeasures: 2-4\n");
    Path demo = Files.writeString(file("demo.yaml"), "score: " + DEMO.toAbsolutePath() + "\n");

    assertThat(Session.of("compare", "--lesson", one, "--lesson", two).refused(2).err())
        .contains("differ in the measures");
    assertThat(Session.of("compare", "--lesson", one, "--lesson", demo).refused(2).err())
        .contains("differ in the score");
    Session.of("compare", "--lesson", one, "--lesson", one, "--format", "json").refused(2);
  }
}
