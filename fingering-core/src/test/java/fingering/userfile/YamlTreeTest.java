package fingering.userfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.userfile.YamlNode.Mapping;
import fingering.userfile.YamlNode.Scalar;
import fingering.userfile.YamlNode.Sequence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTreeTest {
  private static YamlNode parse(String text) {
    return YamlNode.parse("my.yaml", text);
  }

  private static YamlNode value(YamlNode node, String key) {
    return ((Mapping) node).entries().get(key).value();
  }

  private static Scalar scalar(int line, String text) {
    return new Scalar(new FileLine("my.yaml", line), text);
  }

  @Test
  void keysListsAndValuesKnowTheirLines() {
    YamlNode root =
        parse(
            """
            # a comment
            name: low
            show:
              - 3=8
              - 2=4   # and another

            parts:
              - file: a.xml
                tempo: 96
            """);
    assertThat(root.place()).hasToString("my.yaml, line 2");
    assertThat(((Mapping) root).entries().keySet()).containsExactly("name", "show", "parts");
    assertThat(value(root, "name")).isEqualTo(scalar(2, "low"));
    assertThat(((Mapping) root).entries().get("show").place().line()).isEqualTo(3);
    assertThat(((Sequence) value(root, "show")).items())
        .containsExactly(scalar(4, "3=8"), scalar(5, "2=4"));
    YamlNode part = ((Sequence) value(root, "parts")).items().get(0);
    assertThat(part.place().line()).isEqualTo(8);
    assertThat(value(part, "tempo")).isEqualTo(scalar(9, "96"));
  }

  @Test
  void jsonIsReadAsYaml() {
    YamlNode json = parse("{\"name\": \"low\", \"show\": [\"3=8\", 2], \"even\": true}");
    assertThat(value(json, "name")).isEqualTo(scalar(1, "low"));
    assertThat(((Sequence) value(json, "show")).items())
        .containsExactly(scalar(1, "3=8"), scalar(1, "2"));
    assertThat(value(json, "even")).isEqualTo(scalar(1, "true"));
  }

  /** No value is converted: a measure 010 and a finger pattern 0-1 stay as they are. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "yes",
        "No",
        "true",
        "010",
        "0x1F",
        "1_000",
        "1.50",
        "0-1",
        "3=8",
        "90 %",
        "3 s",
        "2½",
        "12:30",
        "2026-12-12",
        "1e3",
        ".5",
        "-1",
        "F#1",
        "don't",
        "a b  c",
        "3@6-11",
        "III,IV@9-16"
      })
  void aValueIsKeptAsWritten(String text) {
    assertThat(value(parse("key: " + text), "key")).isEqualTo(scalar(1, text));
    assertThat(value(parse("key: " + text + "   # comment"), "key")).isEqualTo(scalar(1, text));
    assertThat(value(parse("key: \"" + text + "\""), "key")).isEqualTo(scalar(1, text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"key:", "key: # comment", "key: ~", "key: null", "key: ''", "{\"key\": null}"})
  void aMissingValueIsEmpty(String text) {
    assertThat(value(parse(text), "key")).isEqualTo(scalar(1, ""));
  }

  @Test
  void aBlockOfTextKeepsItsLines() {
    assertThat(value(parse("abc: |\n  K:D\n  D2 F2|\n"), "abc"))
        .isEqualTo(scalar(1, "K:D\nD2 F2|\n"));
  }

  @Test
  void oneDocumentMayHaveItsMarks() {
    assertThat(value(parse("---\nkey: 1\n...\n"), "key")).isEqualTo(scalar(2, "1"));
    assertThat(parse("---\n")).isInstanceOf(Scalar.class);
  }

  /** In the texts, ¶ stands for the end of a line and → for a tab. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '§',
      textBlock =
          """
          §§                         ; 1: the file is empty; write keys and values into it
          ¶# only a comment¶         ; 1: the file is empty; write keys and values into it
          a: 1¶b: 2¶a: 3             ; 3: the key 'a' is given twice, first in line 1; write it once
          {"a": 1, "a": 2}           ; 1: the key 'a' is given twice, first in line 1; write it once
          a: {b: 1,¶ b: 2}           ; 2: the key 'b' is given twice, first in line 1; write it once
          a: &x 1                    ; 1: remove '&x': names for values are not used
          a: 1¶&x b: 2               ; 2: remove '&x': names for values are not used
          &x a: 1                    ; 1: remove '&x': names for values are not used
          a:¶ - &x [1]               ; 2: remove '&x': names for values are not used
          a: 1¶b: *x                 ; 2: '*x' refers to another value; write the value itself
          a: [1, *x]                 ; 1: '*x' refers to another value; write the value itself
          *x : 1                     ; 1: '*x' refers to another value
          a: !!str 1                 ; 1: remove the tag before the value: tags such as '!!str' are not used
          a: ! x                     ; 1: remove the tag before the value
          !!str a: 1                 ; 1: remove the tag before the value
          a: 1¶b: !own {c: 1}        ; 2: remove the tag before the value
          a: 1¶---¶b: 2              ; 3: a second document begins; remove the line '---', or write two files
          a: 1¶...¶b: 2              ; 3: this is not valid YAML; check quotes, brackets, spaces and indentation
          ? [a]¶: b                  ; 1: a key is not a single word; write a key, a colon, a space and the value
          a: [1¶b: 2                 ; 1: a list or bracket is not closed; check the commas and brackets
          a: {b: 1                   ; 1: a list or bracket is not closed
          a: [1]]                    ; 1: there is one bracket too many; remove it
          a: b: c                    ; 1: a second colon, or a wrong indentation; put a text with ': ' in quotes
          a: 1¶ b: 2                 ; 2: a second colon, or a wrong indentation
          a:¶→- 1                    ; 2: a tab is used for the indentation; use spaces
          a: 'x¶b: 1                 ; 1: a quotation mark is not closed; add the second one
          a: "x                      ; 1: a quotation mark is not closed
          a: @9-16                   ; 1: a value begins with a sign that has a meaning in YAML; put the value in quotes
          a: `x                      ; 1: a value begins with a sign that has a meaning in YAML; put the value in quotes
          a: %x                      ; 1: a value begins with a sign that has a meaning in YAML; put the value in quotes
          a: 1¶b                     ; 2: a colon is missing; write a key, a colon, a space and the value
          a: 1¶b = 2                 ; 2: write a colon after the key, 'b: ', instead of '='
          a = 1¶¶b = 2 # c¶d = 3     ; 4: write a colon after the key, 'd: ', instead of '='
          a:¶  - 1¶ - 2              ; 3: the indentation is wrong; begin keys that belong together in the same column
          : 1                        ; 1: a key is missing before the colon; write one
          a: 1¶b: &x                 ; 2: remove '&x': names for values are not used
          %YAML 3.0¶---¶a: 1         ; 1: this is not valid YAML
          a: "\\UFFFFFFFF"           ; 1: this is not valid YAML
          """)
  void whatIsNotUsedOrIsNotYamlIsRefusedInOneSentence(String text, String why) {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> parse(text.replace('¶', '\n').replace('→', '\t')))
        .withMessageStartingWith("my.yaml, line " + why)
        .satisfies(e -> assertThat(e.getMessage()).hasLineCount(1).doesNotContain("yaml.org"));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 7, 0x1b, 0x7f, 0x9b, 0xfffe})
  void controlCharactersAreRefusedWithTheirLine(int character) {
    for (String text : new String[] {"a: 1\nb: %s\n", "a: 1\n# %s\n"}) {
      assertThatExceptionOfType(UserFileException.class)
          .isThrownBy(() -> parse(text.formatted(Character.toString(character))))
          .withMessage(
              "my.yaml, line 2: the character U+%04X is not text; delete it".formatted(character));
    }
  }

  @Test
  void halfOfACharacterIsRefused() {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> parse("a: 1\nb: \ud83c"))
        .withMessageStartingWith("my.yaml, line 2: the character U+D83C is not text");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{a: ", "[{a: "})
  void deepNestingIsRefused(String opening) {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> parse(opening.repeat(60_000 / opening.length())))
        .withMessage("my.yaml, line 1: lists and keys are nested too deeply; correct the brackets");
  }

  @Test
  void aCommentOfAnyTextIsOneLineThatIsRead() {
    String words = "a\nb: 1\r\n\u0085c: 2\u2028d: 3\u2029\te \u0000\u001b\ud83c x 𝄞 é";
    String comment = UserText.comment(words);
    assertThat(comment).startsWith("# a?b: 1??").endsWith("x 𝄞 é\n").hasLineCount(1);
    assertThat(parse(comment + "key: 1\n")).isEqualTo(parse("\nkey: 1\n"));
  }
}
