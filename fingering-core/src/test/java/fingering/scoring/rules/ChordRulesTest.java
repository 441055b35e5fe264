package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Music;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shapes of double stops as teachers give them: common practice, no source. */
class ChordRulesTest {
  /**
   * What a rule charges for the last of some events, each with its fingers: {@code 1@4 4@3}, or
   * with the position: {@code 1@4 4@3 in 1st}.
   */
  private static long charged(String rule, String instrument, String events, String... fingers) {
    RuleCase path = RuleCase.on(instrument, events);
    GripFinder finder =
        new GripFinder(Fingerboard.of(Music.on(instrument).notes(events).instrument()));
    for (int m = 0; m < fingers.length; m++) {
      int moment = m;
      List<Grip> grips = finder.grips(path.moment(m));
      path.by(
          grips.stream()
              .filter(grip -> written(grip).startsWith(fingers[moment]))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no grip " + fingers[moment])));
    }
    return path.charged(rule);
  }

  private static String written(Grip grip) {
    return grip.placements().stream()
        .map(placement -> placement.finger().symbol() + "@" + placement.string())
        .collect(Collectors.joining(" ", "", " in " + grip.frame().position().display()));
  }

  @ParameterizedTest
  @CsvSource({
    "viola, C4+Eb4, 3@3 1@2, a minor third",
    "viola, F3+A3, 3@4 1@3, a major third",
    "violin, D5+F#5, 3@2 1@1, a major third",
    "violin, B4+D5, 4@3 2@2, a minor third",
    "violin, E4+C5, 1@3 2@2, a minor sixth",
    "violin, F4+D5, 2@3 3@2, a major sixth",
    "violin, B4+B5, 1@2 4@1, an octave",
    "violin, C4+F4, 3@4 2@3, a fourth",
    "violin, C4+G4, 3@4 3@3, a fifth",
    "violin, E4+Bb4, 2@3 1@2, a diminished fifth",
    "violin, C5+D5, 4@3 1@2, a second",
    "violin, B4+B4, 1@2 4@3, a unison",
    "violin, C4+E5, 1@4 4@3, a tenth",
    "violin, A3+G4, 1@4 3@3, a seventh",
    "cello, D4+D5, T@2 3@1, an octave with the thumb"
  })
  void anIntervalInItsOwnShapeIsFree(
      String instrument, String notes, String fingers, String interval) {
    assertThat(charged("chord-fingers", instrument, notes + "/1", fingers)).as(interval).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "violin, C4+Eb4, 4@4 1@3, 1",
    "violin, D5+D6, 1@2 3@1, 1",
    "violin, D5+D6, 2@2 4@1, 1",
    "violin, F4+D5, 1@3 3@2, 1",
    "cello, E4+E5, 1@2 3@1, 1",
    "violin, B3+E4+C#5, 2@4 1@3 3@2, 1"
  })
  void fingersOutOfShapeAreCharged(String instrument, String notes, String fingers, long too) {
    assertThat(charged("chord-fingers", instrument, notes + "/1", fingers)).isEqualTo(too);
  }

  @Test
  void theNeckOfTheCelloLeavesNoChoice() {
    assertThat(charged("chord-fingers", "cello", "C3+F3/1", "4@3 2@2")).isZero();
    assertThat(charged("chord-fingers", "cello", "F3+A3/1", "2@2 0@1")).isZero();
  }

  @Test
  void voicesThatCrossOverAnOpenStringAreCharged() {
    assertThat(charged("chord-fingers", "violin", "E5+G5/1", "0@1 4@2")).isEqualTo(2);
    assertThat(charged("chord-fingers", "violin", "E5+G5/1", "4@2 2@1")).isZero();
    assertThat(charged("chord-fingers", "violin", "E5+F#5/1", "0@1 4@2")).isZero();
  }

  @Test
  void octavesThatChangeTheirShapeAreCharged() {
    String octaves = "C5+C6/1 D5+D6/1";
    assertThat(charged("chord-shape-change", "violin", octaves, "1@2 4@1", "1@2 3@1")).isOne();
    assertThat(charged("chord-shape-change", "violin", octaves, "1@2 4@1", "2@2 4@1")).isOne();
    assertThat(charged("chord-shape-change", "violin", octaves, "1@2 4@1", "1@2 4@1")).isZero();
    String rest = "C5+C6/1 r/1 D5+D6/1";
    assertThat(charged("chord-shape-change", "violin", rest, "1@2 4@1", "1@2 3@1")).isZero();
  }

  @Test
  void thirdsChangeBetween13And24() {
    String thirds = "D5+F#5/1 E5+G5/1";
    assertThat(charged("chord-shape-change", "violin", thirds, "3@2 1@1", "4@2 2@1")).isZero();
  }

  @Test
  void anotherIntervalOrAHeldNoteMayHaveAnotherShape() {
    String sixthToOctave = "C5+A5/1 B4+B5/1";
    assertThat(charged("chord-shape-change", "violin", sixthToOctave, "2@2 3@1", "1@2 4@1"))
        .isZero();
    String held = "C5*2+A5/1 G5/1";
    assertThat(charged("chord-shape-change", "violin", held, "2@2 3@1", "2@2 2@1")).isZero();
  }

  @Test
  void aShapeThatMovesNeitherCreepsNorSlidesNorLacksAGuide() {
    String tone = "B4+B5/1 C#5+C#6/1";
    for (String rule : List.of("shift-creeping", "shift-changed-finger", "finger-slide")) {
      assertThat(charged(rule, "violin", tone, "1@2 4@1", "1@2 4@1")).as(rule).isZero();
    }
    String semitone = "Bb4+Bb5/1 B4+B5/1";
    assertThat(charged("finger-slide", "violin", semitone, "1@2 4@1 in 1st", "1@2 4@1 in 1st"))
        .isZero();
    String oneMoves = "B4+B5/1 B4+Bb5/1";
    assertThat(charged("finger-slide", "violin", oneMoves, "1@2 4@1 in 1st", "1@2 4@1 in 1st"))
        .isEqualTo(2);
    String single = "B5/1 Bb5/1";
    assertThat(charged("finger-slide", "violin", single, "4@1 in 1st", "4@1 in 1st")).isOne();
  }

  @Test
  void aLeapUpTheStringOfAnOpenNoteIsCharged() {
    assertThat(charged("broken-chord", "cello", "D3/1 B3/1", "0@2", "3@2")).isOne();
    assertThat(charged("broken-chord", "cello", "B3/1 D3/1", "3@2", "0@2")).isOne();
    assertThat(charged("broken-chord", "cello", "D3/1 B3/1", "0@2", "1@1")).isZero();
    assertThat(charged("broken-chord", "cello", "A3/1 B4/1", "0@1", "1@1")).isZero();
    assertThat(charged("broken-chord", "cello", "D3/1 A3/1", "0@2", "1@2")).isZero();
  }

  @Test
  void everyFingerHeldIsCounted() {
    assertThat(charged("chord-shape", "violin", "E4+C5/1", "1@3 2@2")).isEqualTo(2);
    assertThat(charged("chord-shape", "violin", "D4+B4/1", "0@3 1@2")).isEqualTo(1);
  }
}
