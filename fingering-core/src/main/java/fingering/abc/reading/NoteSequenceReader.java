package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.TupletSpecifier;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads notes, chords, rests and grace notes, with their ties, slurs and rhythms. */
final class NoteSequenceReader {
  private static final BigFraction ONE_GRACE = BigFraction.of(1, 2);
  private static final BigFraction SEVERAL_GRACES = BigFraction.of(1, 4);
  private static final int MOST_MEASURES = 999;
  private static final BarLine BETWEEN_RESTS = new BarLine("regular", 0, false);

  private final MeasureCollector measures;
  private final ReadingRemarks remarks;
  private final TuneSize size;
  private final Repairs repairs;
  private final PendingSigns signs;
  private final MeasureAccidentals accidentals;
  private final Ties ties;
  private final Slurs slurs;
  private final RhythmModifiers rhythm;
  private final NoteReader notes;
  private NoteDefaults defaults;
  private Optional<PendingNote> lastNote = Optional.empty();
  private boolean joined;

  NoteSequenceReader(
      NoteDefaults defaults,
      MeasureCollector measures,
      ReadingRemarks remarks,
      TuneSize size,
      Repairs repairs) {
    this.defaults = defaults;
    this.measures = measures;
    this.remarks = remarks;
    this.size = size;
    this.repairs = repairs;
    ties = new Ties(repairs);
    slurs = new Slurs(repairs);
    rhythm = new RhythmModifiers(repairs);
    signs = new PendingSigns(measures, remarks, repairs);
    accidentals = new MeasureAccidentals(defaults.key());
    notes = new NoteReader(accidentals, ties, repairs);
  }

  /** Changes the defaults of the following notes. */
  void defaults(NoteDefaults changed) {
    if (!changed.key().equals(defaults.key())) {
      accidentals.key(changed.key());
    }
    defaults = changed;
  }

  /**
   * Reads the next note, rest, tie, slur, tuplet or decoration; returns false if none comes next.
   */
  boolean read(LineCursor cursor) {
    LineCursor start = cursor.copy();
    switch (cursor.peek()) {
      case ' ', '\t' -> {
        cursor.takeBlanks();
        joined = false;
      }
      case '(' -> {
        if (LineCursor.isDigit(cursor.peek(1))) {
          TupletSpecifier.read(cursor, defaults.meter(), repairs).ifPresent(rhythm::begin);
        } else {
          cursor.next();
          slurs.begin(start);
        }
      }
      case ')' -> {
        cursor.next();
        slurs.end(start, lastNote);
      }
      case '-' -> {
        cursor.next();
        tie(start);
      }
      case '<', '>' -> rhythm.breakAt(cursor, measures.current().lastTimed());
      case '{' -> {
        if (!closes(cursor, '}')) {
          return false;
        }
        graces(cursor);
      }
      case '[' -> {
        if (!closes(cursor, ']')) {
          return false;
        }
        chord(cursor, false).ifPresent(this::add);
      }
      case 'z', 'x' -> rest(cursor);
      case 'Z', 'X' -> restsOfMeasures(cursor);
      default -> {
        if (!NoteReader.isNext(cursor)) {
          return signs.read(cursor, defaults);
        }
        note(cursor, false).ifPresent(this::add);
      }
    }
    return true;
  }

  /** Returns whether a bracket that opens here is closed before the next bar line. */
  private static boolean closes(LineCursor cursor, char bracket) {
    LineCursor ahead = cursor.copy();
    ahead.takeWhile(c -> c != bracket && c != '|');
    return ahead.peek() == bracket;
  }

  private void tie(LineCursor place) {
    measures
        .current()
        .lastTimed()
        .filter(pending -> !pending.rest())
        .ifPresentOrElse(
            from -> ties.begin(place, from.heads),
            () -> repairs.add(place, "no note comes before this tie; it was left out"));
  }

  /** Ends a measure. Incomplete rhythms, and decorations without a note, are left out. */
  void barLine(BarLine sign) {
    rhythm.barLine();
    signs.leaveOut();
    accidentals.barLine();
    joined = false;
    if (sign.ends() > 0) {
      ties.repeat();
    }
  }

  /** Returns whether a note has been read. */
  boolean anyNote() {
    return lastNote.isPresent();
  }

  /** Ends a line. */
  void lineEnd() {
    joined = false;
  }

  /** Ends the tune. What is incomplete is left out. */
  void finish() {
    rhythm.barLine();
    signs.leaveOut();
    slurs.finish();
    ties.finish();
  }

  private void add(PendingNote pending) {
    signs.attachTo(pending);
    pending.joined = joined;
    joined = true;
    rhythm.add(pending);
    ties.add(pending);
    ties.begin(pending.start, pending.heads.stream().filter(head -> head.tieStart).toList());
    place(pending);
  }

  private void place(PendingNote pending) {
    size.notes(Math.max(1, pending.heads.size()), pending.start);
    if (!pending.rest()) {
      slurs.add(pending);
      lastNote = Optional.of(pending);
      if (pending.signs.stream().anyMatch(Decoration::goesUp)) {
        pending.above = accidentals.above(pending.highest(), defaults.propagation());
      }
    }
    measures.current().add(pending, defaults.meter());
  }

  private Optional<PendingNote> note(LineCursor cursor, boolean grace) {
    PendingNote pending = new PendingNote(cursor.copy());
    Optional<PendingHead> head = head(cursor, grace);
    if (head.isEmpty()) {
      return Optional.empty();
    }
    pending.heads.add(head.get());
    pending.length = notes.length(cursor).multiply(defaults.unit());
    return Optional.of(pending);
  }

  private Optional<PendingHead> head(LineCursor cursor, boolean grace) {
    int measure = measures.index();
    return notes.head(cursor, defaults, !grace, pitch -> remarks.fromAnotherOctave(measure, pitch));
  }

