package fingering.abc;

import static fingering.abc.Typed.refusal;
import static fingering.abc.Typed.written;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.abc.syntax.AbcException;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.ScoreReader;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files, headers and fields. Structure of a file: ABC standard 2.1, from memory. */
class TunebookTest {
  private static final String TWO =
      """
      %abc-2.1
      M:3/4
      L:1/4

      Some words about these tunes.

      X:1
      T:The Eel
      C:nobody
      K:D
      ABc|

      X:7
      T:The Reed
      T:a second title
      M:2/4
      K:F clef=alto
      AB|
      """;

  private static String title(TuneScore written) {
    return ScoreReader.read(ScoreFile.of(written.musicXml(), written.remarks())).title();
  }

  @Test
  void tunesAreChosenByTheirNumbers() {
    Tunebook book = Tunebook.parse("two.abc", TWO);

    assertThat(book.tunes()).containsExactly("1 The Eel", "7 The Reed");
    assertThat(title(book.choose(Optional.of("1")))).isEqualTo("The Eel");
    assertThat(title(book.choose(Optional.of("7")))).isEqualTo("The Reed");
    assertThatThrownBy(() -> book.choose(Optional.empty()))
        .isInstanceOf(AbcException.class)
        .hasMessage("two.abc holds 2 tunes; choose one with --tune: 1 The Eel, 7 The Reed");
    assertThatThrownBy(() -> book.choose(Optional.of("2")))
        .isInstanceOf(AbcException.class)
        .hasMessage("two.abc holds no tune 2; choose one with --tune: 1 The Eel, 7 The Reed");
  }

  @Test
  void theHeaderOfTheFileHoldsForAllItsTunes() {
    Tunebook book = Tunebook.parse("two.abc", TWO);
    assertThat(book.choose(Optional.of("1")).musicXml())
        .containsSubsequence("<beats>3<", "<type>quarter<");
    assertThat(book.choose(Optional.of("7")).musicXml())
        .containsSubsequence("<beats>2<", "<type>quarter<");
  }

  @Test
  void twoTunesOfOneNumberAreRefused() {
    Tunebook book = Tunebook.parse("two.abc", TWO.replace("X:7", "X:1"));
    assertThatThrownBy(() -> book.choose(Optional.of("1")))
        .isInstanceOf(AbcException.class)
        .hasMessageContaining("2 tunes with the number 1");
  }

  @Test
  void whatStandsBehindAnEmptyLineIsLeftOutAndTold() {
    assertThat(written("X:1\nM:3/4\nL:1/4\nK:C clef=treble\nABc|\n\ndef|").remarks())
        .containsExactly("the tune ends at an empty line; line 7 and what follows is left out");
  }

  @Test
  void aTuneWithoutHeaderIsReadAndToldWhatWasTaken() {
    assertThat(written("A2 B2|").remarks())
        .containsExactly(
            "the tune names no number (X:), meter (M:), note length (L:), key (K:) or clef; free"
                + " meter, eighths, C major and the treble clef are taken");
    assertThat(written("M:2/4\nK:D alto\nA2 B2|").remarks())
        .contains("the tune names no number (X:) or note length (L:); sixteenths are taken");
    assertThat(written("X:1\nM:2/4\nL:1/8\nK:D\nA2 B2|").remarks())
        .containsExactly("the tune names no clef; the treble clef is taken");
  }

  @Test
  void fieldsThatOnlyInformAndRemarksChangeNothing() {
    String notes = written("X:1\nK:C\nA2 B2|\n").musicXml();
    assertThat(
            written(
                    "X:1\nA:x\nB:x\nD:x\nF:x\nG:x\nH:x\nN:x\nO:x\nR:x\nr:x\nS:x\nZ:x\nI:abc-charset utf-8\n%%stretch 1\nK:C\nA2 % one\n% two\nN:x\n[r:x]B2|\n")
                .musicXml())
        .isEqualTo(notes);
  }

  @Test
  void theScoreNamesTitleComposerAndVoice() {
    assertThat(
            written("X:1\nT:Eels & <Reeds>\nC:nobody\nV:1 name=\"Violin 2\"\nK:C\n[V:1]A|\nV:1\nB|")
                .musicXml())
        .contains(
            "<work-title>Eels &amp; &lt;Reeds&gt;<", ">nobody<", "<part-name>Violin 2</part-name>");
  }

  @Test
  void linesMayEndAsOnAnySystem() {
    String unix = "X:1\nK:C\nA2\\\nB2|";
    assertThat(written(unix.replace("\n", "\r\n"))).isEqualTo(written(unix));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n\t\n", "% a remark\n", "%%stretch 1"})
  void aTextWithoutATuneIsRefused(String text) {
    assertThat(refusal(text)).isEqualTo(" holds no tune: type some notes, as in K:D and D2 FA d4.");
  }

  @ParameterizedTest
  @CsvSource({
    "K:C|, 1, 4, the tune ends here without a note",
    "K:C|A||B, 4, 1, an empty line ends a tune",
    "T:x|X:1|K:C|A, 1, 1, a tune begins with X:",
    "V:1|V:2|K:C|A, 2, 1, a second voice '2' begins here",
    "V:1|K:C|A[V:2]B, 3, 3, a second voice '2' begins here",
    "K:C|A|V:2|B, 3, 1, a second voice '2' begins here",
    "K:C|A|m:x=A, 3, 1, macros (m:) are not read",
    "K:C|A|s:x, 3, 1, lines of symbols (s:) are not read",
    "K:C|+:x|A, 2, 1, a field cannot be continued",
    "U:a=!trill!|K:C|A, 1, 3, 'a=!trill!' gives no letter a sign",
    "U:W=!fun!|K:C|A, 1, 3, !fun! is no sign",
    "%%propagate-accidentals far|K:C|A, 1, 3, 'accidentals propagate not, octave or pitch'",
    "V:1 name=\"x|K:C|A, 1, 5, the name that begins here has no end",
    "K:C|A\u0007B, 2, 2, a character stands here that cannot be printed",
  })
  void whatCannotBeReadIsNamedWithLineAndColumn(String abc, int line, int column, String told) {
    assertThat(refusal(abc.replace("|", "\n")))
        .startsWith(", line %d, column %d: %s".formatted(line, column, told));
  }
}
