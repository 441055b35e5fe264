package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuningsTest {
  private static final Instruments KNOWN = Instruments.standard();

  private static Tuning tuning(String instrument, String name) {
    return KNOWN.tuning(KNOWN.named(instrument), name);
  }

  private static String strings(Tuning tuning) {
    return tuning.strings().stream()
        .map(string -> string.pitch().toString())
        .collect(Collectors.joining(" "));
  }

  // common practice, no source; the cello: J. S. Bach, 6th suite, from memory
  @ParameterizedTest
  @CsvSource({
    "violin, five-string, E5 A4 D4 G3 C3",
    "viola, five-string, E5 A4 D4 G3 C3",
    "cello, five-string, E4 A3 D3 G2 C2",
    "bass, five-string-low-b, G2 D2 A1 E1 B0",
    "bass, five-string-low-c, G2 D2 A1 E1 C1",
    "bass, five-string-high-c, C3 G2 D2 A1 E1"
  })
  void aFifthStringIsAddedBelowOrAbove(String instrument, String name, String open) {
    assertThat(strings(tuning(instrument, name))).isEqualTo(open);
  }

  // common practice, no source; viennese: concertos of Dittersdorf and Vanhal, from memory
  @ParameterizedTest
  @CsvSource({
    "solo, A2 E2 B1 F#1",
    "fifths, A2 D2 G1 C1",
    "e-string-to-d, G2 D2 A1 D1",
    "viennese, A2 F#2 D2 A1 F1"
  })
  void theBassHasOtherTunings(String name, String open) {
    assertThat(strings(tuning("bass", name))).isEqualTo(open);
  }

  // all from memory. Violin: Saint-Saëns, Danse macabre; Biber, Mystery Sonatas 10 and 2; Paganini,
  // 1st concerto; Mahler, 4th symphony; Bartók, Contrasts; Strauss, Ein Heldenleben. Viola: Mozart,
  // K. 364. Cello: Bach, 5th suite; Schumann, op. 47; Kodály, op. 8; Dutilleux, Trois strophes.
  @ParameterizedTest
  @CsvSource({
    "violin, e-string-to-e-flat, Eb5 A4 D4 G3",
    "violin, e-string-to-d, D5 A4 D4 G3",
    "violin, a-e-a-e, E5 A4 E4 A3",
    "violin, semitone-up, F5 Bb4 Eb4 Ab3",
    "violin, tone-up, F#5 B4 E4 A3",
    "violin, g-sharp-d-a-e-flat, Eb5 A4 D4 G#3",
    "violin, g-string-to-g-flat, E5 A4 D4 Gb3",
    "viola, semitone-up, Bb4 Eb4 Ab3 Db3",
    "cello, a-string-to-g, G3 D3 G2 C2",
    "cello, c-string-to-b-flat, A3 D3 G2 Bb1",
    "cello, b-f-sharp-d-a, A3 D3 F#2 B1",
    "cello, b-flat-f-sharp-d-a, A3 D3 F#2 Bb1"
  })
  void aScordaturaIsThatOfItsPiece(String instrument, String name, String open) {
    assertThat(strings(tuning(instrument, name))).isEqualTo(open);
  }

  @ParameterizedTest
  @CsvSource({
    "violin, semitone-up, 1",
    "violin, tone-up, 2",
    "viola, semitone-up, 1",
    "bass, solo, 2"
  })
  void aTuningUpRaisesAllStringsByTheSameInterval(String instrument, String name, int semitones) {
    Tuning standard = tuning(instrument, "standard");
    assertThat(tuning(instrument, name).strings())
        .hasSameSizeAs(standard.strings())
        .allSatisfy(
            string -> {
              Pitch usual = standard.strings().get(string.number() - 1).pitch();
              assertThat(string.pitch().midi() - usual.midi()).isEqualTo(semitones);
              assertThat(string.pitch().letterNumber() - usual.letterNumber()).isEqualTo(1);
            });
  }

  // S. Adler, The Study of Orchestration, from memory
  @Test
  void theExtensionOfTheBassGoesDownToC() {
    Instrument extended = KNOWN.named("bass").tuned(tuning("bass", "c-extension"));
    assertThat(extended.string(4).pitch()).hasToString("E1");
    assertThat(extended.string(4).lowest()).hasToString("C1");
    assertThat(extended.lowest()).hasToString("C1");
    assertThat(extended.string(3).lowest()).isEqualTo(extended.string(3).pitch());
  }

  @Test
  void theStandardTuningIsFirstAndThatOfTheInstrument() {
    assertThat(KNOWN.all())
        .allSatisfy(
            instrument -> {
              Tuning first = KNOWN.tunings(instrument).get(0);
              assertThat(first.name()).isEqualTo("standard").isEqualTo(instrument.tuning());
              assertThat(instrument.tuned(first)).isEqualTo(instrument);
            });
  }

  @Test
  void everyTuningFitsItsInstrument() {
    assertThat(KNOWN.all())
        .allSatisfy(
            instrument ->
                assertThat(KNOWN.tunings(instrument))
                    .allSatisfy(
                        tuning ->
                            assertThat(instrument.tuned(tuning).strings())
                                .isEqualTo(tuning.strings())));
  }

  @Test
  void caseAndBlanksOfATuningNameDoNotMatter() {
    assertThat(KNOWN.tuning(KNOWN.named("bass"), " Solo ").name()).isEqualTo("solo");
  }

  @Test
  void anUnknownTuningIsRefusedWithTheChoices() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> tuning("viola", "Sideways"))
        .withMessage(
            "no tuning 'Sideways' for the viola; choose standard, five-string, semitone-up");
  }

  @Test
  void aTuningOfAnotherInstrumentIsRefusedWithBothInstruments() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> tuning("viola", "solo"))
        .withMessageStartingWith("the tuning 'solo' is for the double bass, not for the viola");
  }

  private static final String OWN =
      """
      # tuned for an open fifth
      cello | open-g | 1 | G3 | -  | at home
      cello | open-g | 2 | D3 | -  | at home

      cello | open-g | 3 | G2 | -  | at home
      cello | open-g | 4 | D2 | C2 | at home
      """;

  private static Tuning own(String text) {
    return Tunings.read("own.tuning", text, KNOWN);
  }

  @Test
  void aTuningOfOnesOwnIsReadFromRowsOfTheSameForm() {
    Tuning tuning = own(OWN);
    assertThat(tuning.instrument()).isEqualTo("cello");
    assertThat(tuning.name()).isEqualTo("open-g");
    assertThat(strings(tuning)).isEqualTo("G3 D3 G2 D2");
    assertThat(tuning.strings().get(3).lowest()).hasToString("C2");
  }

  @Test
  void lineEndsOfWindowsAreReadToo() {
    assertThat(own(OWN.replace("\n", "\r\n"))).isEqualTo(own(OWN));
  }

  /** Replaces the first of the texts by the second and expects the complaint. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "| 1 | G3; | one | G3; 2: 'one' is not a whole number",
        "| 3 | G2; | 3 | H2; 5: 'H2' is not a pitch",
        "| 3 | G2; | 4 | G2; 5: string 4 where string 3 belongs",
        "| 1 | G3; | 2 | G3; 2: string 2 where string 1 belongs",
        "| 2 | D3; | 1 | D3; 3: string 1 where string 2 belongs",
        "| 2 | D3; | 2 | A3; 3: string 2 (A3) is not lower than string 1 (G3)",
        "| 2 | D3; | 2 | G3; 3: string 2 (G3) is not lower",
        "| D2 | C2; | D2 | E2; 6: an extension goes down",
        "| D2 | C2; | D2 | down; 6: 'down' is not a pitch",
        "| D2 | C2; | D2; 6: 5 fields instead of 6",
        "C2 | at home; C2 |; 6: field 6 is empty",
        "cello | open-g | 1; kazoo | open-g | 1; 3: 'open-g' for 'cello' begins",
        "cello | open-g | 3; cello | open-d | 3; 5: 'open-d' for 'cello' begins"
      })
  void whatDoesNotFitIsNamedWithFileAndLine(String from, String to, String complaint) {
    assertThat(OWN).contains(from);
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> own(OWN.replace(from, to)))
        .withMessageStartingWith("own.tuning, line " + complaint);
  }

  @Test
  void aTuningForAnInstrumentThatIsNotKnownIsRefusedWithThoseThatAre() {
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> own(OWN.replace("cello", "kazoo")))
        .withMessage(
            "own.tuning, line 2: no instrument 'kazoo'; choose violin, viola, cello, bass");
  }

  @Test
  void aNameThatCannotBeTypedInOneWordIsRefused() {
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> own(OWN.replace("open-g", "Open G")))
        .withMessageStartingWith("own.tuning, line 2: 'Open G' is no name for a tuning");
  }

  @Test
  void aNameThatTheTablesHaveIsRefused() {
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> own(OWN.replace("open-g", "standard")))
        .withMessageStartingWith("own.tuning, line 2: 'standard' is a tuning that the cello has");
  }

  @ParameterizedTest
  @CsvSource({"''", "'\n\n'", "'# only a remark'"})
  void aTextWithoutATuningIsRefused(String text) {
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> own(text))
        .withMessageStartingWith("own.tuning: there is no tuning in it");
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void aTextCutShortIsReadOrRefusedInASentence(@ForAll @IntRange(max = 260) int end) {
    String cut = OWN.substring(0, Math.min(end, OWN.length()));
    try {
      assertThat(own(cut).strings()).hasSizeBetween(1, 4);
    } catch (BadTableException e) {
      assertThat(e.getMessage()).startsWith("own.tuning").doesNotContain("null");
    }
  }
}
