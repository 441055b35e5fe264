package fingering.playability.check;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Scored;
import fingering.playability.Severity;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class CheckerPropertyTest {
  private static final List<String> NAMES =
      List.of("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B");

  private static String name(int midi) {
    return NAMES.get(midi % 12) + (midi / 12 - 1);
  }

  @Provide
  Arbitrary<String> music() {
    Arbitrary<String> note = Arbitraries.integers().between(50, 100).map(CheckerPropertyTest::name);
    Arbitrary<String> chord =
        note.list().ofMinSize(1).ofMaxSize(4).uniqueElements().map(all -> String.join("+", all));
    Arbitrary<String> length = Arbitraries.of("0.25", "0.5", "1", "2");
    return net.jqwik.api.Combinators.combine(
            Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(4, note), net.jqwik.api.Tuple.of(1, chord)),
            length)
        .as((notes, quarters) -> notes + "/" + quarters)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(events -> String.join(" ", events));
  }

  private static List<String> unplayable(Scored music, String level) {
    return music.check(level).findings().stream()
        .filter(finding -> finding.severity() == Severity.UNPLAYABLE)
        .map(finding -> finding.kind() + " " + finding.where() + " " + finding.reason())
        .collect(Collectors.toList());
  }

  @Property(tries = 60)
  void lowerLevelsKeepAllUnplayableFindings(
      @ForAll("music") String music, @ForAll @IntRange(min = 40, max = 200) int tempo) {
    Scored score = Scored.of("Violin", music).tempo(tempo);
    List<String> before = List.of();
    for (String level : CheckLevel.presets()) {
      List<String> found = unplayable(score, level);
      assertThat(found).containsAll(before);
      before = found;
    }
  }

  @Property(tries = 60)
  void noteBelowTheLowestStringIsAlwaysFound(
      @ForAll("music") String music, @ForAll @IntRange(min = 24, max = 54) int low) {
    assertThat(
            Scored.of("Violin", music + " " + name(low) + "/1")
                .findings("advanced", FindingKind.OUT_OF_RANGE))
        .isNotEmpty();
  }

  @Property(tries = 40)
  void chordsOfASectionAreNeverUnplayable(@ForAll("music") String music) {
    assertThat(Scored.of("Violins", music).findings("advanced", FindingKind.CHORD_NO_HAND))
        .noneMatch(finding -> finding.severity() == Severity.UNPLAYABLE);
  }
}
