package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Notes, keys and scales typed in the names of several languages. */
class NoteNamesOptionTest {
  private static String scale(String... more) {
    Object[] words = new Object[more.length + 3];
    words[0] = "scale";
    System.arraycopy(more, 0, words, 1, more.length);
    words[more.length + 1] = "--instrument";
    words[more.length + 2] = "violin";
    return Session.of(words).succeeded().lines().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "H-Dur, B major",
    "B-Dur, B♭ major",
    "Bb major, B♭ major",
    "B major, B major",
    "fis-Moll, F♯ melodic minor",
    "ut majeur, C major",
    "sol minore armonica, G harmonic minor",
    "escala de re mayor, D major"
  })
  void theLanguageOfAScaleIsRecognized(String typed, String title) {
    assertThat(scale(typed.split(" "))).startsWith(title);
  }

  @Test
  void theStartIsReadInTheLanguageOfTheScale() {
    assertThat(scale("B-Dur", "--from", "B3")).startsWith("B♭ major");
    assertThat(scale("H-Dur", "--from", "H3")).startsWith("B major");
    assertThat(scale("ré majeur", "--from", "ré4")).startsWith("D major");
    assertThat(scale("H-Dur", "--from", "4", "--octaves", "1")).startsWith("B major");
  }

  @Test
  void aKeyAndAStringAreRead() {
    String english = Session.of("chart", "violin", "--key", "Bb-major").succeeded().out();
    assertThat(Session.of("chart", "violin", "--key", "B-Dur").succeeded().out())
        .isEqualTo(english);
    assertThat(Session.of("chart", "violin", "--key", "si bémol majeur").succeeded().out())
        .isEqualTo(english);
    assertThat(Session.of("chart", "violin", "--string", "sol", "--note-names", "it"))
        .isEqualTo(Session.of("chart", "violin", "--string", "G"));
    assertThat(Session.of("chart", "violin", "--string", "IV", "--note-names", "it"))
        .isEqualTo(Session.of("chart", "violin", "--string", "G"));
  }

  @Test
  void aWrongNameIsReportedInItsLanguage() {
    assertThat(
            Session.of("chart", "violin", "--key", "D-major", "--note-names", "de")
                .refused(2)
                .err())
        .contains("--key: 'D-major' is not a scale or key in note names 'de'", "'H-Dur'");
    assertThat(Session.of("scale", "D", "major", "--note-names", "klingon").refused(2).err())
        .contains("choose en, de, fr, it, es");
  }
}
