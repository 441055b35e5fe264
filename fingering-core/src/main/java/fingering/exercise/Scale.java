package fingering.exercise;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.tables.FingeringException;
import fingering.tables.Key;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A scale or an arpeggio, without an octave.
 *
 * @param kind its kind
 * @param letter letter of the tonic, or of the root of a seventh chord
 * @param alter semitones by which the letter is raised or lowered, -1 to 1
 */
public record Scale(ScaleKind kind, Letter letter, int alter) {
  private static final String TONIC = "([a-g])(?: ?(sharp|flat|#|♯|b|♭))?";
  private static final Pattern TONIC_FIRST = Pattern.compile(TONIC + " (.+)");
  private static final Pattern KIND_FIRST = Pattern.compile("(.+) on " + TONIC);

  /** Other names that users type for a kind. */
  private static final ImmutableMap<String, ScaleKind> OTHER_NAMES =
      ImmutableMap.of(
          "minor", ScaleKind.MELODIC_MINOR,
          "minor natural", ScaleKind.NATURAL_MINOR,
          "minor harmonic", ScaleKind.HARMONIC_MINOR,
          "minor melodic", ScaleKind.MELODIC_MINOR);

  private static final int LETTERS = 7;
  private static final int MIDDLE_OCTAVE = 4;

  /** The most sharps or flats before a note: double sharps and double flats. */
  private static final int MAX_ALTERED = 2;

  /**
   * Checks that the notes can be written.
   *
   * @throws FingeringException if the key needs more than seven sharps or flats, the first note of
   *     a chromatic scale is not the tonic of any key, or a seventh chord needs more than double
   *     sharps or flats
   */
  public Scale {
    if (!writable(kind, letter, alter)) {
      throw new FingeringException(
          "%s %s needs more than seven sharps or flats"
              .formatted(new Pitch(letter, alter, MIDDLE_OCTAVE).letterName(), kind.label()));
    }
  }

  private static boolean writable(ScaleKind kind, Letter letter, int alter) {
    return switch (kind) {
      case CHROMATIC ->
          key(letter, alter, Key.Mode.MAJOR).isPresent()
              || key(letter, alter, Key.Mode.MINOR).isPresent();
      case DIMINISHED_SEVENTH -> {
        Pitch root = new Pitch(letter, alter, MIDDLE_OCTAVE);
        yield Math.abs(alter) <= 1
            && IntStream.range(0, kind.notesInOctave())
                .map(d -> root.midi() + kind.semitones(d, true) - natural(root, kind.letters(d)))
                .allMatch(sharps -> Math.abs(sharps) <= MAX_ALTERED);
      }
      default -> signature(kind, letter, alter).isPresent();
    };
  }

  private static int natural(Pitch root, int letters) {
    return Pitch.natural(root.letterNumber() + letters).midi();
  }

  private static Optional<Key> signature(ScaleKind kind, Letter letter, int alter) {
    return switch (kind) {
      case MAJOR, MAJOR_ARPEGGIO -> key(letter, alter, Key.Mode.MAJOR);
      case NATURAL_MINOR, HARMONIC_MINOR, MELODIC_MINOR, MINOR_ARPEGGIO ->
          key(letter, alter, Key.Mode.MINOR);
      case DOMINANT_SEVENTH -> {
        // The root is the fifth degree of the key, so the tonic is a fourth above it.
        Pitch root = new Pitch(letter, alter, MIDDLE_OCTAVE);
        Pitch tonic = Pitch.spelled(root.letterNumber() + 3, root.midi() + 5);
        yield key(tonic.letter(), tonic.alter(), Key.Mode.MAJOR);
      }
      case CHROMATIC, DIMINISHED_SEVENTH -> Optional.empty();
    };
  }

  private static Optional<Key> key(Letter letter, int alter, Key.Mode mode) {
    try {
      return Optional.of(new Key(letter, alter, mode));
    } catch (FingeringException e) {
      // There is no key signature with this many sharps or flats.
      return Optional.empty();
    }
  }

  /**
   * Reads a scale such as {@code D major}, {@code G# harmonic minor}, {@code B-flat major
   * arpeggio}, {@code chromatic on C} or {@code A dominant seventh}. A minor scale is melodic
   * unless the text says otherwise.
   *
   * @throws FingeringException if the text is not a scale, or the scale cannot be written
   */
  public static Scale parse(String text) {
    String name =
        text.strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[-\\s]+", " ")
            .replaceAll("\\b7th\\b", "seventh")
            .replaceAll(" scale\\b", "");
    Matcher on = KIND_FIRST.matcher(name);
    if (on.matches()) {
      return read(text, on.group(1), on.group(2), Optional.ofNullable(on.group(3)));
    }
    Matcher first = TONIC_FIRST.matcher(name);
    if (first.matches()) {
      return read(text, first.group(3), first.group(1), Optional.ofNullable(first.group(2)));
    }
    throw unknown(text);
  }

  private static Scale read(String text, String words, String letter, Optional<String> sign) {
    ScaleKind kind =
        ImmutableList.copyOf(ScaleKind.values()).stream()
            .filter(each -> each.label().equals(words.replaceFirst("(seventh) arpeggio", "$1")))
            .findFirst()
            .or(() -> Optional.ofNullable(OTHER_NAMES.get(words)))
            .orElseThrow(() -> unknown(text));
    int alter =
        switch (sign.orElse("")) {
          case "" -> 0;
          case "sharp", "#", "♯" -> 1;
          default -> -1;
        };
    Letter tonic = Letter.valueOf(letter.toUpperCase(Locale.ROOT));
    if (!writable(kind, tonic, alter)) {
      throw new FingeringException(
          "'%s' needs more than seven sharps or flats; write the same notes as %s"
              .formatted(text, enharmonic(kind, new Pitch(tonic, alter, MIDDLE_OCTAVE))));
    }
    return new Scale(kind, tonic, alter);
  }