  /** Reads a chord; empty if it has no notes. Its first note gives its length (ABC 2.1). */
  private Optional<PendingNote> chord(LineCursor cursor, boolean grace) {
    PendingNote pending = new PendingNote(cursor.copy());
    Runnable back = signs.aside();
    cursor.take('[');
    Optional<BigFraction> length = Optional.empty();
    while (!cursor.done() && !cursor.take(']')) {
      LineCursor start = cursor.copy();
      if (NoteReader.isNext(cursor)) {
        Optional<PendingHead> head = head(cursor, grace);
        if (head.isPresent()) {
          BigFraction own = notes.length(cursor);
          if (!length.orElse(own).equals(own)) {
            repairs.add(
                start, "the notes of a chord have different lengths; that of its first was read");
          }
          length = length.or(() -> Optional.of(own));
          head.get().tieStart = cursor.take('-');
          pending.heads.add(head.get());
          signs.attachTo(pending, head.get());
        }
      } else if (cursor.take('"')) {
        cursor.to(UnusedSigns.wordsEnd(cursor.line().text(), start.at()) + 1);
        repairs.add(start, "words inside a chord were left out");
      } else if (!cursor.takeBlanks() && !signs.read(cursor, defaults)) {
        cursor.next();
        repairs.add(
            start, "'%s' cannot be inside a chord; it was left out".formatted(start.peek()));
      }
    }
    back.run();
    if (pending.heads.isEmpty()) {
      repairs.add(pending.start, "this chord has no notes; it was left out");
      return Optional.empty();
    }
    pending.length =
        length.orElse(BigFraction.ONE).multiply(notes.length(cursor)).multiply(defaults.unit());
    return Optional.of(pending);
  }

  private void rest(LineCursor cursor) {
    PendingNote pending = new PendingNote(cursor.copy());
    cursor.next();
    pending.length = notes.length(cursor).multiply(defaults.unit());
    add(pending);
  }

  private void restsOfMeasures(LineCursor cursor) {
    LineCursor start = cursor.copy();
    cursor.next();
    int typed = cursor.atNumber() ? cursor.number() : 1;
    int count = Math.min(typed, MOST_MEASURES);
    if (!measures.current().empty() || count < 1) {
      repairs.add(
          start, "a rest of whole measures must be alone between bar lines; it was left out");
      return;
    }
    if (typed > MOST_MEASURES) {
      repairs.add(start, "a rest has at most %d measures; this many were read".formatted(count));
    }
    Optional<BigFraction> meter = defaults.meter().length();
    if (meter.isEmpty()) {
      repairs.add(start, "a rest of whole measures needs a meter; 4/4 was assumed");
    }
    BigFraction full = meter.orElse(BigFraction.of(4));
    for (int i = 0; i < count; i++) {
      if (i > 0) {
        measures.bar(BETWEEN_RESTS);
        barLine(BETWEEN_RESTS);
      }
      PendingNote pending = new PendingNote(start);
      pending.length = full;
      pending.wholeMeasure = true;
      add(pending);
    }
  }

  /** Reads grace notes. Decorations before them belong to the main note after them. */
  private void graces(LineCursor cursor) {
    LineCursor opening = cursor.copy();
    Runnable back = signs.aside();
    boolean joinedBefore = joined;
    joined = false;
    cursor.take('{');
    boolean slashed = cursor.take('/');
    boolean single = isSingle(cursor);
    int count = 0;
    while (!cursor.done() && !cursor.take('}')) {
      boolean chord = cursor.peek() == '[' && closes(cursor, ']');
      if (NoteReader.isNext(cursor) || chord) {
        Optional<PendingNote> pending = chord ? chord(cursor, true) : note(cursor, true);
        pending.ifPresent(note -> grace(note, single, slashed));
        count += pending.isPresent() ? 1 : 0;
      } else if (!amongGraces(cursor)) {
        repairs.add(
            cursor, "'%s' cannot be among grace notes; it was left out".formatted(cursor.peek()));
        cursor.next();
      }
    }
    if (count == 0) {
      repairs.add(opening, "there is no grace note between { and }; they were left out");
    }
    back.run();
    joined = joinedBefore;
  }

  private void grace(PendingNote pending, boolean single, boolean slashed) {
    signs.attachTo(pending);
    pending.grace = true;
    pending.slashed = slashed;
    pending.joined = joined;
    joined = true;
    // The standard leaves the unit to the program: here a single one is an eighth, several are
    // sixteenths.
    BigFraction unit = single ? ONE_GRACE : SEVERAL_GRACES;
    pending.length = pending.length.divide(defaults.unit()).multiply(unit);
    place(pending);
  }

  /** Reads other text among grace notes; broken rhythm there is ignored. */
  private boolean amongGraces(LineCursor cursor) {
    LineCursor start = cursor.copy();
    switch (cursor.peek()) {
      case ' ', '\t' -> cursor.takeBlanks();
      case '<', '>' -> cursor.next();
      case '(' -> {
        cursor.next();
        if (cursor.atNumber()) {
          cursor.number();
          repairs.add(start, "tuplets of grace notes are not supported; the sign was left out");
        } else {
          slurs.begin(start);
        }
      }
      case ')' -> {
        cursor.next();
        slurs.end(start, lastNote);
      }
      default -> {
        return signs.read(cursor, defaults);
      }
    }
    return true;
  }

  private static boolean isSingle(LineCursor cursor) {
    LineCursor ahead = cursor.copy();
    String group = ahead.takeWhile(c -> c != '}');
    boolean chord = group.contains("[");
    return chord || group.chars().filter(LineCursor::isLetter).count() == 1;
  }
}
