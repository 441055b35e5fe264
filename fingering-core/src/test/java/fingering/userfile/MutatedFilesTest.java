package fingering.userfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.TuningFile;
import fingering.lesson.LessonFile;
import fingering.playability.CheckLevel;
import fingering.player.Player;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Instruments;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A damaged file is read, or refused in one sentence. */
class MutatedFilesTest {
  /** Signs that mean something in YAML, and some that do not. */
  private static final ImmutableList<String> SIGNS =
      ImmutableList.of(
          ":",
          ": ",
          "-",
          "- ",
          "\n",
          "\n  ",
          "\t",
          "#",
          " #",
          "[",
          "]",
          "{",
          "}",
          ",",
          "'",
          "\"",
          "&a ",
          "*a",
          "!!str ",
          "!",
          "|",
          ">",
          "%",
          "@",
          "`",
          "?",
          "? ",
          "---\n",
          "...\n",
          "~",
          "\\",
          "\"\\U",
          "\"\\x",
          "=",
          "<<: ",
          "null",
          "0",
          "9999999999",
          "\u0000",
          "\u0085",
          "\u2028",
          "\uFEFF",
          "\ud83c",
          "½",
          "\r",
          "%YAML 9.9\n---\n",
          "%TAG ! x\n---\n");

  /** An example of a kind of file, and what reads such files. */
  private record Kind(String text, UnaryOperator<String> reading) {}

  private final ImmutableList<Kind> kinds;

  MutatedFilesTest() throws IOException {
    Instruments instruments = Instruments.standard();
    Path docs = Path.of("..", "docs");
    kinds =
        ImmutableList.of(
            new Kind(
                Files.readString(docs.resolve("examples").resolve("imke.yaml")),
                text -> Player.parse("my.yaml", text).toString()),
            new Kind(
                "# mine\nshift: 20\ncrossing: 0 # easy\nopen-string: 7\n",
                text -> Weights.parse("my.yaml", text, StandardRules.all()).toString()),
            new Kind(
                CheckLevel.text("beginner"), text -> CheckLevel.parse("my.yaml", text).toString()),
            new Kind(
                "instrument: bass\nname: own\nstrings: [G2, D2, A1, E1 down to C1]\n",
                text -> TuningFile.parse("my.yaml", text, instruments).toString()),
            new Kind(
                Files.readString(docs.resolve("examples").resolve("imke-mill.yaml")),
                text -> LessonFile.parse("my.yaml", text).toString()),
            new Kind(
                Files.readString(docs.resolve("demo").resolve("hearing.yaml")),
                text -> YamlNode.parse("my.yaml", text).toString()));
  }

  @Property(tries = 3000)
  void aMutatedFileIsReadOrRefusedInOneSentence(
      @ForAll @IntRange(max = 5) int kind,
      @ForAll @IntRange(min = 1, max = 6) int mutations,
      @ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(kinds.get(kind).text());
    for (int i = 0; i < mutations; i++) {
      mutate(text, random);
    }
    check(kinds.get(kind), text.toString());
  }

  @Property(tries = 1000)
  void aTextOfSignsIsReadOrRefusedInOneSentence(
      @ForAll @IntRange(max = 5) int kind, @ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(20); i >= 0; i--) {
      text.append(random.nextInt(3) == 0 ? "key" : SIGNS.get(random.nextInt(SIGNS.size())));
    }
    check(kinds.get(kind), text.toString());
  }

  private static void mutate(StringBuilder text, Random random) {
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(12));
    switch (random.nextInt(4)) {
      case 0 -> text.delete(from, to);
      case 1 -> text.insert(from, text.substring(from, to));
      case 2 -> text.setLength(random.nextInt(8) == 0 ? from : text.length());
      default -> text.insert(from, SIGNS.get(random.nextInt(SIGNS.size())));
    }
  }

  private static void check(Kind kind, String text) {
    try {
      assertThat(kind.reading().apply(text)).isNotEmpty();
    } catch (FingeringException e) {
      assertThat(e.getMessage())
          .as(text)
          .startsWith("my.yaml")
          .doesNotContain("null,", "Exception", "snakeyaml", "org.", "java.");
    }
  }
}
