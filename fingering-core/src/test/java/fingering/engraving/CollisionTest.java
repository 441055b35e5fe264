package fingering.engraving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nothing that a player reads covers anything else: fingers, words, dynamics and signs are clear of
 * notes, beams and slurs. Measured from the boxes of everything that is drawn.
 */
class CollisionTest {
  private static final double WIDE = 120;
  private static final double NARROW = 48;

  /** Everything that stands near notes, in one tune. */
  private static final String STUDY =
      """
      X:1
      M:4/4
      L:1/8
      Q:"Allegro" 1/4=120
      K:Eb clef=alto
      !mf!(C,D,E,F, G,A,B,C)|(C>D) .E.F !>!G2 (3(GFE)|"^dolce"[EG]2 ([DF]2 [CE]4)|(c'b a)g {ga}f4|
      !<(!(A,/B,/C/D/ E/F/G/A/ B/c/d/e/ f/g/a/b/)!<)!|!f!c'4- c'2 (_b=a)|!>(!(^f2 g2) (=f2 e2)!>)!|!p!z8|
      "^pizz."C,G, Ec !accent!^F,2 z2|"^arco"!upbow!(e2 !downbow!d2) !trill!c4|[1!fermata!G4 z4:|[2 (e/d/c/B/) A4 z2|]
      """;

  private static final String VOICES =
      """
      X:1
      M:3/4
      L:1/8
      K:C
      (c2 d2 e2) & (A2 B2 c2)|f2 e2 d2 & d2 e2 f2|c6 & C2 z2 (E2|
      """;

  @ParameterizedTest
  @ValueSource(doubles = {NARROW, 80, WIDE})
  void signsOfEveryKindAreClearOfEachOther(double width) {
    assertClear(Engraved.fingered(Engraved.tune(STUDY)), width);
  }

  @Test
  void twoVoicesAreClearOfEachOther() {
    assertClear(Engraved.fingered(Engraved.tune(VOICES)), WIDE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "demo/demo",
        "examples/mill",
        "examples/sluice",
        "examples/song",
        "examples/ladder"
      })
  void theDemonstrationPartsAreClear(String name) {
    Engraver engraver = Engraved.fingered(Engraved.file(Path.of("../docs/" + name + ".musicxml")));
    assertClear(engraver, WIDE);
    assertClear(engraver, NARROW);
  }

  @ParameterizedTest
  @MethodSource("fingering.engraving.Passages#names")
  void thePassagesAreClear(String name) {
    Engraver engraver = Engraved.fingered(Passages.engraver(name));
    assertClear(engraver, WIDE);
    assertClear(engraver, NARROW);
  }

  /** Forty measures of every string part of a folder of quartets, named by -Dquartets. */
  @Test
  void quartetsAreClear() throws IOException {
    String folder = System.getProperty("quartets", "");
    assumeTrue(
        !folder.isEmpty(), "skipped: give a folder of quartets in MusicXML with -Dquartets=FOLDER");
    List<String> found = new ArrayList<>();
    int parts = 0;
    try (Stream<Path> files = Files.list(Path.of(folder))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".mxl")).sorted().toList()) {
        Score score = ScoreReader.read(ScoreFile.read(file));
        for (PartInfo part : score.parts()) {
          PassageRequest whole = PassageRequest.WHOLE.withPart(Integer.toString(part.number()));
          Passage passage = score.passage(whole);
          int last = Math.min(40, passage.measures().size()) - 1;
          PassageRequest first =
              whole.withMeasures(
                  passage.measures().get(0).number() + "-" + passage.measures().get(last).number());
          for (EngravedSystem system :
              Engraved.fingered(Engraved.engraver(score, first)).draw(WIDE)) {
            Collisions.of(system)
                .forEach(text -> found.add(file.getFileName() + " " + part.name() + ": " + text));
          }
          parts++;
        }
      }
    }
    assertThat(parts).isPositive();
    assertThat(found).isEmpty();
  }

  private static void assertClear(Engraver engraver, double width) {
    for (EngravedSystem system : engraver.draw(width)) {
      assertThat(Collisions.of(system)).isEmpty();
    }
  }
}
