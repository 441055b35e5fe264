package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Harmonic;
import fingering.music.Marks;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.musicxml.ScoreText.N;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What harmonics sound. Elements: MusicXML 4.0, elements harmonic and notehead. Sounds: the
 * harmonic series; a touched fourth sounds two octaves higher, and so on (S. Adler, The Study of
 * Orchestration, from memory).
 */
class HarmonicsTest {

  static Passage passageOf(Object... notes) {
    Object[] content = new Object[notes.length + 1];
    content[0] = START;
    System.arraycopy(notes, 0, content, 1, notes.length);
    return passage(violin(measure("1", content)));
  }

  static Note only(Object... notes) {
    Passage passage = passageOf(notes);
    assertThat(passage.notes()).hasSize(1);
    return passage.notes().get(0);
  }

  private static String harmonic(String children) {
    return "<harmonic>" + children + "</harmonic>";
  }

  private static N named(String pitch, String children) {
    return note(pitch, 16).technical(harmonic(children));
  }

  /** Kind, stopped, touched, sound. */
  static List<String> described(Note note) {
    Harmonic harmonic = note.marks().harmonic().orElseThrow();
    return List.of(
        harmonic.kind().name(),
        harmonic.stopped().map(Object::toString).orElse("-"),
        harmonic.touched().map(Object::toString).orElse("-"),
        note.sounding().toString());
  }

  @Test
  void aNoteWithACircleSoundsAsWritten() {
    assertThat(described(only(named("E6", "")))).containsExactly("NATURAL", "-", "-", "E6");
    assertThat(described(only(named("A5", "<natural/>"))))
        .containsExactly("NATURAL", "-", "-", "A5");
  }

  // Both signs are a small circle (common practice, no source); an open string has no partial at
  // its own
  // pitch.
  @Test
  void aCircleOverAnOpenStringThatIsNotAHarmonicMeansTheOpenString() {
    Marks marks = only(named("D4", "")).marks();
    assertThat(marks.harmonic()).isEmpty();
    assertThat(marks.finger()).contains("0");
    assertThat(only(note("D4", 16).technical(harmonic("") + "<fingering>1</fingering>")).marks())
        .isEqualTo(Marks.NONE.withFinger(Optional.of("1")));
  }

  @Test
  void aCircleOverANoteThatNoOpenStringHasIsKept() {
    assertThat(only(named("C#6", "")).marks().harmonic()).contains(Harmonic.NATURAL);
  }

  @ParameterizedTest
  @CsvSource({
    "B4, E5, B6",
    "B4, F#5, F#6",
    "B4, D#5, D#7",
    "B4, D5, F#7",
    "Bb3, Eb4, Bb5",
    "F4, A4, A6",
    "Eb5, Gb5, Bb7"
  })
  void aDiamondOverAStoppedNoteIsAnArtificialHarmonic(
      String stopped, String touched, String sound) {
    Note note = only(note(stopped, 16), note(touched, 16).chord().diamond());
    assertThat(described(note)).containsExactly("ARTIFICIAL", stopped, touched, sound);
    assertThat(note.written()).hasToString(stopped);
    assertThat(note.address()).isEqualTo(new NoteAddress(0, 0, 0));
  }

  @Test
  void theAddressIsThatOfTheStoppedNoteIfTheDiamondComesFirst() {
    Note note = only(note("E5", 16).diamond(), note("B4", 16).chord());
    assertThat(note.address()).isEqualTo(new NoteAddress(0, 0, 1));
    assertThat(note.written()).hasToString("B4");
  }

  @Test
  void namedPitchesCountWithoutADiamond() {
    Note note =
        only(
            named("C5", "<artificial/><base-pitch/>"),
            named("F5", "<artificial/><touching-pitch/>").chord(),
            named("C7", "<artificial/><sounding-pitch/>").chord());
    assertThat(described(note)).containsExactly("ARTIFICIAL", "C5", "F5", "C7");
  }

  @Test
  void theSoundInParenthesesIsPartOfTheHarmonic() {
    Note note =
        only(
            note("B4", 16),
            note("E5", 16).chord().diamond(),
            note("B6", 16).chord().parenthesised());
    assertThat(described(note)).containsExactly("ARTIFICIAL", "B4", "E5", "B6");
  }

