package fingering.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.tables.FingeringException;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Names of notes and key signatures against the tables of a handbook of theory: S. Kostka, D.
 * Payne, Tonal Harmony, the chapters on pitch and on seventh chords; from memory.
 */
class ScaleTest {
  private static final int OCTAVE = 4;

  @ParameterizedTest
  @CsvSource({
    "C, 0, C D E F G A B",
    "G, 1, G A B C D E F#",
    "D, 2, D E F# G A B C#",
    "A, 3, A B C# D E F# G#",
    "E, 4, E F# G# A B C# D#",
    "B, 5, B C# D# E F# G# A#",
    "F#, 6, F# G# A# B C# D# E#",
    "C#, 7, C# D# E# F# G# A# B#",
    "F, -1, F G A Bb C D E",
    "Bb, -2, Bb C D Eb F G A",
    "Eb, -3, Eb F G Ab Bb C D",
    "Ab, -4, Ab Bb C Db Eb F G",
    "Db, -5, Db Eb F Gb Ab Bb C",
    "Gb, -6, Gb Ab Bb Cb Db Eb F",
    "Cb, -7, Cb Db Eb Fb Gb Ab Bb"
  })
  void everyMajorScaleHasItsSignatureAndItsNotes(String tonic, int signs, String notes) {
    Scale scale = Scale.parse(tonic + " major");

    assertThat(scale.signs()).isEqualTo(signs);
    assertThat(up(scale)).isEqualTo(notes + " " + tonic);
    assertThat(down(scale)).isEqualTo(backwards(notes + " " + tonic));
  }

  // The natural notes, then the raised sixth and the raised seventh.
  @ParameterizedTest
  @CsvSource({
    "A, 0, A B C D E F G, F# G#",
    "E, 1, E F# G A B C D, C# D#",
    "B, 2, B C# D E F# G A, G# A#",
    "F#, 3, F# G# A B C# D E, D# E#",
    "C#, 4, C# D# E F# G# A B, A# B#",
    "G#, 5, G# A# B C# D# E F#, E# F##",
    "D#, 6, D# E# F# G# A# B C#, B# C##",
    "A#, 7, A# B# C# D# E# F# G#, F## G##",
    "D, -1, D E F G A Bb C, B C#",
    "G, -2, G A Bb C D Eb F, E F#",
    "C, -3, C D Eb F G Ab Bb, A B",
    "F, -4, F G Ab Bb C Db Eb, D E",
    "Bb, -5, Bb C Db Eb F Gb Ab, G A",
    "Eb, -6, Eb F Gb Ab Bb Cb Db, C D",
    "Ab, -7, Ab Bb Cb Db Eb Fb Gb, F G"
  })
  void everyMinorScaleHasItsThreeForms(String tonic, int signs, String notes, String raised) {
    List<String> all = List.of(notes.split(" ", -1));
    String start = String.join(" ", all.subList(0, 5)) + " ";
    String natural = notes + " " + tonic;
    String harmonic = start + all.get(5) + " " + raised.split(" ", -1)[1] + " " + tonic;

    Scale scale = Scale.parse(tonic + " natural minor");
    assertThat(scale.signs()).isEqualTo(signs);
    assertThat(up(scale)).isEqualTo(natural);
    assertThat(down(scale)).isEqualTo(backwards(natural));
    scale = Scale.parse(tonic + " harmonic minor");
    assertThat(scale.signs()).isEqualTo(signs);
    assertThat(up(scale)).isEqualTo(harmonic);
    assertThat(down(scale)).isEqualTo(backwards(harmonic));
    scale = Scale.parse(tonic + " melodic minor");
    assertThat(scale.signs()).isEqualTo(signs);
    assertThat(up(scale)).isEqualTo(start + raised + " " + tonic);
    assertThat(down(scale)).isEqualTo(backwards(natural));
  }

  // The root of a dominant seventh is the fifth degree of its key.
  @ParameterizedTest
  @CsvSource({
    "G dominant seventh, 0, G B D F G",
    "A dominant seventh, 2, A C# E G A",
    "F# dominant seventh, 5, F# A# C# E F#",
    "C# dominant seventh, 6, C# E# G# B C#",
    "G# dominant seventh, 7, G# B# D# F# G#",
    "C dominant seventh, -1, C E G Bb C",
    "Bb dominant seventh, -3, Bb D F Ab Bb",
    "Gb dominant seventh, -7, Gb Bb Db Fb Gb",
    "C# diminished seventh, 0, C# E G Bb C#",
    "B diminished seventh, 0, B D F Ab B",
    "F# diminished seventh, 0, F# A C Eb F#",
    "E# diminished seventh, 0, E# G# B D E#",
    "C diminished seventh, 0, C Eb Gb Bbb C",
    "D major arpeggio, 2, D F# A D",
    "Db major arpeggio, -5, Db F Ab Db",
    "G# minor arpeggio, 5, G# B D# G#",
    "C minor arpeggio, -3, C Eb G C"
  })
  void chordsAreSpelledInThirds(String name, int signs, String notes) {
    Scale scale = Scale.parse(name);

    assertThat(scale.signs()).isEqualTo(signs);
    assertThat(up(scale)).isEqualTo(notes);
    assertThat(down(scale)).isEqualTo(backwards(notes));
  }

