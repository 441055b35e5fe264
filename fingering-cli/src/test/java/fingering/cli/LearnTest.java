package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.scoring.CostRule;
import fingering.scoring.Habit;
import fingering.scoring.HabitNetwork;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instrument.HandKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LearnTest {
  @TempDir Path folder;
  private Path first;
  private Path third;

  @BeforeEach
  void fingerTheDemoTwice() {
    first = folder.resolve("first.musicxml");
    third = folder.resolve("third.musicxml");
    Session.of("plan", DEMO, "--choose", "first", "--write", first).succeeded();
    Session.of("plan", DEMO, "--choose", "third", "--write", third).succeeded();
  }

  @Test
  void learnedWeightsAreReadBackWithOneForEveryRule() throws IOException {
    Path file = folder.resolve("my-weights.yaml");

    Session session = Session.of("learn", first, third, "--output", file).succeeded();

    assertThat(session.out()).isEmpty();
    String text = Files.readString(file);
    assertThat(Weights.parse("my-weights.yaml", text).points().keySet())
        .filteredOn(key -> !key.contains(".") && !key.equals(Habit.ID))
        .containsExactlyInAnyOrderElementsOf(
            StandardRules.all().stream().map(rule -> rule.id()).collect(Collectors.toSet()));
    assertThat(text)
        .contains("first.musicxml", "third.musicxml", "One piece", "strength 30", "before")
        .doesNotContain(folder.toString(), "from the others");
    assertThat(Session.of("learn", first, third).succeeded().out()).isEqualTo(text);
    assertThat(Session.of("learn", first, "--start", file).succeeded().out())
        .contains("Start: my-weights.yaml");
  }

  @Test
  void eachPieceIsAlsoTestedWithTheWeightsOfTheOthers() throws IOException {
    Path other = folder.resolve("other.musicxml");
    Path scale = TinyScore.titled("Scale").part("Viola", SCALE).in(folder);
    Session.of("plan", scale, "--write", other).succeeded();

    assertThat(Session.of("learn", first, other).succeeded().out())
        .contains("2 pieces", "learned from the others");
  }

  private static final String[] SCALE = {
    "C4", "D4", "E4", "F4", "G4", "A4", "B4", "C5", "D5", "C5", "B4"
  };

  @Test
  void aLearnedHabitIsWrittenAndTakenAsWeights() throws IOException {
    Path file = folder.resolve("habit.yaml");
    Path other = TinyScore.titled("Scale").part("Viola", SCALE).in(folder);
    Path scale = folder.resolve("scale.musicxml");
    Session.of("plan", other, "--write", scale).succeeded();

    Session.of("learn", scale, "--habit", "--output", file).succeeded();

    Weights learned = Weights.parse("habit.yaml", Files.readString(file), StandardRules.all());
    assertThat(learned.habit().networks()).containsKey(HandKind.VIOLIN);
    assertThat(learned.habit().networks().get(HandKind.VIOLIN).length())
        .isEqualTo(HabitNetwork.SIZE);
    assertThat(learned.points()).containsKey("habit");
    assertThat(Session.of("plan", DEMO, "--weights", file).succeeded().complaints()).isEmpty();
    assertThat(Session.of("learn", scale, "--habit").succeeded().out())
        .isEqualTo(Files.readString(file));
    assertThat(Session.of("learn", scale, "--start", file).succeeded().out())
        .contains("Start: habit.yaml");
  }

  @Test
  void partsForTwoHandsAreLearnedOneByOne() throws IOException {
    Path viola = TinyScore.titled("Scale").part("Viola", SCALE).in(folder);
    Path cello = folder.resolve("cello.abc");
    Files.writeString(
        cello, "X:1\nT:Low\nM:4/4\nL:1/4\nK:C clef=bass\nC,D,E,F,|G,A,B,C|DCB,A,|G,F,E,D,|\n");
    Path fingeredViola = folder.resolve("viola.musicxml");
    Path fingeredCello = folder.resolve("cello.musicxml");
    Session.of("plan", viola, "--write", fingeredViola).succeeded();
    Session.of("plan", cello, "--instrument", "cello", "--write", fingeredCello).succeeded();

    String text = Session.of("learn", fingeredViola, fingeredCello).succeeded().out();

    Weights learned = Weights.parse("w", text, StandardRules.all());
    assertThat(learned.points()).containsKeys("shift", "violin.shift", "cello.shift");
    for (CostRule rule : StandardRules.all()) {
      assertThat(learned.of(rule, HandKind.BASS))
          .isEqualTo(Weights.commonPractice().of(rule, HandKind.BASS));
    }
  }

  @Test
  void scoreWithoutFingersIsRefused() {
    assertThat(Session.of("learn", DEMO).refused(2).err())
        .contains("demo.musicxml has ", "printed finger");
  }

  @Test
  void rulesMissingFromTheStartBeginAtCommonPractice() throws IOException {
    // Plain points would replace those of a hand.
    Map<String, Long> points = Weights.commonPractice().points();
    String rule =
        points.keySet().stream()
            .filter(id -> points.keySet().stream().noneMatch(key -> key.endsWith("." + id)))
            .filter(id -> !id.contains("."))
            .findFirst()
            .orElseThrow();
    Path start =
        Files.writeString(
            folder.resolve("short.yaml"), "%s: %d%n".formatted(rule, points.get(rule)));

    String learned = Session.of("learn", first, "--start", start).succeeded().out();
    assertThat(points(learned)).isEqualTo(points(Session.of("learn", first).out()));
  }

  private static String points(String learned) {
    return learned.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
  }

  @Test
  void missingStartOrUnknownRuleIsRefused() throws IOException {
    Path start = Files.writeString(folder.resolve("odd.yaml"), "shft: 20\n");

    assertThat(Session.of("learn", first, "--start", start).refused(2).err())
        .contains("odd.yaml, line 1: there is no key 'shft'; did you mean 'shift'");
    Session.of("learn", first, "--start", folder.resolve("none.yaml")).refused(2);
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.yaml"), "# mine");

    Session.of("learn", first, "--output", file).refused(2);

    assertThat(file).hasContent("# mine");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "NaN", "strong", "1e9"})
  void strengthOutOfRangeIsMistyped(String strength) {
    Session.of("learn", first, "--strength", strength).refused(2);
  }

  @Test
  void learningFromNothingIsMistyped() {
    Session.of("learn").refused(2);
  }
}
