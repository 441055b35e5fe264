package fingering.userfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UserFieldsTest {
  private static final KnownKeys PIECE =
      KnownKeys.of("a piece", "file: a.xml", "tempo: quarter=96");
  private static final KnownKeys KEYS =
      KnownKeys.of(
          "a test file",
          "name: Low",
          "octaves: 2",
          "even: yes",
          "counted: together",
          "positions: [1, 3]",
          "shifts: [rest]",
          "show: 3=8",
          "pieces: [{file: a.xml}]");

  private static UserFields fields(String... lines) {
    return UserFields.parse("my.yaml", String.join("\n", lines), KEYS);
  }

  private static void refused(String text, Consumer<UserFields> reading, String message) {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> reading.accept(fields(text)))
        .withMessage("my.yaml, line " + message);
  }

  @Test
  void valuesAreReadByTheirKeys() {
    UserFields fields =
        fields(
            "name: 'Low: and slow'",
            "octaves: 3",
            "even: no",
            "counted: one",
            "positions: half, 1 , 3",
            "shifts: none",
            "show: [3=8, '2, 4=1']",
            "pieces:",
            "  - file: a.xml",
            "  - tempo: 96");
    assertThat(fields.keys())
        .containsExactly(
            "name", "octaves", "even", "counted", "positions", "shifts", "show", "pieces");
    assertThat(fields.text("name")).contains("Low: and slow");
    assertThat(fields.number("octaves", 1, 5)).contains(3);
    assertThat(fields.yesNo("even")).contains(false);
    assertThat(fields.choice("counted", "together", "one")).contains("one");
    assertThat(fields.list("positions", Function.identity()))
        .contains(ImmutableList.of("half", "1", "3"));
    assertThat(fields.listOrNone("shifts", Function.identity())).contains(ImmutableList.of());
    assertThat(fields.values("show", Function.identity()))
        .contains(ImmutableList.of("3=8", "2, 4=1"));
    ImmutableList<UserFields> pieces = fields.parts("pieces", PIECE).orElseThrow();
    assertThat(pieces).extracting(piece -> piece.place().line()).containsExactly(9, 10);
    assertThat(pieces.get(1).text("tempo")).contains("96");
    assertThat(pieces.get(1).has("file")).isFalse();
    assertThat(pieces.get(1).place("tempo")).isEqualTo(new FileLine("my.yaml", 10));
    assertThat(pieces.get(1).place("file")).isEqualTo(new FileLine("my.yaml", 10));
  }

  @Test
  void whatIsNotGivenIsEmpty() {
    UserFields fields = fields("name: x");
    assertThat(fields.number("octaves", 1, 5)).isEmpty();
    assertThat(fields.yesNo("even")).isEmpty();
    assertThat(fields.choice("counted", "together")).isEmpty();
    assertThat(fields.list("positions", Function.identity())).isEmpty();
    assertThat(fields.listOrNone("shifts", Function.identity())).isEmpty();
    assertThat(fields.values("show", Function.identity())).isEmpty();
    assertThat(fields.parts("pieces", PIECE)).isEmpty();
    assertThat(fields.missing("octaves"))
        .hasMessage("my.yaml, line 1: 'octaves' is missing; add it, such as 'octaves: 2'");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '§',
      textBlock =
          """
          postions: 1   | there is no key 'postions'; did you mean 'positions', such as 'positions: [1, 3]'?
          Name: x       | there is no key 'Name'; did you mean 'name', such as 'name: Low'?
          nmae: x       | there is no key 'nmae'; did you mean 'name', such as 'name: Low'?
          octave: 2     | there is no key 'octave'; did you mean 'octaves', such as 'octaves: 2'?
          pos: 1        | there is no key 'pos'; did you mean 'positions', such as 'positions: [1, 3]'?
          fruit: pear   | there is no key 'fruit' in a test file; choose from name, octaves, even, counted, positions, shifts, show, pieces
          '': x         | a key is missing before the colon; write one, such as 'name: Low'
          {}            | there are no keys; write some, such as 'name: Low'
          name          | a test file consists of keys with values, such as 'name: Low'
          - name: x     | a test file consists of keys with values, such as 'name: Low'
          name = x      | write a colon after the key, 'name: ', instead of '='
          """)
  void aFileWithoutKnownKeysIsRefused(String text, String message) {
    refused("# head\n" + text, fields -> {}, "2: " + message);
  }

  @Test
  void aFileWithManyKeysListsNoneOfThem() {
    KnownKeys many =
        KnownKeys.of(
            "a weights file", IntStream.range(0, 30).mapToObj(i -> "rule-" + i + ": 20").toList());
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> UserFields.parse("my.yaml", "loud: 3", many))
        .withMessage(
            "my.yaml, line 1: there is no key 'loud' in a weights file; correct or remove it; a key"
                + " is written as 'rule-0: 20'");
  }

  @Test
  void anyKeyMayBeAllowed() {
    KnownKeys any = KnownKeys.any("a weights file", "shift: 20");
    assertThat(UserFields.parse("my.yaml", "own-rule: 3", any).number("own-rule", 0, 9))
        .contains(3);
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> UserFields.parse("my.yaml", "Own rule: 3", any))
        .withMessage(
            "my.yaml, line 1: 'Own rule' is not a key; write it in lower case, such as 'shift:"
                + " 20'");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '§',
      textBlock =
          """
          name: [x]        | 'name' has a single value, such as 'name: Low'
          name: {x: 1}     | 'name' has a single value, such as 'name: Low'
          name:            | 'name' has no value; fill it in, such as 'name: Low', or remove it
          name: ~          | 'name' has no value; fill it in, such as 'name: Low', or remove it
          name: " "        | 'name' has no value; fill it in, such as 'name: Low', or remove it
          """)
  void aValueOfAnotherKindIsRefused(String text, String message) {
    refused(text, fields -> fields.text("name"), "1: " + message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "6", "-1", "1.5", "two", "1_0", "0x2", "9999999999"})
  void aNumberOutsideItsLimitsIsRefused(String number) {
    refused(
        "octaves: " + number,
        fields -> fields.number("octaves", 1, 5),
        "1: 'octaves' must be a whole number from 1 to 5, such as 'octaves: 2', not '%s'"
            .formatted(number));
  }

  @Test
  void yesAndNoMayBeTrueAndFalse() {
    for (String text : new String[] {"yes", "true", "\"yes\""}) {
      assertThat(fields("even: " + text).yesNo("even")).contains(true);
    }
    assertThat(fields("even: false").yesNo("even")).contains(false);
    refused("even: maybe", f -> f.yesNo("even"), "1: 'even' must be yes or no, not 'maybe'");
  }

  @Test
  void aChoiceNamesItsWords() {
    refused(
        "counted: twice",
        fields -> fields.choice("counted", "together", "one"),
        "1: 'counted' is together or one, not 'twice'");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          positions: {a: 1}      | 'positions' has one value or a list of values, such as 'positions: [1, 3]'
          positions: [1, [2]]    | 'positions' has one value or a list of values, such as 'positions: [1, 3]'
          positions: []          | 'positions' has one value or a list of values, such as 'positions: [1, 3]'
          positions:             | 'positions' has no value; fill it in, such as 'positions: [1, 3]', or remove it
          positions: 1,, 3       | 'positions' has an empty item; fill it in, or remove its comma
          positions: 1,          | 'positions' has an empty item; fill it in, or remove its comma
          """)
  void aListOfOtherThingsIsRefused(String text, String message) {
    refused(text, fields -> fields.list("positions", Function.identity()), "1: " + message);
  }

  @Test
  void anEmptyItemHasItsOwnLine() {
    refused(
        "positions:\n  - 1\n  -\n",
        fields -> fields.list("positions", Function.identity()),
        "3: 'positions' has an empty item; fill it in, or remove its comma");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pieces: x           | 'pieces' is a list with one item or more, such as '- file: a.xml'
          pieces: []          | 'pieces' is a list with one item or more, such as '- file: a.xml'
          pieces: {file: x}   | 'pieces' is a list with one item or more, such as '- file: a.xml'
          pieces: [x]         | a piece consists of keys with values, such as 'file: a.xml'
          pieces: [{}]        | there are no keys; write some, such as 'file: a.xml'
          pieces: [{fiel: x}] | there is no key 'fiel'; did you mean 'file', such as 'file: a.xml'?
          """)
  void aListOfPartsIsCheckedPartByPart(String text, String message) {
    refused(text, fields -> fields.parts("pieces", PIECE), "1: " + message);
  }

  @Test
  void anErrorOfAReaderGetsTheLineOfItsValue() {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> fields("show:", "  - 3", "  - x").values("show", UserFieldsTest::notX))
        .withMessage("my.yaml, line 3: 'x' is not a number")
        .withCauseInstanceOf(FingeringException.class)
        .satisfies(e -> assertThat(e.problem()).isEqualTo("'x' is not a number"))
        .satisfies(e -> assertThat(e.place()).isEqualTo(new FileLine("my.yaml", 3)));
  }

  private static String notX(String text) {
    if (text.equals("x")) {
      throw new FingeringException("'x' is not a number");
    }
    return text;
  }

  @Test
  void aKeyThatIsNotDeclaredCannotBeRead() {
    assertThatIllegalArgumentException().isThrownBy(() -> fields("name: x").text("nome"));
  }

  @Test
  void examplesAreFilesThatAreRead() {
    for (String example : KEYS.examples().values()) {
      assertThat(fields(example).keys()).hasSize(1);
    }
  }

  @Test
  void filesAreReadInUtf8UpToASize(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("any.name"), "\uFEFFname: Übung\n");
    assertThat(UserFields.read(file, KEYS).text("name")).contains("Übung");
    unreadable(folder, "is a folder: name a test file inside it.");
    unreadable(folder.resolve("none"), "There is no file ");
    unreadable(
        Files.writeString(folder.resolve("large"), "#".repeat(65 * 1024)),
        "is larger than 64 KiB and is not read: check that it is a test file.");
    unreadable(
        Files.write(folder.resolve("latin"), "name: Übung".getBytes(StandardCharsets.ISO_8859_1)),
        "is not text in UTF-8: save it again in that encoding.");
  }

  private static void unreadable(Path file, String message) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> UserFields.read(file, KEYS))
        .withMessageContaining(message);
  }
}