  /** The scale of a kind on an enharmonic tonic, with the fewest sharps or flats. */
  private static Scale enharmonic(ScaleKind kind, Pitch tonic) {
    return ImmutableList.copyOf(Letter.values()).stream()
        .flatMap(each -> IntStream.rangeClosed(-1, 1).mapToObj(alter -> new Pitch(each, alter, 4)))
        .filter(each -> Math.floorMod(each.midi() - tonic.midi(), Pitch.OCTAVE) == 0)
        .filter(each -> writable(kind, each.letter(), each.alter()))
        .map(each -> new Scale(kind, each.letter(), each.alter()))
        .min(Comparator.comparingInt(each -> Math.abs(each.signs())))
        .orElseThrow();
  }

  private static FingeringException unknown(String text) {
    return new FingeringException(
        "'%s' is not a scale; write tonic and kind, such as 'D major' or 'chromatic on C'; the kinds are %s"
            .formatted(text, ScaleKind.all()));
  }

  /** The sharps of its key signature, or flats if below 0; 0 if it has no key. */
  public int signs() {
    return signature(kind, letter, alter).map(Key::signs).orElse(0);
  }

  /** The tonic in an octave. */
  public Pitch tonic(int octave) {
    return new Pitch(letter, alter, octave);
  }

  /**
   * Reads a first note: an octave, {@code 4}, or a pitch, {@code D4}.
   *
   * @throws FingeringException if the text is neither, or the pitch is not the tonic
   */
  public Pitch start(String text) {
    String start = text.strip();
    if (start.matches("\\d")) {
      return tonic(Integer.parseInt(start));
    }
    Pitch pitch = Pitch.parse(start);
    if (!pitch.equals(tonic(pitch.octave()))) {
      throw new FingeringException(
          "%s does not start on %s; start on %s"
              .formatted(display(), pitch.display(), tonic(pitch.octave()).display()));
    }
    return pitch;
  }

  /**
   * A note of the scale.
   *
   * @param from the tonic from which degrees are counted
   * @param degree the degree, 0 for the tonic; it may be below 0 or above the octave
   * @param rising whether the scale is rising; some scales descend with other notes
   */
  public Pitch tone(Pitch from, int degree, boolean rising) {
    int octaves = Math.floorDiv(degree, kind.notesInOctave());
    int within = Math.floorMod(degree, kind.notesInOctave());
    int midi = from.midi() + Pitch.OCTAVE * octaves + kind.semitones(within, rising);
    if (within == 0) {
      return from.plusOctaves(octaves);
    }
    return kind == ScaleKind.CHROMATIC
        ? chromatic(midi, rising)
        : Pitch.spelled(from.letterNumber() + LETTERS * octaves + kind.letters(within), midi);
  }

  /** A natural if possible, otherwise a sharp when rising and a flat when falling. */
  private static Pitch chromatic(int midi, boolean rising) {
    return natural(midi)
        .orElseGet(
            () -> {
              Pitch neighbour = natural(rising ? midi - 1 : midi + 1).orElseThrow();
              return Pitch.spelled(neighbour.letterNumber(), midi);
            });
  }

  private static Optional<Pitch> natural(int midi) {
    int octave = Math.floorDiv(midi, Pitch.OCTAVE) - 1;
    return ImmutableList.copyOf(Letter.values()).stream()
        .filter(each -> each.semitones() == Math.floorMod(midi, Pitch.OCTAVE))
        .map(each -> new Pitch(each, 0, octave))
        .findFirst();
  }

  /** The rising notes from a tonic, over a number of octaves. */
  public ImmutableList<Pitch> up(Pitch from, int octaves) {
    return IntStream.rangeClosed(0, octaves * kind.notesInOctave())
        .mapToObj(degree -> tone(from, degree, true))
        .collect(ImmutableList.toImmutableList());
  }

  /** The falling notes down to a tonic, over a number of octaves. */
  public ImmutableList<Pitch> down(Pitch to, int octaves) {
    return IntStream.rangeClosed(0, octaves * kind.notesInOctave())
        .mapToObj(degree -> tone(to, degree, false))
        .collect(ImmutableList.toImmutableList())
        .reverse();
  }

  /** The name as a title: {@code G♯ harmonic minor}, {@code Dominant seventh on A}. */
  public String display() {
    String name = new Pitch(letter, alter, MIDDLE_OCTAVE).letterName();
    if (!kind.kindFirst()) {
      return name + " " + kind.label();
    }
    String words = kind == ScaleKind.CHROMATIC ? "chromatic scale" : kind.label();
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + " on " + name;
  }

  /** The name within a sentence: {@code the dominant seventh on A}. */
  public String nameInSentence() {
    String name = display();
    return kind.kindFirst()
        ? "the " + name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1)
        : name;
  }

  /** The name in plain ASCII that {@link #parse} reads back: {@code G# harmonic minor}. */
  @Override
  public String toString() {
    return letter + (alter < 0 ? "b" : alter > 0 ? "#" : "") + " " + kind.label();
  }
}
