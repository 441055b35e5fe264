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
        .hasMessage("two.abc contains 2 tunes; choose one: 1 The Eel, 7 The Reed");
    assertThatThrownBy(() -> book.choose(Optional.of("2")))
        .isInstanceOf(AbcException.class)
        .hasMessage("two.abc contains no tune 2; choose one: 1 The Eel, 7 The Reed");
  }

  @Test
  void theFileHeaderAppliesToAllTunes() {
    Tunebook book = Tunebook.parse("two.abc", TWO);
    assertThat(book.choose(Optional.of("1")).musicXml())
        .containsSubsequence("<beats>3<", "<type>quarter<");
    assertThat(book.choose(Optional.of("7")).musicXml())
        .containsSubsequence("<beats>2<", "<type>quarter<");
  }

  @Test
  void twoTunesWithOneNumberAreRefused() {
    Tunebook book = Tunebook.parse("two.abc", TWO.replace("X:7", "X:1"));
    assertThatThrownBy(() -> book.choose(Optional.of("1")))
        .isInstanceOf(AbcException.class)
        .hasMessageContaining("2 tunes with the number 1");
  }

  @Test
  void textAfterAnEmptyLineIsLeftOutWithARemark() {
    assertThat(written("X:1\nM:3/4\nL:1/4\nK:C clef=treble\nABc|\n\ndef|").remarks())
        .containsExactly("the tune ends at an empty line; the text from line 7 on is left out");
  }

  @Test
  void aTuneWithoutHeaderIsReadWithARemark() {
    assertThat(written("A2 B2|").remarks())
        .containsExactly(
            "the tune has no number (X:), meter (M:), note length (L:), key (K:) or clef; free"
                + " meter, eighths, C major and the treble clef are assumed");
    assertThat(written("M:2/4\nK:D alto\nA2 B2|").remarks())
        .contains("the tune has no number (X:) or note length (L:); sixteenths are assumed");
    assertThat(written("X:1\nM:2/4\nL:1/8\nK:D\nA2 B2|").remarks())
        .containsExactly("the tune has no clef; the treble clef is assumed");
  }

  @Test
  void informationFieldsAndCommentsChangeNothing() {
    String notes = written("X:1\nK:C\nA2 B2|\n").musicXml();
    assertThat(
            written(
                    "X:1\nA:x\nB:x\nD:x\nF:x\nG:x\nH:x\nN:x\nO:x\nR:x\nr:x\nS:x\nZ:x\nI:abc-charset utf-8\n%%stretch 1\nK:C\nA2 % one\n% two\nN:x\n[r:x]B2|\n")
                .musicXml())
        .isEqualTo(notes);
  }

  @Test
  void theScoreHasTitleComposerAndVoice() {
    assertThat(
            written("X:1\nT:Eels & <Reeds>\nC:nobody\nV:1 name=\"Violin 2\"\nK:C\n[V:1]A|\nV:1\nB|")
                .musicXml())
        .contains(
            "<work-title>Eels &amp; &lt;Reeds&gt;<", ">nobody<", "<part-name>Violin 2</part-name>");
  }

  @Test
  void linesMayEndAsOnAnyOperatingSystem() {
    String unix = "X:1\nK:C\nA2\\\nB2|";
    assertThat(written(unix.replace("\n", "\r\n"))).isEqualTo(written(unix));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n\t\n", "% a remark\n", "%%stretch 1"})
  void aTextWithoutATuneIsRefused(String text) {
    assertThat(refusal(text))
        .isEqualTo(" contains no tune: type some notes, such as D2 FA d4 below K:D.");
  }
}
