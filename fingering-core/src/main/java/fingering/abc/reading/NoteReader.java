package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.LineCursor;
import fingering.tables.FingeringException;
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

  private final MeasureAccidentals accidentals;
  private final Ties ties;

  NoteReader(MeasureAccidentals accidentals, Ties ties) {
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
   * Reads the next pitch.
   *
   * @param mayBeTied whether a tie may lead to the note
   * @param fromOtherOctave receives the pitch if its accidental comes only from another octave
   */
  PendingHead head(
      LineCursor cursor,
      NoteDefaults defaults,
      boolean mayBeTied,
      Consumer<Pitch> fromOtherOctave) {
    LineCursor start = cursor.copy();
    String accidental = cursor.takeWhile(c -> ACCIDENTALS.indexOf(c) >= 0);
    if (cursor.peek() == '/' || cursor.atNumber()) {
      throw start.error("quarter tones are not supported: write ^, =, _ or no accidental.");
    }
    if (!isLetter(cursor.peek())) {
      throw cursor.error("a note from A to G is missing after the accidental: write it, as in ^F.");
    }
    char letter = cursor.next();
    int octave = letter >= 'a' ? LOWER_CASE_OCTAVE : UPPER_CASE_OCTAVE;
    while (cursor.peek() == '\'' || cursor.peek() == ',') {
      octave += cursor.next() == ',' ? -1 : 1;
    }
    Pitch natural;
    try {
      natural =
          new Pitch(
              Letter.valueOf(String.valueOf(Character.toUpperCase(letter))),
              0,
              octave + defaults.clef().octaves());
    } catch (FingeringException e) {
      throw start.error("this note is too high or too low: remove some , or '.");
    }
    return accidental.isEmpty()
        ? plain(natural, defaults, mayBeTied, fromOtherOctave)
        : typed(accidental, natural, start);
  }

  private PendingHead typed(String accidental, Pitch natural, LineCursor start) {
    int alter = AbcKey.alteration(accidental);
    if (alter == 0 && !accidental.equals("=")) {
      throw start.error(
          "'%s' is not an accidental: write ^, ^^, _, __ or =.".formatted(accidental));
    }
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
  static BigFraction length(LineCursor cursor) {
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
      throw start.error("a note cannot have length 0: write 1 or more, or a fraction such as 1/2.");
    }
    if (cursor.peek() == '/' || cursor.atNumber()) {
      throw cursor.error("a note has only one length: write it as in D2, D/2 or D3/2.");
    }
    return BigFraction.of(numerator, denominator);
  }
}