  @Test
  void theSoundInCueSizeIsPartOfTheHarmonic() {
    Note note =
        only(
            note("B4", 16),
            note("E5", 16).chord().diamond(),
            note("B6", 16).chord().print("<type size=\"cue\">whole</type>"));
    assertThat(note.sounding()).hasToString("B6");
  }

  @Test
  void aSmallNoteThatIsNotTheSoundIsANote() {
    Passage passage =
        passageOf(
            note("B4", 16),
            note("E5", 16).chord().diamond(),
            note("C6", 16).chord().parenthesised());
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("C6", "B6");
  }

  @Test
  void aDiamondOverAnOpenStringIsANaturalHarmonicOfIt() {
    assertThat(described(only(note("D4", 16), note("G4", 16).chord().diamond())))
        .containsExactly("NATURAL", "D4", "G4", "D6");
    assertThat(described(only(note("A4", 16), note("E5", 16).chord().diamond())))
        .containsExactly("NATURAL", "A4", "E5", "E6");
  }

  @Test
  void anOpenPitchPrintedForALowerStringIsStopped() {
    Note note =
        only(note("D4", 16).technical("<string>4</string>"), note("G4", 16).chord().diamond());
    assertThat(described(note)).containsExactly("ARTIFICIAL", "D4", "G4", "D6");
  }

  @Test
  void signsMayNameAnyNode() {
    Note open =
        only(
            named("D4", "<natural/><base-pitch/>"),
            named("B4", "<natural/><touching-pitch/>").chord());
    assertThat(described(open)).containsExactly("NATURAL", "D4", "B4", "F#6");
    Note stopped =
        only(
            named("C5", "<artificial/><base-pitch/>"),
            named("C6", "<artificial/><touching-pitch/>").chord());
    assertThat(described(stopped)).containsExactly("ARTIFICIAL", "C5", "C6", "C6");
  }

  @ParameterizedTest
  @CsvSource({
    // Places on the violin: the fourth of each string, its fifth, its thirds, its sixth.
    "C4, G3, G5",
    "G4, D4, D6",
    "D5, A4, A6",
    "A5, E5, E7",
    "A4, D4, A5",
    "E5, A4, E6",
    "B5, E5, B6",
    "F#4, D4, F#6",
    "B4, D4, F#6",
    "F4, D4, A6"
  })
  void aDiamondAloneShowsANodeOfAnOpenString(String place, String open, String sound) {
    Note note = only(note(place, 16).diamond());
    assertThat(described(note)).containsExactly("NATURAL", open, place, sound);
    assertThat(note.written()).hasToString(place);
  }

  @Test
  void aPrintedStringDecidesTheNodeOfADiamond() {
    assertThat(described(only(note("D5", 16).diamond().technical("<string>3</string>"))))
        .containsExactly("NATURAL", "D4", "D5", "D5");
    assertThat(described(only(note("D5", 16).diamond().technical("<string>4</string>"))))
        .containsExactly("NATURAL", "G3", "D5", "D5");
  }

  @Test
  void aSoundPrintedNextToADiamondDecidesItsString() {
    Note note = only(note("B4", 16).diamond(), note("B5", 16).chord().parenthesised());
    assertThat(described(note)).containsExactly("NATURAL", "G3", "B4", "B5");
  }

  @Test
  void aDiamondAtNoNodeSoundsAsWrittenWithARemark() {
    Passage passage = passageOf(note("G#4", 8).diamond(), note("G#4", 8).diamond());
    assertThat(passage.notes().stream().map(note -> note.marks().harmonic()))
        .containsOnly(Optional.of(Harmonic.NATURAL));
    assertThat(passage.notes()).allMatch(note -> note.sounding().toString().equals("G#4"));
    assertThat(passage.remarks())
        .contains(
            "2 diamond noteheads are not at a node of any string; they are read at their written pitches");
  }

  @Test
  void twoDiamondsAreADoubleStopOfNaturalHarmonics() {
    Passage passage = passageOf(note("G4", 16).diamond(), note("D5", 16).chord().diamond());
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("D6", "A6");
  }

  @Test
  void twoStoppedNotesWithTwoDiamondsAreTwoArtificialHarmonics() {
    Passage passage =
        passageOf(
            note("B4", 16),
            note("F#5", 16).chord(),
            note("E5", 16).chord().diamond(),
            note("B5", 16).chord().diamond());
    assertThat(passage.notes().stream().map(HarmonicsTest::described))
        .containsExactly(
            List.of("ARTIFICIAL", "B4", "E5", "B6"), List.of("ARTIFICIAL", "F#5", "B5", "F#7"));
  }

