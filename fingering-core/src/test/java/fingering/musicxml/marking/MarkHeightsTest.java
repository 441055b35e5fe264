package fingering.musicxml.marking;

import static fingering.musicxml.marking.MarkerTexts.at;
import static fingering.musicxml.marking.MarkerTexts.measure;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words and numerals stand clear of the fingers: common practice, no source. */
class MarkHeightsTest {
  private static String score(String clef, String... notes) {
    return measure("<attributes><clef>" + clef + "</clef></attributes>" + String.join("", notes));
  }

  private static String note(String pitch, String more) {
    return "<note><pitch><step>%s</step><octave>%s</octave></pitch>%s</note>"
        .formatted(pitch.charAt(0), pitch.charAt(1), more);
  }

  private static String marked(String score, OptionalInt numeral, Optional<String> words) {
    NoteMarks marks =
        new NoteMarks(at(0, 0, 0), Optional.of("1"), OptionalInt.empty(), numeral, words);
    return ScoreMarker.mark(score, List.of(marks));
  }

  // The top line is F5 in the treble clef, G4 in the alto clef, A3 in the bass clef.
  @ParameterizedTest
  @CsvSource({
    "<sign>G</sign><line>2</line>, B4, '', 30",
    "<sign>G</sign><line>2</line>, F5, '', 35",
    "<sign>G</sign><line>2</line>, C6, '', 55",
    "<sign>G</sign><line>2</line>, A5, <stem>up</stem>, 75",
    "<sign>C</sign><line>3</line>, C5, '', 50",
    "<sign>C</sign><line>4</line>, C5, '', 60",
    "<sign>F</sign><line>4</line>, E4, '', 55",
    "<sign>G</sign><line>2</line><clef-octave-change>-1</clef-octave-change>, C5, '', 55",
  })
  void wordsAreAboveTheNoteItsStemAndTheFinger(String clef, String pitch, String more, int height) {
    assertThat(marked(score(clef, note(pitch, more)), OptionalInt.empty(), Optional.of("3rd pos.")))
        .contains("<words default-y=\"" + height + "\">3rd pos.</words>");
  }

  @Test
  void wordsAreAboveTheNextNotesToo() {
    String clef = "<sign>G</sign><line>2</line>";
    String low = note("B4", "");
    String high = note("C6", "");
    assertThat(marked(score(clef, low, high), OptionalInt.empty(), Optional.of("a")))
        .contains("default-y=\"55\"");
    assertThat(marked(score(clef, low, low, low, high), OptionalInt.empty(), Optional.of("a")))
        .contains("default-y=\"30\"");
    String other = note("C6", "<staff>2</staff>");
    assertThat(marked(score(clef, low, other), OptionalInt.empty(), Optional.of("a")))
        .contains("default-y=\"30\"");
  }

  @Test
  void theNumeralIsBelowTheWords() {
    String marked =
        marked(
            score("<sign>G</sign><line>2</line>", note("B4", "<voice>2</voice><staff>1</staff>")),
            OptionalInt.of(3),
            Optional.of("3rd pos."));
    assertThat(marked)
        .contains(
            "<direction placement=\"above\"><direction-type><words default-y=\"30\">III</words>"
                + "</direction-type><voice>2</voice><staff>1</staff></direction>"
                + "<direction placement=\"above\"><direction-type><words default-y=\"50\">3rd pos."
                + "</words></direction-type><voice>2</voice><staff>1</staff></direction><note>")
        .doesNotContain("<string>");
  }
}
