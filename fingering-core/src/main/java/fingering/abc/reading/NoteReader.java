package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads a note as typed: accidental, letter, octave, length (ABC 2.1, sections 'Pitch' to 'Note
 * lengths').
 */
final class NoteReader {
  private static final String ACCIDENTALS = "^_=";
  private static final int LOWER_CASE_OCTAVE = 5;
  private static final int UPPER_CASE_OCTAVE = 4;
  private static final int MOST_SLASHES = 8;

  /** Far beyond every string instrument, at both ends. */
  private static final int HIGHEST_OCTAVE = 9;

  private final Repairs repairs;
  private final MeasureAccidentals accidentals;
  private final Ties ties;

  NoteReader(MeasureAccidentals accidentals, Ties ties, Repairs repairs) {
    this.repairs = repairs;
    this.accidentals = accidentals;
    this.ties = ties;
  }

  /** Returns whether a note comes next. */
  static boolean isNext(LineCursor cursor) {
    char next = cursor.peek();
    return isLetter(next) || (next != LineCursor.NOTHING && ACCIDENTALS.indexOf(next) >= 0);
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'g') || (c >= 'A' && c <= 'G');
  }

  /**
   * Reads the next pitch; empty if only an accidental comes.
   *
   * @param mayBeTied whether a tie may lead to the note
   * @param fromOtherOctave receives the pitch if its accidental comes only from another octave
   */
  Optional<PendingHead> head(
      LineCursor cursor,
      NoteDefaults defaults,
      boolean mayBeTied,
      Consumer<Pitch> fromOtherOctave) {
    LineCursor start = cursor.copy();
    String accidental = cursor.takeWhile(c -> ACCIDENTALS.indexOf(c) >= 0);
    if (!accidental.isEmpty() && (cursor.peek() == '/' || cursor.atNumber())) {
      accidental = semitones(accidental, length(cursor), start);
    }
    if (!isLetter(cursor.peek())) {
      repairs.add(start, "no note follows the accidental; it was left out");
      return Optional.empty();
    }
    char letter = cursor.next();
    int octave = letter >= 'a' ? LOWER_CASE_OCTAVE : UPPER_CASE_OCTAVE;
    while (cursor.peek() == '\'' || cursor.peek() == ',') {
      octave += cursor.next() == ',' ? -1 : 1;
    }
    octave += defaults.clef().octaves();
    if (octave < 0 || octave > HIGHEST_OCTAVE) {
      repairs.add(start, "this note is too high or too low; it was moved to the nearest octave");
      octave = Math.max(0, Math.min(HIGHEST_OCTAVE, octave));
    }
    Pitch natural =
        new Pitch(Letter.valueOf(String.valueOf(Character.toUpperCase(letter))), 0, octave);
    return Optional.of(
        accidental.isEmpty()
            ? plain(natural, defaults, mayBeTied, fromOtherOctave)
            : typed(accidental, natural, start));
  }

  /** The accidental for a fraction of a semitone: {@code ^/} is a quarter tone. */
  private String semitones(String accidental, BigFraction fraction, LineCursor start) {
    repairs.add(
        start, "quarter tones are not supported; the accidental was rounded towards the natural");
    boolean whole = fraction.compareTo(BigFraction.ONE) >= 0;
    return whole ? accidental.substring(accidental.length() - 1) : "=";
  }

  /** The sign next to the note counts, with an equal one before it. */
  private String valid(String accidental, LineCursor start) {
    if (AbcKey.alteration(accidental) != 0 || accidental.equals("=")) {
      return accidental;
    }
    int length = accidental.length();
    String two = accidental.substring(length - 2);
    String read = AbcKey.alteration(two) != 0 ? two : accidental.substring(length - 1);
    repairs.add(start, "'%s' is not an accidental; it was read as %s".formatted(accidental, read));
    return read;
  }

  private PendingHead typed(String accidental, Pitch natural, LineCursor start) {
    int alter = AbcKey.alteration(valid(accidental, start));
    Pitch pitch = new Pitch(natural.letter(), alter, natural.octave());
    accidentals.typed(pitch);
    return new PendingHead(pitch, accidentals.print(pitch, true));
  }

  private PendingHead plain(
      Pitch natural, NoteDefaults defaults, boolean mayBeTied, Consumer<Pitch> fromOtherOctave) {
    Optional<Pitch> tied = mayBeTied ? ties.tiedTo(natural) : Optional.empty();
    if (tied.isPresent()) {
      return new PendingHead(tied.get(), false);
    }
    Pitch pitch = accidentals.plain(natural, defaults.propagation());
    if (defaults.propagation() == MeasureAccidentals.Propagation.PITCH
        && accidentals.fromAnotherOctave(pitch)) {
      fromOtherOctave.accept(pitch);
    }
    return new PendingHead(pitch, accidentals.print(pitch, false));
  }

  /** Reads a length in unit note lengths: 3, 3/4, /2, / and so on; 1 if none is typed. */
  BigFraction length(LineCursor cursor) {
    LineCursor start = cursor.copy();
    int numerator = cursor.atNumber() ? cursor.number() : 1;
    int denominator = 1;
    int slashes = 0;
    while (cursor.peek() == '/' && slashes < MOST_SLASHES) {
      cursor.next();
      slashes++;
      if (cursor.atNumber()) {
        denominator *= cursor.number();
        break;
      }
      denominator *= 2;
    }
    if (numerator == 0 || denominator == 0) {
      repairs.add(start, "a note cannot have length 0; it was read as length 1");
      numerator = 1;
      denominator = 1;
    }
    if (cursor.peek() == '/' || cursor.atNumber()) {
      repairs.add(cursor, "a note has only one length; the second was left out");
      cursor.takeWhile(c -> c == '/' || LineCursor.isDigit(c));
    }
    return BigFraction.of(numerator, denominator);
  }
}
