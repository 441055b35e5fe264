package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoteNamesTest {
  @Provide
  Arbitrary<NoteNames> languages() {
    return Arbitraries.of(NoteNames.all());
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void everyNoteIsReadBackFromItsName(
      @ForAll("languages") NoteNames names,
      @ForAll Letter letter,
      @ForAll @IntRange(min = -2, max = 2) int alter,
      @ForAll @IntRange(min = 0, max = 9) int octave) {
    NoteNames.Note note = new NoteNames.Note(letter, alter);
    assertThat(names.note(names.name(note))).isEqualTo(note);
    assertThat(names.note(names.name(note).toUpperCase(Locale.ROOT))).isEqualTo(note);
    assertThat(Pitch.parse(names.pitch(names.name(note) + octave)))
        .isEqualTo(new Pitch(letter, alter, octave));
    assertThat(NoteNames.parse(names.toString()).name(note)).isEqualTo(names.name(note));
  }

  // Common practice, no source.
  @ParameterizedTest
  @CsvSource({
    "de, H, B",
    "de, B, Bb",
    "de, Fis, F#",
    "de, es, Eb",
    "de, As, Ab",
    "de, Ces, Cb",
    "de, Heses, Bbb",
    "de, Asas, Abb",
    "de, Cisis, C##",
    "de, his, B#",
    "fr, ut, C",
    "fr, ré, D",
    "fr, re, D",
    "fr, si bémol, Bb",
    "fr, Fa dièse, F#",
    "fr, fa#, F#",
    "fr, sol double dièse, G##",
    "fr, mi b, Eb",
    "it, si bemolle, Bb",
    "it, do diesis, C#",
    "it, la doppio bemolle, Abb",
    "es, sol sostenido, G#",
    "es, re bemol, Db",
    "en, B, B",
    "en, B flat, Bb",
    "en, f♯, F#",
    "en, Fx, F##"
  })
  void noteNamesAreTranslated(String language, String typed, String english) {
    assertThat(NoteNames.parse(language).note(typed)).hasToString(english);
  }

  // Common practice, no source.
  @ParameterizedTest
  @CsvSource({
    "de, H-Dur, B major",
    "de, B-Dur, Bb major",
    "de, fis-Moll, F# minor",
    "de, a-Moll harmonisch, A harmonic minor",
    "de, g natürlich Moll, G natural minor",
    "de, chromatische Tonleiter auf H, B chromatic",
    "de, Dominantseptakkord auf Es, Eb dominant seventh",
    "fr, ré majeur, D major",
    "fr, gamme de si bémol majeur, Bb major",
    "fr, ut mineur harmonique, C harmonic minor",
    "fr, arpège de la mineur, A minor arpeggio",
    "fr, septième de dominante sur la, A dominant seventh",
    "it, do maggiore, C major",
    "it, fa diesis minore melodica, F# melodic minor",
    "es, mi bemol mayor, Eb major",
    "es, escala de sol menor armónica, G harmonic minor"
  })
  void scaleNamesAreTranslated(String language, String typed, String english) {
    NoteNames names = NoteNames.parse(language);
    assertThat(names.scale(typed)).isEqualTo(english);
    assertThat(NoteNames.all().stream().filter(each -> each.isScale(typed)).findFirst())
        .map(NoteNames::toString)
        .contains(language);
  }

  @Test
  void unknownNamesAreRefusedWithExamples() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> NoteNames.parse("de").scale("J-Dur"))
        .withMessageContaining("'H-Dur'");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> NoteNames.parse("fr").note("H"))
        .withMessageContaining("'si bémol'");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> NoteNames.parse("nl"))
        .withMessageContaining("choose en, de, fr, it, es");
  }

  @Test
  void aNoteNeedsNoOctaveAndANumberAloneStaysAsItIs() {
    NoteNames german = NoteNames.parse("de");
    assertThat(german.pitch(" H ")).isEqualTo("B");
    assertThat(german.pitch("H3")).isEqualTo("B3");
    assertThat(german.pitch(" 3 ")).isEqualTo("3");
  }

  @Test
  void aKeyOfAnotherLanguageCannotBeRead() {
    assertThat(NoteNames.parse("de").isScale("H-Dur")).isTrue();
    assertThat(NoteNames.parse("fr").isScale("H-Dur")).isFalse();
  }

  @Test
  void doubleSharpsAndDoubleFlatsAreTheLargestAlterations() {
    assertThat(new NoteNames.Note(Letter.F, 2)).hasToString("F##");
    assertThat(new NoteNames.Note(Letter.B, -2)).hasToString("Bbb");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new NoteNames.Note(Letter.F, 3));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new NoteNames.Note(Letter.B, -3));
  }
}
