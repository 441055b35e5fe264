package fingering.musicxml.reading;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.element.Transposition;
import fingering.tables.Instruments;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts of the format: MusicXML 4.0, elements transpose and clef-octave-change. */
class PitchReadingTest {

  private static String attributes(String clefOctave, String transpose) {
    return "<attributes><divisions>4</divisions><clef><sign>F</sign><line>4</line>"
        + clefOctave
        + "</clef>"
        + transpose
        + "</attributes>";
  }

  private static String transpose(int diatonic, int chromatic, int octaves) {
    return "<transpose><diatonic>%d</diatonic><chromatic>%d</chromatic><octave-change>%d</octave-change></transpose>"
        .formatted(diatonic, chromatic, octaves);
  }

  private static Passage bass(String attributes, String pitch) {
    return passage(score(part("Contrabass", "", measure("1", attributes, note(pitch, 16)))));
  }

  private static Note only(Passage passage) {
    assertThat(passage.notes()).hasSize(1);
    return passage.notes().get(0);
  }

  @Test
  void aTransposingDoubleBassFollowsItsTransposeElement() {
    Passage passage = bass(attributes("", transpose(0, 0, -1)), "G3");
    assertThat(only(passage).sounding()).hasToString("G2");
    assertThat(only(passage).written()).hasToString("G3");
    assertThat(passage.remarks()).noneMatch(remark -> remark.contains("octave"));
  }

  @Test
  void aDoubleBassWithoutTransposeSoundsAnOctaveLower() {
    Passage passage = bass(attributes("", ""), "G3");
    assertThat(only(passage).sounding()).hasToString("G2");
    assertThat(passage.remarks()).anyMatch(remark -> remark.contains("an octave lower"));
  }

  @Test
  void aBassClefWithAnEightBelowMeansThatTheFileHasSoundingNotes() {
    Passage passage = bass(attributes("<clef-octave-change>-1</clef-octave-change>", ""), "G2");
    assertThat(only(passage).sounding()).hasToString("G2");
    assertThat(passage.remarks()).anyMatch(remark -> remark.contains("clef has an 8 below"));
  }

  @Test
  void aDoubleBassPartThatGoesBelowTheWrittenEHasSoundingNotes() {
    Passage passage = bass(attributes("", ""), "F1");
    assertThat(only(passage).sounding()).hasToString("F1");
    assertThat(passage.remarks())
        .anyMatch(
            remark ->
                remark.contains("F1 in measure 1 would be below the lowest string an octave"));
    assertThat(only(bass(attributes("", ""), "E2")).sounding()).hasToString("E1");
  }

  // common practice, no source: written C2 and B1 are the lowest notes of these basses
  @ParameterizedTest
  @CsvSource({"c-extension, C2, C1", "five-string-low-b, B1, B0", "solo, F#2, F#1"})
  void aRetunedBassIsReadAnOctaveLowerDownToItsLowestNote(
      String tuning, String written, String sounding) {
    Passage passage =
        read(score(part("Contrabass", "", measure("1", attributes("", ""), note(written, 16)))))
            .passage(
                PassageRequest.WHOLE,
                bass -> bass.tuned(Instruments.standard().tuning(bass, tuning)));
    assertThat(only(passage).sounding()).hasToString(sounding);
    assertThat(passage.remarks()).anyMatch(remark -> remark.contains("an octave lower"));
  }

  @Test
  void aBassClefWithAnEightBelowShowsADoubleBass() {
    Passage passage =
        passage(
            score(
                part(
                    "Solo",
                    "",
                    measure(
                        "1",
                        attributes("<clef-octave-change>-1</clef-octave-change>", ""),
                        note("G2", 16)))));
    assertThat(passage.instrument().id()).isEqualTo("bass");
  }

  @Test
  void otherTranspositionsAreSpelledByTheirLetters() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    "<attributes>" + transpose(-1, -2, 0) + "</attributes>",
                    note("E5", 4),
                    note("F5", 4),
                    note("C5", 8))));
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("D5", "Eb5", "Bb4");
  }

  @Test
  void aTranspositionWithoutLettersIsSpelledAsUsual() {
    assertThat(Transposition.ofSemitones(-14).apply(fingering.tables.Pitch.parse("F#4")))
        .hasToString("E3");
    assertThat(Transposition.ofSemitones(3).apply(fingering.tables.Pitch.parse("A4")))
        .hasToString("C5");
  }

  @Test
  void microtonesAreRoundedToSemitonesWithARemark() {
    String quarterSharp = note("A4", 16).toString().replace("<alter>0<", "<alter>0.5<");
    Passage passage = passage(violin(measure("1", START, quarterSharp)));
    assertThat(only(passage).sounding()).hasToString("A#4");
    assertThat(passage.remarks()).contains("1 microtone is rounded to the nearest semitone");
  }

  @Test
  void aPitchOutOfRangeIsLeftOutWithItsPlace() {
    assertThat(passage(violin(measure("7", START, note("A4", 4), note("C99", 12)))).remarks())
        .contains("a note has no readable pitch and is left out: measure 7, beat 2");
  }
}
