package fingering.abc.reading;

import fingering.abc.reading.PendingNote.DraftHead;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.MeasureAccidentals;
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

  /** Whether a note comes next. */
  static boolean comes(LineCursor cursor) {
    char next = cursor.peek();
    return isLetter(next) || (next != LineCursor.NOTHING && ACCIDENTALS.indexOf(next) >= 0);
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'g') || (c >= 'A' && c <= 'G');
  }

  /**
   * Reads the pitch that comes next.
   *
   * @param held whether a tie may lead to the note
   * @param other takes a pitch that only an accidental of another octave makes what it is
   */
  DraftHead head(LineCursor cursor, NoteDefaults setting, boolean held, Consumer<Pitch> other) {
    LineCursor start = cursor.back(0);
    String signs = cursor.takeWhile(c -> ACCIDENTALS.indexOf(c) >= 0);
    if (cursor.peek() == '/' || cursor.atNumber()) {
      throw start.wrong("quarter tones are not read: write ^, =, _ or none of them.");
    }
    if (!isLetter(cursor.peek())) {
      throw cursor.wrong("a note from A to G belongs behind the accidental: write it, as in ^F.");
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
              octave + setting.clef().octaves());
    } catch (FingeringException e) {
      throw start.wrong("this note is higher or lower than all music: take some , or ' out.");
    }
    return signs.isEmpty() ? plain(natural, setting, held, other) : typed(signs, natural, start);
  }

  private DraftHead typed(String signs, Pitch natural, LineCursor start) {
    int alter = MeasureAccidentals.alteration(signs);
    if (alter == 0 && !signs.equals("=")) {
      throw start.wrong("'%s' is no accidental: write ^, ^^, _, __ or =.".formatted(signs));
    }
    Pitch pitch = new Pitch(natural.letter(), alter, natural.octave());
    accidentals.typed(pitch);
    return new DraftHead(pitch, accidentals.print(pitch, true));
  }

  private DraftHead plain(
      Pitch natural, NoteDefaults setting, boolean held, Consumer<Pitch> other) {
    Optional<Pitch> tied = held ? ties.heldOn(natural) : Optional.empty();
    if (tied.isPresent()) {
      return new DraftHead(tied.get(), false);
    }
    Pitch pitch = accidentals.plain(natural, setting.reach());
    if (setting.reach() == MeasureAccidentals.Reach.PITCH && accidentals.fromAnotherOctave(pitch)) {
      other.accept(pitch);
    }
    return new DraftHead(pitch, accidentals.print(pitch, false));
  }

  /** Reads how many unit lengths long a note is: 1, 3, 1/2 (as /2, / or 1/2), 3/4 and so on. */
  static BigFraction length(LineCursor cursor) {
    LineCursor start = cursor.back(0);
    int above = cursor.atNumber() ? cursor.number() : 1;
    int below = 1;
    int slashes = 0;
    while (cursor.peek() == '/' && slashes < MOST_SLASHES) {
      cursor.next();
      slashes++;
      if (cursor.atNumber()) {
        below *= cursor.number();
        break;
      }
      below *= 2;
    }
    if (above == 0 || below == 0) {
      throw start.wrong(
          "a note cannot last 0: write a length from 1 up, or a fraction such as 1/2.");
    }
    if (cursor.peek() == '/' || cursor.atNumber()) {
      throw cursor.wrong("a note has one length: write it as in D2, D/2 or D3/2.");
    }
    return BigFraction.of(above, below);
  }
}
