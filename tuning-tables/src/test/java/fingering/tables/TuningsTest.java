package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
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
            "no tuning 'Sideways' for the viola; choose one of standard, five-string, semitone-up");
  }

  @Test
  void aTuningOfAnotherInstrumentIsRefusedWithBothInstruments() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> tuning("viola", "solo"))
        .withMessageStartingWith("the tuning 'solo' is for the double bass, not for the viola");
  }

  private static Tuning own(String instrument, String name, String... pitches) {
    List<OpenString> strings = new ArrayList<>();
    for (String pitch : pitches) {
      strings.add(new OpenString(strings.size() + 1, Pitch.parse(pitch)));
    }
    return Tunings.own(KNOWN, KNOWN.named(instrument), name, ImmutableList.copyOf(strings));
  }

  @Test
  void aUserMayTuneTheStrings() {
    Tuning tuning = own("cello", "open-g", "G3", "D3", "G2", "D2");
    assertThat(tuning.instrument()).isEqualTo("cello");
    assertThat(tuning.name()).isEqualTo("open-g");
    assertThat(strings(tuning)).isEqualTo("G3 D3 G2 D2");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          open-g   | A3 | string 2 (A3) is not lower than string 1 (G3); string 1 is the highest
          open-g   | G3 | string 2 (G3) is not lower than string 1 (G3)
          Open G   | D3 | 'Open G' is not a name for a tuning; write words in lower case joined by hyphens
          standard | D3 | 'standard' is the name of another tuning of the cello; give yours another name
          """)
  void aUsersTuningWithAWrongNameOrOrderIsRefused(String name, String second, String why) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> own("cello", name, "G3", second, "G2", "D2"))
        .withMessageStartingWith(why);
  }

  private static final String ROWS =
      """
      # tuned for an open fifth
      cello | open-g | 1 | G3 | -  | at home
      cello | open-g | 2 | D3 | -  | at home

      cello | open-g | 3 | G2 | -  | at home
      cello | open-g | 4 | D2 | C2 | at home
      """;

  private static Tuning rows(String text) {
    return Tunings.all(Table.parse("tunings.table", text, Tunings.FIELDS), KNOWN.ids()).get(0);
  }

  @Test
  void rowsOfATableAreATuning() {
    Tuning tuning = rows(ROWS);
    assertThat(strings(tuning)).isEqualTo("G3 D3 G2 D2");
    assertThat(tuning.strings().get(3).lowest()).hasToString("C2");
    assertThat(rows(ROWS.replace("\n", "\r\n"))).isEqualTo(tuning);
  }

  /** Replaces the first of the texts by the second and expects the problem. */
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
        "cello | open-g | 1; kazoo | open-g | 1; 2: no instrument 'kazoo'; choose one of violin, viola, cello, bass",
        "cello | open-g | 1; cello | Open G | 1; 2: 'Open G' is not a name for a tuning",
        "cello | open-g | 3; cello | open-d | 3; 5: string 3 where string 1 belongs"
      })
  void whatDoesNotFitIsNamedWithTableAndLine(String from, String to, String problem) {
    assertThat(ROWS).contains(from);
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> rows(ROWS.replace(from, to)))
        .withMessageStartingWith("tunings.table, line " + problem);
  }
}