  // sharps upward and flats downward: common practice, no source
  @ParameterizedTest
  @CsvSource({
    "C, C C# D D# E F F# G G# A A# B C, C B Bb A Ab G Gb F E Eb D Db C",
    "Bb, Bb B C C# D D# E F F# G G# A Bb, Bb A Ab G Gb F E Eb D Db C B Bb",
    "F#, F# G G# A A# B C C# D D# E F F#, F# F E Eb D Db C B Bb A Ab G F#"
  })
  void chromaticScaleGoesUpInSharpsAndDownInFlats(String tonic, String up, String down) {
    Scale scale = Scale.parse("chromatic on " + tonic);

    assertThat(scale.signs()).isZero();
    assertThat(up(scale)).isEqualTo(up);
    assertThat(down(scale)).isEqualTo(down);
  }

  @ParameterizedTest
  @EnumSource(ScaleKind.class)
  void scaleRisesThroughItsOctaves(ScaleKind kind) {
    Scale scale = new Scale(kind, Letter.D, 0);
    List<Pitch> up = scale.up(scale.tonic(OCTAVE), 3);
    List<Pitch> down = scale.down(scale.tonic(OCTAVE), 3);

    assertThat(up).hasSize(3 * kind.notesInOctave() + 1);
    assertThat(up.stream().map(Pitch::midi)).isSorted().doesNotHaveDuplicates();
    assertThat(down.get(0)).isEqualTo(up.get(up.size() - 1)).isEqualTo(Pitch.parse("D7"));
    assertThat(down.get(down.size() - 1)).isEqualTo(up.get(0)).isEqualTo(Pitch.parse("D4"));
  }

  @ParameterizedTest
  @EnumSource(ScaleKind.class)
  void everyScaleReadsItsOwnName(ScaleKind kind) {
    int scales = 0;
    for (Letter letter : Letter.values()) {
      for (int alter = -1; alter <= 1; alter++) {
        try {
          Scale scale = new Scale(kind, letter, alter);
          scales++;
          assertThat(Scale.parse(scale.toString())).isEqualTo(scale);
          assertThat(Scale.parse(scale.display())).isEqualTo(scale);
        } catch (FingeringException e) {
          assertThat(e).hasMessageContaining("seven sharps or flats");
        }
      }
    }
    assertThat(scales).isGreaterThanOrEqualTo(15);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "B♭ melodic minor",
        "b-flat melodic minor",
        "Bb minor",
        " bb MINOR scale ",
        "B flat minor melodic"
      })
  void scaleIsReadAsPlayersWriteIt(String text) {
    assertThat(Scale.parse(text)).isEqualTo(new Scale(ScaleKind.MELODIC_MINOR, Letter.B, -1));
  }

  @Test
  void chordsAreNamedByTheirRootInEitherOrder() {
    Scale chord = new Scale(ScaleKind.DOMINANT_SEVENTH, Letter.A, 0);

    assertThat(Scale.parse("dominant 7th on A")).isEqualTo(chord);
    assertThat(Scale.parse("A dominant seventh arpeggio")).isEqualTo(chord);
    assertThat(chord.display()).isEqualTo("Dominant seventh on A");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "D", "major", "H major", "D lydian", "D arpeggio", "seventh on D"})
  void unknownScaleIsRefusedWithTheKinds(String text) {
    assertThatThrownBy(() -> Scale.parse(text))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("'" + text + "' is not a scale")
        .hasMessageContaining("melodic minor, chromatic, major arpeggio");
  }

  // The enharmonic keys, as above.
  @ParameterizedTest
  @CsvSource({
    "G# major, Ab major",
    "D# major, Eb major",
    "Fb major, E major",
    "Gb harmonic minor, F# harmonic minor",
    "D# dominant seventh, Eb dominant seventh"
  })
  void keyBeyondSevenSignsIsRefusedWithItsEnharmonicName(String text, String other) {
    assertThatThrownBy(() -> Scale.parse(text))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("seven sharps or flats")
        .hasMessageEndingWith("write the same notes as " + other);
  }

  @Test
  void scaleStartsOnlyOnItsTonic() {
    Scale scale = Scale.parse("Eb major");

    assertThat(scale.start("4")).isEqualTo(Pitch.parse("Eb4"));
    assertThat(scale.start("E♭5")).isEqualTo(Pitch.parse("Eb5"));
    assertThatThrownBy(() -> scale.start("D#4"))
        .hasMessage("E♭ major does not start on D♯4; start on E♭4");
  }

  private static String up(Scale scale) {
    return names(scale.up(scale.tonic(OCTAVE), 1));
  }

  private static String down(Scale scale) {
    return names(scale.down(scale.tonic(OCTAVE), 1));
  }

  private static String names(List<Pitch> pitches) {
    return pitches.stream()
        .map(pitch -> pitch.toString().replaceAll("\\d", ""))
        .collect(Collectors.joining(" "));
  }

  private static String backwards(String names) {
    List<String> all = new java.util.ArrayList<>(List.of(names.split(" ", -1)));
    java.util.Collections.reverse(all);
    return String.join(" ", all);
  }
}