  @Test
  void aNaturalDiamondNextToAStoppedNoteIsADoubleStop() {
    Passage passage =
        passageOf(
            note("B4", 16), note("E5", 16).chord().diamond().technical(harmonic("<natural/>")));
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("B4", "E6");
    assertThat(passage.notes().get(0).marks()).isEqualTo(Marks.NONE);
  }

  @Test
  void aDiamondAtAnotherDistanceLeavesTheOtherNoteAlone() {
    Passage passage = passageOf(note("Bb3", 16), note("G4", 16).chord().diamond());
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("Bb3", "D6");
  }

  @Test
  void aPrintedSoundCountsIfTheDiamondIsNotAtANode() {
    Note note =
        only(
            named("G#4", "<natural/><touching-pitch/>"),
            named("F6", "<natural/><sounding-pitch/>").chord());
    assertThat(described(note)).containsExactly("NATURAL", "-", "G#4", "F6");
  }

  @Test
  void anArtificialHarmonicMayBeInCueSizeAsAWhole() {
    String cue = "<type size=\"cue\">whole</type>";
    Note note = only(note("B4", 16).print(cue), note("E5", 16).print(cue).chord().diamond());
    assertThat(described(note)).containsExactly("ARTIFICIAL", "B4", "E5", "B6");
  }

  @Test
  void aUnisonOfTwoVoicesIsTwoNotesIfOneIsAHarmonic() {
    Passage passage =
        passageOf(
            note("A3", 16),
            note("D4", 16).chord().diamond(),
            backup(16),
            note("A5", 16).voice("2"));
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("A5", "A5");
  }

  @Test
  void anArtificialHarmonicWithoutItsTouchedNoteIsTouchedAtTheFourth() {
    assertThat(described(only(named("B4", "<artificial/>"))))
        .containsExactly("ARTIFICIAL", "B4", "E5", "B6");
    assertThat(described(only(named("F#4", "<artificial/><base-pitch/>"))))
        .containsExactly("ARTIFICIAL", "F#4", "B4", "F#6");
    assertThat(described(only(named("E5", "<artificial/><touching-pitch/>"))))
        .containsExactly("ARTIFICIAL", "B4", "E5", "B6");
    assertThat(described(only(named("B6", "<artificial/><sounding-pitch/>"))))
        .containsExactly("ARTIFICIAL", "B4", "E5", "B6");
  }

  @Test
  void anArtificialHarmonicTooLowForItsFourthIsKeptAsWritten() {
    Note note = only(named("G4", "<artificial/><sounding-pitch/>"));
    assertThat(note.marks().harmonic()).contains(Harmonic.NATURAL);
    assertThat(note.sounding()).hasToString("G4");
  }

  @Test
  void theTouchedPlaceFollowsFromStoppedNoteAndSound() {
    Note note =
        only(
            named("B4", "<artificial/><base-pitch/>"),
            named("F#6", "<artificial/><sounding-pitch/>").chord());
    assertThat(described(note)).containsExactly("ARTIFICIAL", "B4", "F#5", "F#6");
  }

  @Test
  void anOpenStringAloneMeansItsOctave() {
    assertThat(described(only(named("A4", "<natural/><base-pitch/>"))))
        .containsExactly("NATURAL", "A4", "A5", "A5");
  }

  @Test
  void harmonicsOfTheDoubleBassUseSoundingPitches() {
    Passage passage =
        passage(
            score(
                part(
                    "Contrabass",
                    "",
                    measure(
                        "1",
                        START,
                        note("G4", 4).technical("<harmonic/>"),
                        note("C4", 4).diamond(),
                        note("A3", 4),
                        note("D4", 4).chord().diamond()))));
    assertThat(passage.notes().stream().map(HarmonicsTest::described))
        .containsExactly(
            List.of("NATURAL", "-", "-", "G3"),
            List.of("NATURAL", "G2", "C3", "G4"),
            List.of("ARTIFICIAL", "A2", "D3", "A4"));
    assertThat(passage.notes().get(2).written()).hasToString("A3");
  }

  @Test
  void graceNotesMayBeHarmonicsToo() {
    Passage passage =
        passageOf(note("B4", 0).grace(), note("E5", 0).chord().grace().diamond(), note("A4", 16));
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("B6", "A4");
  }
}
