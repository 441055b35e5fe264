package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A key with at most seven sharps or flats.
 *
 * @param letter letter of the tonic
 * @param alter semitones by which the tonic is raised, -1 to 1
 * @param mode major or minor
 */
public record Key(Letter letter, int alter, Mode mode) {
  private static final Pattern NAME =
      Pattern.compile("([a-g])(?:[- ]?(sharp|flat|#|♯|b|♭))?[- ]?(major|minor)");

  private static final int OCTAVE_OF_TONIC = 4;
  private static final int MAX_SIGNS = 7;
  private static final int SIXTH = 5;
  private static final int SEVENTH = 6;

  /** The mode of a key. */
  public enum Mode {
    /** The major scale. */
    MAJOR(0, 2, 4, 5, 7, 9, 11),
    /** The natural minor scale; {@link Key#raised()} has the raised notes. */
    MINOR(0, 2, 3, 5, 7, 8, 10);

    private final ImmutableList<Integer> steps;

    Mode(Integer... steps) {
      this.steps = ImmutableList.copyOf(steps);
    }
  }

  /**
   * Checks the components.
   *
   * @throws FingeringException if the key would have more than seven sharps or flats
   */
  public Key {
    int signs = signs(letter, alter, mode);
    if (Math.abs(alter) > 1 || Math.abs(signs) > MAX_SIGNS) {
      throw new FingeringException(
          "a key has at most seven sharps or flats, not " + Math.abs(signs));
    }
  }

  /**
   * Reads a key, for example {@code D-major}, {@code g minor}, {@code F#-major} or {@code
   * B-flat-major}. Case does not matter.
   *
   * @throws FingeringException if the text is not a key with at most seven sharps or flats
   */
  public static Key parse(String text) {
    Matcher matcher = NAME.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw unknown(text);
    }
    int alter =
        switch (Optional.ofNullable(matcher.group(2)).orElse("")) {
          case "" -> 0;
          case "sharp", "#", "♯" -> 1;
          default -> -1;
        };
    Letter letter = Letter.valueOf(matcher.group(1).toUpperCase(Locale.ROOT));
    Mode mode = Mode.valueOf(matcher.group(3).toUpperCase(Locale.ROOT));
    if (Math.abs(signs(letter, alter, mode)) > MAX_SIGNS) {
      throw unknown(text);
    }
    return new Key(letter, alter, mode);
  }

  private static FingeringException unknown(String text) {
    return new FingeringException(
        "'"
            + text
            + "' is not a key; write tonic and mode, such as D-major, Bb-major or F#-minor, with"
            + " at most seven sharps or flats");
  }

  /** Number of sharps, negative for flats, from the circle of fifths. */
  private static int signs(Letter letter, int alter, Mode mode) {
    // F is a fifth below C; each letter of F C G D A E B is a fifth above the one before it.
    int fifths = "FCGDAEB".indexOf(letter.name()) - 1;
    return fifths + MAX_SIGNS * alter - (mode == Mode.MINOR ? 3 : 0);
  }

  /** Number of sharps in the key signature, negative for flats, -7 to 7. */
  public int signs() {
    return signs(letter, alter, mode);
  }

  /**
   * The seven notes of the scale, natural minor in minor, up from the tonic in the fourth octave.
   */
  public ImmutableList<Pitch> scale() {
    Pitch tonic = new Pitch(letter, alter, OCTAVE_OF_TONIC);
    ImmutableList.Builder<Pitch> notes = ImmutableList.builder();
    for (int degree = 0; degree < mode.steps.size(); degree++) {
      notes.add(
          Pitch.spelled(tonic.letterNumber() + degree, tonic.midi() + mode.steps.get(degree)));
    }
    return notes.build();
  }

  /**
   * The raised sixth and seventh degrees of a minor key, which lead up to the tonic; none in major.
   */
  public ImmutableList<Pitch> raised() {
    if (mode == Mode.MAJOR) {
      return ImmutableList.of();
    }
    ImmutableList<Pitch> scale = scale();
    return ImmutableList.of(raised(scale.get(SIXTH)), raised(scale.get(SEVENTH)));
  }

  private static Pitch raised(Pitch pitch) {
    return Pitch.spelled(pitch.letterNumber(), pitch.midi() + 1);
  }

  /** The note of the scale with that MIDI number; empty if the scale has none. */
  public Optional<Pitch> spelled(int midi) {
    return find(scale(), midi);
  }

  /** The {@link #raised() raised} note with that MIDI number; empty if the key has none. */
  public Optional<Pitch> spelledRaised(int midi) {
    return find(raised(), midi);
  }

  private static Optional<Pitch> find(ImmutableList<Pitch> notes, int midi) {
    return notes.stream()
        .filter(note -> Math.floorMod(midi - note.midi(), Pitch.OCTAVE) == 0)
        .map(note -> note.plusOctaves((midi - note.midi()) / Pitch.OCTAVE))
        .findFirst();
  }

  /** The name in ASCII, which {@link #parse} reads: {@code D-major}, {@code Bb-minor}. */
  @Override
  public String toString() {
    return letter + (alter < 0 ? "b" : alter > 0 ? "#" : "") + "-" + modeName();
  }

  /** The name with musical signs: {@code D major}, {@code B♭ minor}. */
  public String display() {
    return letter + (alter < 0 ? "♭" : alter > 0 ? "♯" : "") + " " + modeName();
  }

  private String modeName() {
    return mode.name().toLowerCase(Locale.ROOT);
  }
}
