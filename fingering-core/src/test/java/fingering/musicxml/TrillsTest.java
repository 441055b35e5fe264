package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Note;
import fingering.music.Passage;
import fingering.tables.Pitch;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Upper notes of trills. Key signatures and accidentals: common practice, no source. Elements:
 * MusicXML 4.0, elements ornaments and accidental-mark, attribute group trill-sound.
 */
class TrillsTest {
  private static final String TRILL = "<ornaments><trill-mark/></ornaments>";

  private static String key(int fifths) {
    return START.replace("<fifths>0<", "<fifths>" + fifths + "<");
  }

  private static List<String> uppers(String xml) {
    return passage(xml).notes().stream()
        .map(note -> note.marks().trill().map(Pitch::toString).orElse("-"))
        .toList();
  }

  private static String upper(String pitch, String notation) {
    return upper(0, pitch, notation);
  }

  private static String upper(int fifths, String pitch, String notation) {
    return uppers(violin(measure("1", key(fifths), note(pitch, 16).notation(notation)))).get(0);
  }

  private static String ornament(String content) {
    return "<ornaments>" + content + "</ornaments>";
  }

  @ParameterizedTest
  @CsvSource({
    "0, A4, B4",
    "0, B4, C5",
    "0, E5, F5",
    "1, E5, F#5",
    "-1, A4, Bb4",
    "-3, D5, Eb5",
    "-3, G4, Ab4",
    "7, A#4, B#4",
    "-7, Eb5, Fb5",
    "4, C#5, D#5",
    "8, E#5, F##5"
  })
  void theUpperNoteFollowsTheKeySignature(int fifths, String note, String upper) {
    assertThat(upper(fifths, note, TRILL)).isEqualTo(upper);
  }

  @Test
  void aChangeOfKeyAppliesFromItsPosition() {
    assertThat(
            uppers(
                violin(
                    measure(
                        "1",
                        START,
                        note("A4", 8).notation(TRILL),
                        "<attributes><key><fifths>-2</fifths></key></attributes>",
                        note("A4", 8).notation(TRILL)))))
        .containsExactly("B4", "Bb4");
  }

  @Test
  void anAccidentalAppliesToItsMeasureAndOctaveOnly() {
    assertThat(
            uppers(
                violin(
                    measure(
                        "1",
                        START,
                        note("A4", 4).notation(TRILL),
                        note("Bb4", 4),
                        note("A4", 4).notation(TRILL),
                        note("A5", 4).notation(TRILL)),
                    measure("2", note("A4", 16).notation(TRILL)))))
        .containsExactly("B4", "-", "Bb4", "B5", "B4");
  }

  @Test
  void anAccidentalInALaterVoiceCountsOnlyIfItIsEarlierInTime() {
    assertThat(
            uppers(
                violin(
                    measure(
                        "1",
                        START,
                        rest(4),
                        note("A4", 4).notation(TRILL),
                        rest(8),
                        backup(16),
                        note("B4", 4).voice("2"),
                        rest(4).voice("2"),
                        note("Bb4", 8).voice("2")),
                    measure(
                        "2",
                        rest(8),
                        note("A4", 8).notation(TRILL),
                        backup(16),
                        note("Bb4", 4).voice("2"),
                        rest(12).voice("2")))))
        .containsExactly("-", "B4", "-", "-", "Bb4");
  }

  @Test
  void aTieCarriesAnAccidentalOverTheBarLineForItsOwnNoteOnly() {
    assertThat(
            uppers(
                violin(
                    measure("1", START, rest(12), note("Bb4", 4).tie("start")),
                    measure("2", note("Bb4", 8).tie("stop"), note("A4", 8).notation(TRILL)))))
        .containsExactly("-", "B4");
  }

  @Test
  void anAccidentalPrintedAtTheTrillOverridesKeyAndMeasure() {
    String flat = ornament("<trill-mark/><accidental-mark>flat</accidental-mark>");
    String sharp = TRILL + "<accidental-mark>sharp</accidental-mark>";
    String natural = ornament("<trill-mark/><accidental-mark>natural</accidental-mark>");
    assertThat(upper("A4", flat)).isEqualTo("Bb4");
    assertThat(upper("E5", sharp)).isEqualTo("F#5");
    assertThat(upper(-4, "G4", natural)).isEqualTo("A4");
  }

  @Test
  void anAccidentalBelowATurnBelongsToItsLowerNote() {
    String turn =
        "<turn/><accidental-mark placement=\"below\">sharp</accidental-mark>"
            + "<accidental-mark placement=\"above\">flat</accidental-mark>";
    assertThat(upper("A4", ornament(turn))).isEqualTo("Bb4");
  }

  @ParameterizedTest
  @CsvSource({"half, Bb4", "whole, B4", "unison, -"})
  void theStepInTheFileIsUsed(String step, String upper) {
    assertThat(upper("A4", ornament("<trill-mark trill-step=\"%s\"/>".formatted(step))))
        .isEqualTo(upper);
    assertThat(upper("A4", ornament("<turn trill-step=\"%s\"/>".formatted(step)))).isEqualTo(upper);
    assertThat(upper("A4", ornament("<inverted-mordent trill-step=\"%s\"/>".formatted(step))))
        .isEqualTo(upper);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shake",
        "turn",
        "delayed-turn",
        "inverted-turn",
        "delayed-inverted-turn",
        "vertical-turn",
        "inverted-vertical-turn",
        "haydn",
        "inverted-mordent",
        "wavy-line type=\"start\""
      })
  void everyOrnamentWithAnUpperNoteIsATrill(String element) {
    assertThat(upper("A4", ornament("<" + element + "/>"))).isEqualTo("B4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mordent", "schleifer", "tremolo"})
  void ornamentsWithoutAnUpperNoteAreNotTrills(String element) {
    assertThat(upper("A4", ornament("<" + element + "/>"))).isEqualTo("-");
  }

  @Test
  void anUpperNoteTooNearOrTooFarBecomesAWholeTone() {
    assertThat(upper("B#4", TRILL)).isEqualTo("C##5");
    assertThat(upper("Cb5", ornament("<trill-mark/><accidental-mark>sharp</accidental-mark>")))
        .isEqualTo("Db5");
    assertThat(upper("Eb5", ornament("<trill-mark/><accidental-mark>sharp</accidental-mark>")))
        .isEqualTo("F#5");
  }

  @Test
  void theUpperNoteIsTransposedLikeItsNote() {
    String transposing =
        key(1)
            .replace(
                "</attributes>",
                "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>");
    assertThat(uppers(violin(measure("1", transposing, note("E5", 16).notation(TRILL)))))
        .containsExactly("E5");
    assertThat(
            uppers(
                score(part("Contrabass", "", measure("1", START, note("A2", 16).notation(TRILL))))))
        .containsExactly("B1");
  }

  @Property(tries = 200)
  void theUpperNoteIsOneToThreeSemitonesHigher(
      @ForAll @IntRange(min = -12, max = 12) int fifths,
      @ForAll @IntRange(min = 0, max = 6) int step,
      @ForAll @IntRange(min = -2, max = 2) int alter) {
    String pitch =
        "CDEFGAB".charAt(step) + (alter < 0 ? "b".repeat(-alter) : "#".repeat(alter)) + 5;
    Passage passage = passage(violin(measure("1", key(fifths), note(pitch, 16).notation(TRILL))));
    Note note = passage.notes().get(0);
    assertThat(note.marks().trill().orElseThrow().midi() - note.midi()).isBetween(1, 3);
  }
}
