package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableTest {
  @Test
  void commentsAndBlankLinesAreIgnored() {
    Table table = Table.parse("t.table", "# head\n\nviolin | 1 | E5\n  \nviolin | 2 | A4\n", 3);
    assertThat(table.rows()).hasSize(2);
    assertThat(table.rows().get(1).line()).isEqualTo(5);
    assertThat(table.rows().get(1).text(2)).isEqualTo("A4");
  }

  @Test
  void aRowWithoutASourceFailsWithTableAndLine() {
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> Table.parse("strings.table", "# head\nviolin | 1 | E5", 4))
        .withMessage("strings.table, line 2: 3 fields instead of 4");
  }

  @Test
  void aNumberInWordsFailsWithTableAndLine() {
    Table.Row row = row("violin | one | E5");
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> row.integer(1))
        .withMessage("t.table, line 1: 'one' is not a whole number");
  }

  @Test
  void anEmptyFieldFailsWithTableLineAndField() {
    Table.Row row = row("violin |  | E5");
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> row.text(1))
        .withMessage("t.table, line 1: field 2 is empty");
  }

  @ParameterizedTest
  @ValueSource(strings = {"long", "-328", "0", "NaN", "Infinity", "10000"})
  void anImpossibleLengthFailsWithTableAndLine(String length) {
    Table.Row row = row("violin | " + length + " | source");
    assertThatExceptionOfType(BadTableException.class)
        .isThrownBy(() -> row.millimetres(1))
        .withMessage("t.table, line 1: '" + length + "' is not a length in millimetres");
  }

  @Test
  void aMissingTableIsReportedByName() {
    assertThatIllegalStateException()
        .isThrownBy(() -> Table.read("harps.table", 4))
        .withMessageContaining("harps.table");
  }

  @ParameterizedTest
  @CsvSource({
    "instruments.table, 9",
    "tunings.table, 6",
    "sizes.table, 5",
    "signs.table, 4",
    "positions.table, 5"
  })
  void everyRowHasASource(String name, int fields) {
    assertThat(Table.read(name, fields).rows())
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.text(fields - 1)).isNotBlank());
  }

  private static Table.Row row(String text) {
    return Table.parse("t.table", text, 3).rows().get(0);
  }
}
