package fingering.exercise;

import com.google.common.collect.ImmutableList;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of scales and arpeggios. */
public enum ScaleKind {
  /** The major scale. */
  MAJOR("major", Letters.ALL, steps(0, 2, 4, 5, 7, 9, 11)),
  /** The minor scale with the notes of its key signature. */
  NATURAL_MINOR("natural minor", Letters.ALL, steps(0, 2, 3, 5, 7, 8, 10)),
  /** The minor scale with a raised seventh. */
  HARMONIC_MINOR("harmonic minor", Letters.ALL, steps(0, 2, 3, 5, 7, 8, 11)),
  /** The minor scale with raised sixth and seventh when rising, natural when falling. */
  MELODIC_MINOR(
      "melodic minor", Letters.ALL, steps(0, 2, 3, 5, 7, 9, 11), steps(0, 2, 3, 5, 7, 8, 10)),
  /** Every semitone, with sharps when rising and flats when falling. */
  CHROMATIC("chromatic", Letters.NONE, steps(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11)),
  /** The major triad. */
  MAJOR_ARPEGGIO("major arpeggio", Letters.TRIAD, steps(0, 4, 7)),
  /** The minor triad. */
  MINOR_ARPEGGIO("minor arpeggio", Letters.TRIAD, steps(0, 3, 7)),
  /** The major triad with a minor seventh, named after its root. */
  DOMINANT_SEVENTH("dominant seventh", Letters.SEVENTH, steps(0, 4, 7, 10)),
  /** The diminished triad with a diminished seventh. */
  DIMINISHED_SEVENTH("diminished seventh", Letters.SEVENTH, steps(0, 3, 6, 9));

  private final String words;
  private final ImmutableList<Integer> letters;
  private final ImmutableList<Integer> up;
  private final ImmutableList<Integer> down;

  ScaleKind(String words, ImmutableList<Integer> letters, ImmutableList<Integer> up) {
    this(words, letters, up, up);
  }

  ScaleKind(
      String words,
      ImmutableList<Integer> letters,
      ImmutableList<Integer> up,
      ImmutableList<Integer> down) {
    this.words = words;
    this.letters = letters;
    this.up = up;
    this.down = down;
  }

  private static ImmutableList<Integer> steps(Integer... semitones) {
    return ImmutableList.copyOf(semitones);
  }

  /** The letter names of kinds, counted from the tonic. */
  private static final class Letters {
    static final ImmutableList<Integer> ALL = steps(0, 1, 2, 3, 4, 5, 6);
    static final ImmutableList<Integer> TRIAD = steps(0, 2, 4);
    static final ImmutableList<Integer> SEVENTH = steps(0, 2, 4, 6);

    /** For kinds whose spelling does not follow degrees. */
    static final ImmutableList<Integer> NONE = steps();
  }

  /** The name of the kind: {@code harmonic minor}. */
  public String label() {
    return words;
  }

  /** The names of all kinds, separated by commas. */
  static String all() {
    return Stream.of(values()).map(ScaleKind::label).collect(Collectors.joining(", "));
  }

  /** The number of notes in an octave, 3 to 12. */
  public int notesInOctave() {
    return up.size();
  }

  /** Whether it is a seven-note scale. */
  public boolean sevenNotes() {
    return letters.equals(Letters.ALL);
  }

  /** Whether the name puts the kind before the first note, as in the chromatic scale on C. */
  boolean kindFirst() {
    return this == CHROMATIC || this == DOMINANT_SEVENTH || this == DIMINISHED_SEVENTH;
  }

  /** The letter names from the tonic to a degree of the first octave; not for chromatic scales. */
  int letters(int degree) {
    return letters.get(degree);
  }

  /** The semitones from the tonic to a degree of the first octave. */
  int semitones(int degree, boolean rising) {
    return (rising ? up : down).get(degree);
  }
}
