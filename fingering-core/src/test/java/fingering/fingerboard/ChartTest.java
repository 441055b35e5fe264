package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.Fingering;
import fingering.fingerboard.Chart.KeyRelation;
import fingering.fingerboard.Chart.Row;
import fingering.tables.FingeringException;
import fingering.tables.Instruments;
import fingering.tables.Key;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartTest {
  private static Chart chart(String instrument, ChartRequest request) {
    return Chart.of(Fingerboard.of(Instruments.standard().named(instrument)), request);
  }

  private static Chart position(String instrument, String position) {
    return chart(instrument, ChartRequest.whole().in(Position.parse(position)));
  }

  private static Row row(Chart chart, int semitones) {
    return chart.rows().stream()
        .filter(row -> row.semitones() == semitones)
        .findFirst()
        .orElseThrow();
  }

  private static List<Integer> semitones(Chart chart) {
    return chart.rows().stream().map(Row::semitones).toList();
  }

  private static Cell cell(Chart chart, int string, String pitch) {
    return chart.rows().stream()
        .flatMap(row -> row.cells().stream())
        .filter(c -> c.string().number() == string && c.names().contains(Pitch.parse(pitch)))
        .findFirst()
        .orElseThrow(() -> new AssertionError(pitch + " is not on string " + string));
  }

  /** The fingers of a note as a player reads them. */
  private static String fingers(Chart chart, int string, String pitch) {
    return cell(chart, string, pitch).fingerings().stream()
        .filter(fingering -> fingering.name().equals(Pitch.parse(pitch)))
        .map(Fingering::symbol)
        .collect(Collectors.joining(" "));
  }

  // L(1 − 2^(−n/12)): equal temperament (ISO 16), frequency inverse to length. By hand for a violin
  // of 328 mm: the octave at half of it; a semitone at 328 · 0.056126 = 18.4; a fifth at
  // 328 · 0.332580 = 109.1; two octaves at three quarters.
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 18.409", "7, 109.086", "12, 164", "24, 246"})
  void rowsAreInEqualTemperament(int semitones, double millimetres) {
    assertThat(row(chart("violin", ChartRequest.whole()), semitones).millimetres())
        .isCloseTo(millimetres, within(0.001));
  }

  // Solved for n by hand, n = −12 · log2(1 − f/L): violin 270/328 gives 29.99, viola 308/375 29.8,
  // cello 580/690 31.8, bass 850/1060 28.03.
  @ParameterizedTest
  @CsvSource({"violin, 29", "viola, 29", "cello, 31", "bass, 28"})
  void theWholeFingerboardIsShownToItsEnd(String instrument, int last) {
    List<Integer> semitones = semitones(chart(instrument, ChartRequest.whole()));

    assertThat(semitones.get(0)).isZero();
    assertThat(semitones.get(semitones.size() - 1)).isEqualTo(last);
  }

  @Test
  void stringsAreShownFromTheLowestToTheHighest() {
    assertThat(chart("viola", ChartRequest.whole()).strings())
        .extracting(OpenString::letterName)
        .containsExactly("C", "G", "D", "A");
  }

  // Every G, D, A and E in first position rings, as teachers show; common practice, no source
  @Test
  void violinRingsOnEveryGDAAndEOfFirstPosition() {
    List<String> ringing =
        position("violin", "1").rows().stream()
            .flatMap(row -> row.cells().stream())
            .filter(cell -> !cell.rings().isEmpty())
            .map(cell -> cell.string().roman() + " " + cell.names().get(0).display())
            .toList();

    assertThat(ringing)
        .containsExactlyInAnyOrder(
            "IV A3", "IV D4", "III E4", "III G4", "III A4", "II D5", "II E5", "I G5", "I A5");
  }

  @Test
  void stoppedStringDoesNotRing() {
    // A5 on the A string: no other string of the violin is tuned to an A
    assertThat(cell(position("violin", "3"), 2, "A5").rings()).isEmpty();
  }

  @Test
  void ringingStringsAreListedNearestFirst() {
    assertThat(cell(position("violin", "1"), 3, "A4").rings())
        .extracting(OpenString::roman)
        .containsExactly("II");
    assertThat(cell(position("cello", "1"), 3, "C3").rings())
        .extracting(OpenString::letterName)
        .containsExactly("C");
  }

  // F. Simandl, New Method for the Double Bass (from memory): first finger on the G string
  @ParameterizedTest
  @CsvSource({
    "half, G#2",
    "1, A2",
    "2, Bb2",
    "2½, B2",
    "3, C3",
    "3½, C#3",
    "4, D3",
    "5, Eb3",
    "6, F3",
    "7, G3"
  })
  void firstFingerOfTheBassIsWhereSimandlPlacesIt(String position, String note) {
    assertThat(fingers(position("bass", position), 1, note)).isEqualTo("1");
  }

  @Test
  void positionShowsTheOpenStringsAndTheRowsItCovers() {
    // Simandl (from memory): first, second and fourth finger a semitone apart
    assertThat(semitones(position("bass", "3"))).containsExactly(0, 5, 6, 7);
  }

  @Test
  void rowsUnderTheHandAreShownEvenWithoutNotesOfTheKey() {
    // fifth position: first finger on C, F, B♭ and E♭ (Simandl, from memory), none in A major
    Chart chart = chart("bass", ChartRequest.whole().in(Position.of(5)).with(Key.parse("A-major")));

    assertThat(semitones(chart)).containsExactly(0, 8, 9, 10);
  }

  @Test
  void fourthFingerComesBeforeTheThirdThatCanReplaceIt() {
    // Simandl (from memory): the third finger can replace the fourth from fifth position up
    assertThat(fingers(position("bass", "5"), 1, "F3")).isEqualTo("4 3");
  }

  // common practice, no source: the closed hand of the cello, and both extensions
  @ParameterizedTest
  @CsvSource({"Eb3, x1", "E3, 1", "F3, 2", "F#3, 3 x2", "G3, 4 x3", "G#3, x4"})
  void celloShowsTheClosedHandBeforeExtensions(String note, String fingers) {
    assertThat(fingers(position("cello", "1"), 2, note)).isEqualTo(fingers);
  }

  // as in any violin method; common practice, no source
  @ParameterizedTest
  @CsvSource({
    "Eb4, 1", "E4, 1", "F4, 2", "F#4, 2", "Gb4, 3", "G4, 3", "G#4, 3", "A4, 4", "Bb4, x4"
  })
  void violinShowsOneFingerForALetterLowAndHigh(String note, String finger) {
    assertThat(fingers(position("violin", "1"), 3, note)).isEqualTo(finger);
  }

  @Test
  void lowSecondFingerIsNotAnExtension() {
    assertThat(fingers(position("violin", "1"), 1, "Gb5")).isEqualTo("2");
  }

  @Test
  void firstFingerReachingBackIsAnExtension() {
    Chart third =
        chart("violin", ChartRequest.whole().in(Position.THIRD).with(Key.parse("A-major")));

    assertThat(fingers(third, 4, "B3")).isEqualTo("x1");
    assertThat(fingers(third, 4, "C#4")).isEqualTo("1");
  }

  @Test
  void withoutAKeyNotesBetweenNaturalsHaveBothNames() {
    Cell cell = row(chart("violin", ChartRequest.whole()), 4).cells().get(1);

    assertThat(cell.names()).extracting(Pitch::display).containsExactly("F♯4", "G♭4");
    assertThat(cell.relation()).isEqualTo(KeyRelation.BETWEEN);
  }

  @Test
  void onlyNotesOfTheKeyAreNamed() {
    Chart chart = chart("violin", ChartRequest.whole().with(Key.parse("D-major")));

    assertThat(
            chart.rows().stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(cell -> cell.names().stream())
                .map(pitch -> pitch.display().replaceAll("\\d", ""))
                .distinct())
        .containsExactlyInAnyOrder("D", "E", "F♯", "G", "A", "B", "C♯");
    assertThat(row(chart, 3).cells().get(1).relation()).isEqualTo(KeyRelation.OUTSIDE);
  }

  @Test
  void raisedNotesOfAMinorKeyAreMarked() {
    Chart chart = chart("violin", ChartRequest.whole().with(Key.parse("g-minor")));

    assertThat(cell(chart, 3, "F4").relation()).isEqualTo(KeyRelation.NAMED);
    assertThat(cell(chart, 3, "F#4").relation()).isEqualTo(KeyRelation.RAISED);
  }

  // common practice, no source: second position of the cello has C or C♯ under the first finger of
  // the A string; C♯ has more natural notes under the hand on all strings, C those of flat keys
  @Test
  void positionWithTwoPlacesIsShownWhereMostNotesOfTheKeyAre() {
    ChartRequest second = ChartRequest.whole().in(Position.SECOND);

    assertThat(place(chart("cello", second))).isEqualTo(4);
    assertThat(place(chart("cello", second.with(Key.parse("Eb-major"))))).isEqualTo(3);
    assertThat(place(chart("cello", second.at(3)))).isEqualTo(3);
  }

  private static int place(Chart chart) {
    return chart.hand().orElseThrow().semitones();
  }

  // natural notes on the A string: B, C, D, E (a tone, and a semitone or a tone each); the first
  // finger of each position on the nearest semitone; common practice, no source
  @ParameterizedTest
  @CsvSource({"1, half", "2, 1", "3, 2", "5, 3", "7, 4", "9, 5", "10, 6", "12, 7"})
  void wholeFingerboardMarksTheFirstFingerOfEachPosition(int semitones, String position) {
    assertThat(row(chart("violin", ChartRequest.whole()), semitones).positions())
        .containsExactly(Position.parse(position));
  }

  @Test
  void singleStringIsShownAlone() {
    Chart chart = chart("viola", ChartRequest.whole().on(4));

    assertThat(chart.strings()).extracting(OpenString::letterName).containsExactly("C");
    assertThat(chart.rows()).allSatisfy(row -> assertThat(row.cells()).hasSize(1));
  }

  @Test
  void singleStringShowsAllPositionsForItsNotes() {
    // D3 and G3 on the viola's C string, as in any viola method; common practice, no source
    Cell cell = cell(chart("viola", ChartRequest.whole().on(4)), 4, "G3");

    assertThat(
            cell.fingerings().stream()
                .filter(fingering -> !fingering.extended())
                .map(
                    fingering -> fingering.frame().position().display() + " " + fingering.symbol()))
        .containsExactly("1st 4", "2nd 3", "3rd 2", "4th 1");
  }

  @Test
  void unknownPositionIsRefusedWithTheChoices() {
    assertThatThrownBy(() -> position("bass", "1½"))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("The double bass has no 1½ position")
        .hasMessageContaining("half, 1, 2, 2½, 3, 3½, 4");
  }

  @Test
  void placeThatThePositionDoesNotHaveIsRefused() {
    assertThatThrownBy(() -> chart("cello", ChartRequest.whole().in(Position.SECOND).at(7)))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("choose 3, 4.");
  }
}
