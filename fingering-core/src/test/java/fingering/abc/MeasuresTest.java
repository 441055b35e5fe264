package fingering.abc;

import static fingering.abc.Typed.numbers;
import static fingering.abc.Typed.passage;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Measure;
import fingering.music.Passage;
import fingering.musicxml.reading.PassageRequest;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bar lines, repeats and the numbers of measures. Bar lines: ABC standard 2.1, from memory. */
class MeasuresTest {
  private static final String WALTZ = "X:1\nM:3/4\nL:1/4\nK:C clef=treble\n";

  /** The example of the standard's section 'The tune body', from memory; a traditional tune. */
  private static final String SAMPLE =
      """
      X:1
      T:Paddy O'Rafferty
      C:Trad.
      M:6/8
      K:D
      dff cee|def gfe|dff cee|dfe dBA|dff cee|def gfe|faf gfe|1 dfe dBA:|2 dfe dcB|]
      ~A3 B3|gfe fdB|AFA B2c|dfe dcB|~A3 ~B3|efe efg|faf gfe|1 dfe dcB:|2 dfe dBA|]
      fAA eAA|def gfe|fAA eAA|dfe dBA|fAA eAA|def gfe|faf gfe|dfe dBA:|
      """;

  @Test
  void theStandardsSampleHasFullMeasuresAndThreeRepeats() {
    Passage passage = passage(SAMPLE);

    assertThat(passage.title()).isEqualTo("Paddy O'Rafferty");
    assertThat(passage.measures()).hasSize(9 + 9 + 8);
    assertThat(passage.measures())
        .allSatisfy(measure -> assertThat(measure.length()).isEqualTo(BigFraction.of(3)));
    assertThat(passage.measures()).extracting(Measure::fifths).containsOnly(2);
    assertThat(passage.measures().get(25).number()).isEqualTo("26");
    String score = Typed.written(SAMPLE).musicXml();
    assertThat(score.split("direction=\"backward\"", -1)).hasSize(3 + 1);
    assertThat(score.split("<ending number=\"2\" type=\"discontinue\"/>", -1)).hasSize(2 + 1);
    assertThat(passage.remarks())
        .anyMatch(remark -> remark.equals("left out: the decoration !roll!"));
  }

  // Common practice, no source: an incomplete first measure is numbered 0.
  @Test
  void aPickupIsMeasure0() {
    assertThat(numbers(WALTZ + "A|Bcd|efg|a2|]")).containsExactly("0", "1", "2", "3");
    assertThat(numbers(WALTZ + "Bcd|efg|]")).containsExactly("1", "2");
    assertThat(numbers(WALTZ + "A2|]")).containsExactly("1");
    assertThat(numbers("K:C\nA|Bcd|")).containsExactly("1", "2");
  }

  @Test
  void measuresAreRequestedByNumberAsInAScore() {
    String abc = WALTZ + "A|Bcd|efg|a2|]";
    assertThat(passage(abc, PassageRequest.WHOLE.withMeasures("0-1")).notes()).hasSize(4);
    assertThat(passage(abc, PassageRequest.WHOLE.withMeasures("2-")).notes()).hasSize(4);
  }

  @Test
  void partsOfATuneAreRehearsalMarks() {
    String abc = "P:AB\n" + WALTZ + "P:A\nBcd|efg|\nP:B\nabc|[P:C]def|";
    assertThat(passage(abc).measures())
        .extracting(Measure::rehearsal)
        .containsExactly("A", "", "B", "C");
    assertThat(passage(abc, PassageRequest.WHOLE.withMeasures("B to C")).notes()).hasSize(3);
  }

  @Test
  void aMeasureDividedByARepeatKeepsItsNumber() {
    String abc = WALTZ + "A|Bcd|ef:|\n|:g|abc|de|]";
    assertThat(numbers(abc)).containsExactly("0", "1", "2", "2", "3", "4");
    assertThat(passage(abc, PassageRequest.WHOLE.withMeasures("2")).notes()).hasSize(3);
    assertThat(Typed.written(abc).remarks()).isEmpty();
  }

  @Test
  void endingsAreSeparateMeasures() {
    assertThat(numbers(WALTZ + "|:Bcd|1 efg:|2 e2||abc|]")).containsExactly("1", "2", "3", "4");
    assertThat(numbers(WALTZ + "|:A|Bcd|[1 ef:|[2 e2|]")).containsExactly("0", "1", "2", "3");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"|", "||", "|]", "[|", ":|", "|:", "::", ":|:", ":||:", ".|", "[|]", "::|"})
  void everyBarLineOfTheStandardSeparatesMeasures(String bar) {
    assertThat(numbers(WALTZ + "Bcd" + bar + "efg")).containsExactly("1", "2");
  }

  @Test
  void successiveBarLinesAreCombined() {
    assertThat(numbers(WALTZ + "|:Bcd:|\n|:efg|\n||abc| |]")).containsExactly("1", "2", "3");
    assertThat(Typed.written(WALTZ + "Bcd:|\n|:efg:|").musicXml())
        .containsSubsequence("backward", "number=\"2\"", "forward", "backward");
  }

  @Test
  void aRepeatMayBePlayedMoreThanTwice() {
    assertThat(Typed.written(WALTZ + "|::Bcd::|").musicXml())
        .contains("<repeat direction=\"backward\" times=\"3\"/>");
  }

  @Test
  void anEndingMayHaveSeveralNumbers() {
    assertThat(Typed.written(WALTZ + "|:Bcd|[1,3 efg:|[2 abc:|[4-6 abc|]").musicXml())
        .containsSubsequence("number=\"1,3\" type=\"start\"", "number=\"2\"", "number=\"4,5,6\"");
  }

  @Test
  void aMeasureThatDoesNotFillItsMeterGivesARemark() {
    assertThat(Typed.written(WALTZ + "A|Bcd|ef|gab|c/defg|a2|]").remarks())
        .containsExactly(
            "2 measures are not filled as the meter requires and are read as typed: 2 (2/4 in 3/4, line 5), 4 (9/8 in 3/4, line 5)");
  }

  @ParameterizedTest
  @CsvSource({"6/8, 6, 8", "C, 4, 4", "C|, 2, 2", "(2+3)/8, 5, 8", "none, 4, 4"})
  void aMeterIsReadWithItsBeats(String meter, int beats, int beatType) {
    Measure measure = passage("M:" + meter + "\nK:C\nA").measures().get(0);
    assertThat(measure.beats()).isEqualTo(beats);
    assertThat(measure.beatType()).isEqualTo(beatType);
  }

  @Test
  void aChangeOfMeterAppliesToTheMeasuresAfterIt() {
    assertThat(Typed.written(WALTZ + "Bcd|[M:2/4]ef|ga|\nM:3/4\nabc|]").remarks()).isEmpty();
  }
}
