package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.tables.Instruments;
import fingering.tables.Tuning;
import fingering.userfile.UserFileException;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuningFileTest {
  private static final String OPEN_G =
      """
      # tuned for an open fifth
      instrument: cello
      name: open-g
      strings:
        - G3
        - D3
        - G2
        - D2 down to C2   # at home
      """;

  private static Tuning read(String text) {
    return TuningFile.parse("own.yaml", text, Instruments.standard());
  }

  private static String strings(Tuning tuning) {
    return tuning.strings().stream()
        .map(string -> string.pitch().toString())
        .collect(Collectors.joining(" "));
  }

  @Test
  void aTuningHasAnInstrumentANameAndStrings() {
    Tuning tuning = read(OPEN_G);
    assertThat(tuning.instrument()).isEqualTo("cello");
    assertThat(tuning.name()).isEqualTo("open-g");
    assertThat(strings(tuning)).isEqualTo("G3 D3 G2 D2");
    assertThat(tuning.strings().get(2).lowest()).hasToString("G2");
    assertThat(tuning.strings().get(3).lowest()).hasToString("C2");
    assertThat(read(OPEN_G.replace("\n", "\r\n"))).isEqualTo(tuning);
  }

  @Test
  void stringsMayStandInOneLine() {
    Tuning tuning = read(OPEN_G);
    String start = "instrument: cello\nname: open-g\nstrings: ";
    assertThat(read(start + "[G3, D3, G2, D2 down to C2]")).isEqualTo(tuning);
    assertThat(read(start + "G3, D3, G2, D2 down to C2")).isEqualTo(tuning);
    assertThat(strings(read("instrument: bass\nstrings: [A2, E2, B1, F#1]")))
        .isEqualTo("A2 E2 B1 F#1");
  }

  @ParameterizedTest
  @CsvSource({
    "own.yaml, own",
    "My Tuning.yaml, my-tuning",
    "'folder.d/open g', open-g",
    "'C:\\x\\a-e.yml', a-e",
    ".yaml, yaml",
    "'', own"
  })
  void withoutANameTheTuningIsNamedAfterItsFile(String file, String name) {
    String text = "instrument: cello\nstrings: [G3, D3, G2, D2]";
    assertThat(TuningFile.parse(file, text, Instruments.standard()).name()).isEqualTo(name);
  }

  /** Replaces the first of the texts by the second and expects the message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "- G2; - H2; 7: 'H2' is not a pitch",
        "- D3; - A3; 6: string 2 (A3) is not lower than string 1 (G3); string 1 is the highest",
        "- D3; - G3; 6: string 2 (G3) is not lower",
        "down to C2; down to E2; 8: an extension leads down",
        "down to C2; down to nowhere; 8: 'nowhere' is not a pitch",
        "D2 down to C2; D2 down; 8: 'D2 down' is not a pitch",
        "instrument: cello; instrument: kazoo; 2: no instrument 'kazoo'; known are violin, viola, cello, bass",
        "instrument: cello; ''; 3: 'instrument' is missing; add it, such as 'instrument: viola'",
        "name: open-g; name: Open G; 3: 'Open G' is not a name for a tuning",
        "name: open-g; name: standard; 3: 'standard' is the name of another tuning of the cello; give yours another name",
        "name: open-g; title: open-g; 3: there is no key 'title' in a tuning file; choose from instrument, strings, name",
        "strings:; string:; 4: there is no key 'string'; did you mean 'strings', such as 'strings: [A4, D4, G3, C3]'?"
      })
  void whatDoesNotFitIsNamedWithFileAndLine(String from, String to, String why) {
    assertThat(OPEN_G).contains(from);
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> read(OPEN_G.replace(from, to)))
        .withMessageStartingWith("own.yaml, line " + why);
  }

  @Test
  void aFileNamedAsATuningNeedsAName() {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(
            () ->
                TuningFile.parse(
                    "five-string.yaml",
                    "instrument: cello\nstrings: [G3, D3, G2, D2]",
                    Instruments.standard()))
        .withMessage(
            "five-string.yaml, line 1: 'five-string' is the name of another tuning of the cello;"
                + " give yours another name, such as 'name: my-tuning'");
  }

  @ParameterizedTest
  @CsvSource({"''", "'\n\n'", "'# only a comment'"})
  void aTextWithoutATuningIsRefused(String text) {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> read(text))
        .withMessage("own.yaml, line 1: the file is empty; write keys and values into it");
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void aTextCutShortIsReadOrRefusedInASentence(@ForAll @IntRange(max = 130) int end) {
    String cut = OPEN_G.substring(0, Math.min(end, OPEN_G.length()));
    try {
      assertThat(read(cut).strings()).hasSizeBetween(1, 4);
    } catch (UserFileException e) {
      assertThat(e.getMessage()).startsWith("own.yaml, line ").doesNotContain("null");
    }
  }
}
