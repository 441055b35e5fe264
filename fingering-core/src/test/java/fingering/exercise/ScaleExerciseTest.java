package fingering.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.tables.Instruments;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ScaleExerciseTest {

  private static ScaleExercise on(String instrument, ScaleRequest request, String from) {
    return new ScaleExercise(request, Instruments.standard().named(instrument), Pitch.parse(from));
  }

  private static ScaleRequest scale(String name, int octaves) {
    return ScaleRequest.of(Scale.parse(name), octaves);
  }

  private static String written(Passage passage) {
    return passage.moments().stream()
        .map(
            moment ->
                moment.starting().stream()
                    .map(note -> note.written().toString())
                    .collect(Collectors.joining("+")))
        .collect(Collectors.joining(" "));
  }

  // The score is written as MusicXML and read back as the passage.
  @ParameterizedTest
  @CsvSource({
    "violin, G melodic minor, G3," + " G3 A3 Bb3 C4 D4 E4 F#4 G4 F4 Eb4 D4 C4 Bb3 A3 G3",
    "viola, G# harmonic minor, G#3," + " G#3 A#3 B3 C#4 D#4 E4 F##4 G#4 F##4 E4 D#4 C#4 B3 A#3 G#3",
    "cello, dominant seventh on C, C2, C2 E2 G2 Bb2 C3 Bb2 G2 E2 C2",
    "bass, F major arpeggio, F2, F2 A2 C3 F3 C3 A2 F2"
  })
  void scoreIsReadBackAsTheNotesUpAndDown(
      String instrument, String name, String from, String notes) {
    Passage passage = on(instrument, scale(name, 1), from).passage();

    assertThat(written(passage)).isEqualTo(notes);
    assertThat(passage.instrument().id()).isEqualTo(instrument);
    assertThat(passage.title()).isEqualTo(Scale.parse(name).display() + ", 1 octave");
    assertThat(passage.remarks()).isEmpty();
  }

  // A double bass sounds an octave lower than written: S. Adler, The Study of Orchestration, from
  // memory. F2 as written is 41 (MIDI).
  @Test
  void doubleBassSoundsAnOctaveLower() {
    Passage passage = on("bass", scale("F major", 1), "F2").passage();

    assertThat(passage.notes().get(0).midi()).isEqualTo(41 - 12);
  }

  // common practice, no source: the tonic is on a beat, and in 6/8 on one of the two
  @ParameterizedTest
  @EnumSource(ScaleKind.class)
  void everyTonicIsOnABeatAndTheLastFillsItsMeasure(ScaleKind kind) {
    for (int octaves = 1; octaves <= 3; octaves++) {
      Scale scale = new Scale(kind, Letter.A, 0);
      Passage passage = on("violin", ScaleRequest.of(scale, octaves), "A3").passage();
      BigFraction beat =
          passage.measures().get(0).beatType() == 8 ? BigFraction.of(3, 2) : BigFraction.ONE;
      for (Note note : passage.notes()) {
        if (note.written().letter() == Letter.A && note.written().alter() == 0) {
          assertThat(note.place().onset().divide(beat).getDenominatorAsInt()).isEqualTo(1);
        }
      }
      Note last = passage.notes().get(passage.notes().size() - 1);
      assertThat(last.written()).isEqualTo(Pitch.parse("A3"));
      assertThat(last.place().onset()).isEqualTo(BigFraction.ZERO);
      assertThat(last.length().compareTo(BigFraction.of(3))).isGreaterThanOrEqualTo(0);
      assertThat(passage.notes()).hasSize(2 * octaves * kind.notesInOctave() + 1);
    }
  }

  @Test
  void tonicsAreQuartersUnlessAllNotesAreEven() {
    ScaleRequest request = scale("D major", 2);

    assertThat(lengths(request)).startsWith(2, 1, 1, 1, 1, 1, 1, 2, 1).endsWith(1, 8);
    assertThat(lengths(request.withEven(true))).startsWith(1, 1, 1, 1, 1, 1, 1, 1).endsWith(1, 4);
  }

  /** Lengths of the notes in eighths. */
  private static List<Integer> lengths(ScaleRequest request) {
    return on("violin", request, "D4").passage().notes().stream()
        .map(note -> note.length().multiply(2).intValue())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 1 2 3 4 5 6 7 8 9 10 11 12 13 14",
    // a long tonic alone fills a bow of two eighths
    "2, 0 1 3 5 7 8 10 12 14",
    "4, 0 3 7 10 14",
    "8, 0 7 14"
  })
  void slurHasTheNumberOfEighths(int slur, String bows) {
    Passage passage = on("violin", scale("D major", 1).withSlur(slur), "D4").passage();
    List<Moment> moments = passage.moments();

    assertThat(
            IntStream.range(0, moments.size())
                .filter(m -> !moments.get(m).slurred())
                .mapToObj(Integer::toString)
                .collect(Collectors.joining(" ")))
        .isEqualTo(bows);
  }

  // common practice, no source
  @Test
  void brokenThirdsGoOneNoteBeyondTheTonics() {
    ScaleRequest request = scale("D major", 1).withPattern(ScalePattern.THIRDS);

    assertThat(written(on("violin", request, "D4").passage()))
        .isEqualTo(
            "D4 F#4 E4 G4 F#4 A4 G4 B4 A4 C#5 B4 D5 C#5 E5"
                + " D5 B4 C#5 A4 B4 G4 A4 F#4 G4 E4 F#4 D4 E4 C#4 D4");
  }

  @Test
  void brokenThirdsFromTheLowestStringEndWithoutTheNoteBelow() {
    ScaleRequest request = scale("C major", 1).withPattern(ScalePattern.THIRDS);

    assertThat(written(on("viola", request, "C3").passage())).endsWith(" F3 D3 E3 C3 C3");
  }

  @Test
  void doubleThirdsCombineEachNoteWithTheThirdAboveIt() {
    ScaleRequest request = scale("Bb major", 1).withPattern(ScalePattern.DOUBLE_THIRDS);

    assertThat(written(on("violin", request, "Bb3").passage()))
        .startsWith("Bb3+D4 C4+Eb4 D4+F4 Eb4+G4 F4+A4 G4+Bb4 A4+C5 Bb4+D5 A4+C5")
        .endsWith("C4+Eb4 Bb3+D4");
  }

  @Test
  void scaleHasTheRequestedTempo() {
    Tempo tempo = Tempo.parse("half=72");

    assertThat(on("violin", scale("G major", 2).withTempo(tempo), "G3").passage().tempo())
        .isEqualTo(tempo);
  }

  @Test
  void requestOutOfRangeIsRefused() {
    ScaleRequest request = scale("C chromatic", 1);

    assertThatThrownBy(() -> request.withOctaves(6)).hasMessageContaining("ask for 1 to 5");
    assertThatThrownBy(() -> request.withSlur(1)).hasMessage("a slur has 2 to 24 eighths, not 1");
    assertThatThrownBy(() -> request.withPattern(ScalePattern.THIRDS))
        .hasMessageContaining("the chromatic scale on C is not one");
    assertThatThrownBy(() -> on("violin", request, "D4"))
        .hasMessage("Chromatic scale on C does not start on D4");
  }
}
