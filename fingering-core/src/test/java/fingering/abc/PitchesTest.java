package fingering.abc;

import static fingering.abc.Typed.passage;
import static fingering.abc.Typed.pitches;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.tables.Pitch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pitches and accidentals. Rules and examples: ABC standard 2.1, from memory. */
class PitchesTest {

  @Test
  void theStandardsScaleClimbsFourOctavesFromTheCBelowMiddleC() {
    List<String> pitches =
        Splitter.on(' ')
            .splitToList(pitches("K:C\nC,D,E,F,|G,A,B,C|DEFG|ABcd|efga|bc'd'e'|f'g'a'b'|]"));
    assertThat(pitches).hasSize(28).startsWith("C3", "D3").endsWith("A6", "B6");
    assertThat(pitches.stream().map(Pitch::parse).map(Pitch::letterNumber).toList())
        .isSorted()
        .doesNotHaveDuplicates();
    assertThat(pitches.get(7)).as("the plain capital C is middle C").isEqualTo("C4");
  }

  @Test
  void octaveSignsAddUp() {
    assertThat(pitches("K:C\nC,, c'' C,' c,")).isEqualTo("C2 C7 C4 C4");
  }

  @Test
  void accidentalsComeBeforeTheLetter() {
    assertThat(pitches("K:D\n^G _B =f ^^c __d|F")).isEqualTo("G#4 Bb4 F5 C##5 Dbb5 F#4");
  }

  @Test
  void anAccidentalAppliesUpToTheBarLine() {
    assertThat(pitches("K:C\n^F G F|F _B B|[Ac] =c ^c c|c"))
        .isEqualTo("F#4 G4 F#4 F4 Bb4 Bb4 A4 C5 C5 C#5 C#5 C5");
  }

  @Test
  void theKeySignatureAppliesAgainAfterTheBarLine() {
    assertThat(pitches("K:Eb\n=B B|B")).isEqualTo("B4 B4 Bb4");
  }

  // Directive propagate-accidentals; its default is 'pitch'.
  @Test
  void anAccidentalAppliesToAllOctavesWithARemark() {
    String abc = "M:C\nK:C treble\nL:1/4\nFGAB|^FGAf|f";
    assertThat(pitches(abc)).endsWith("F#4 G4 A4 F#5 F5");
    assertThat(Typed.written(abc).remarks())
        .anySatisfy(
            remark ->
                assertThat(remark)
                    .contains("F♯5 in measure 2", "'%%propagate-accidentals octave'"));
  }

  @ParameterizedTest
  @CsvSource({"pitch, F#4 F#5 F#4", "octave, F#4 F5 F#4", "not, F#4 F5 F4"})
  void aTuneMayLimitTheRangeOfAccidentals(String reach, String pitches) {
    for (String line : List.of("%%propagate-accidentals ", "I:propagate-accidentals ")) {
      String abc = line + reach + "\nK:C\n^FfF|";
      assertThat(pitches(abc)).as(line).isEqualTo(pitches);
    }
    assertThat(pitches("K:C\n[I:propagate-accidentals " + reach + "]^FfF|")).isEqualTo(pitches);
  }

  @Test
  void noRemarkIfTheOctaveMakesNoDifference() {
    String abc = "X:1\nM:C\nL:1/4\nK:D clef=treble\n^GFf^g|=cC=CC|";
    assertThat(pitches(abc)).isEqualTo("G#4 F#4 F#5 G#5 C5 C4 C4 C4");
    assertThat(Typed.written(abc).remarks()).hasSize(1).first().asString().contains("C4 in");
    assertThat(Typed.written(abc.replace("=cC=C", "=c=CC")).remarks()).isEmpty();
  }

  // Common practice, no source: a tie carries the accidental over the bar line to its note only.
  @Test
  void aTieCarriesAnAccidentalOverTheBarLine() {
    assertThat(pitches("K:C\n^f-|f f|")).isEqualTo("F#5 F5");
    assertThat(passage("K:C\n^f2-|f2 f|").notes().get(0).length()).hasToString("2");
  }

  // Common practice, no source: print shows an accidental wherever the reader could err.
  @Test
  void theScorePrintsNecessaryAccidentals() {
    String score = Typed.written("K:C\n^F f F|F").musicXml();
    assertThat(score.split("<accidental>sharp</accidental>", -1)).hasSize(3);
    assertThat(score).doesNotContain("<accidental>natural</accidental>");
    assertThat(Typed.written("%%propagate-accidentals not\nK:C\n^F F").musicXml())
        .contains("<accidental>natural</accidental>");
  }
}
