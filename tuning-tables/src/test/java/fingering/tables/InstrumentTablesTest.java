package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;

/** Inconsistent tables are refused, with table and line. */
class InstrumentTablesTest {
  private static final String INSTRUMENTS =
      """
      # id | name | kind | size | string length | fingerboard | reach | octaves | source
      gamba | Gamba | cello | big | 700 | 500 | 130 | 0 | invented
      """;
  private static final String TUNINGS =
      """
      gamba | standard | 1 | D4 | - | invented
      gamba | standard | 2 | A3 | - | invented
      gamba | low      | 1 | C4 | - | invented
      gamba | low      | 2 | G3 | - | invented
      """;
  private static final String SIZES =
      """
      gamba | big   | 700 | 130 | invented
      gamba | small | 500 | 100 | invented
      """;
  private static final String SIGNS = "word | gamba | gamba | invented\n";

  private static Instruments read(String instruments, String tunings, String sizes, String signs) {
    return Instruments.of(
        Table.parse("instruments.table", instruments, 9),
        Table.parse("tunings.table", tunings, Tunings.FIELDS),
        Table.parse("sizes.table", sizes, Sizes.FIELDS),
        Table.parse("signs.table", signs, 4));
  }

  private static void assertRefused(
      String instruments, String tunings, String sizes, String signs, String problem) {
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> read(instruments, tunings, sizes, signs))
        .withMessageStartingWith(problem);
  }

  @Test
  void consistentTablesMakeAnInstrument() {
    Instruments known = read(INSTRUMENTS, TUNINGS, SIZES, SIGNS);
    Instrument gamba = known.named("gamba");
    assertThat(gamba.strings()).hasSize(2);
    assertThat(gamba.tuned(known.tuning(gamba, "low")).lowest()).hasToString("G3");
    assertThat(gamba.sized(known.size(gamba, "small")).reach()).isEqualTo(100);
  }

  @Test
  void anInstrumentNeedsAStandardTuning() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS.replace("standard", "high"),
        SIZES,
        SIGNS,
        "instruments.table, line 2: 'gamba' has no standard tuning");
  }

  @Test
  void theUsualSizeMustBeInTheSizeTable() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS,
        SIZES.replace("big", "vast"),
        SIGNS,
        "instruments.table, line 2: 'gamba' has no size 'big'");
  }

  @Test
  void theUsualSizeMustHaveTheSameLengthInBothTables() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS,
        SIZES.replace("700", "701"),
        SIGNS,
        "instruments.table, line 2: string length and reach differ from those of size 'big' of 'gamba' in sizes.table");
  }

  @Test
  void anInstrumentMayAppearOnce() {
    assertRefused(
        INSTRUMENTS + "gamba | Gamba | cello | big | 700 | 500 | 130 | 0 | invented\n",
        TUNINGS,
        SIZES,
        SIGNS,
        "instruments.table, line 3: 'gamba' appears twice");
  }

  @Test
  void aTuningMayAppearOnce() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS + "gamba | standard | 1 | D4 | - | invented\n",
        SIZES,
        SIGNS,
        "tunings.table, line 5: 'standard' for 'gamba' appears twice");
  }

  @Test
  void theStringsOfATuningMustBeCompleteAndInOrder() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS.replace("low      | 1", "low      | 2"),
        SIZES,
        SIGNS,
        "tunings.table, line 3: string 2 where string 1 belongs");
  }

  @Test
  void aSizeMayAppearOnce() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS,
        SIZES.replace("small", "big"),
        SIGNS,
        "sizes.table, line 2: the size 'big' of 'gamba' appears twice");
  }

  @Test
  void aTuningNeedsAKnownInstrument() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS + "lute | standard | 1 | D4 | - | invented\n",
        SIZES,
        SIGNS,
        "tunings.table, line 5: no instrument 'lute'; choose gamba");
  }

  @Test
  void aSizeNeedsAKnownInstrument() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS,
        SIZES + "lute | big | 700 | 130 | invented\n",
        SIGNS,
        "sizes.table, line 3: no instrument 'lute'; choose gamba");
  }

  @Test
  void aSignNeedsAKnownInstrument() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS,
        SIZES,
        SIGNS + "word | lute | lute | invented\n",
        "signs.table, line 2: no instrument 'lute'; choose gamba");
  }

  @Test
  void aMidiProgramIsANumberOrARange() {
    assertRefused(
        INSTRUMENTS,
        TUNINGS,
        SIZES,
        SIGNS + "program | all | gamba | invented\n",
        "signs.table, line 2: 'all' is not a MIDI program or a range of them");
  }
}
