package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.LineCursor;
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
  private final PendingSigns signs;
  private final MeasureAccidentals accidentals;
  private final Ties ties = new Ties();
  private final Slurs slurs = new Slurs();
  private final RhythmModifiers rhythm = new RhythmModifiers();
  private final NoteReader notes;
  private NoteDefaults defaults;
  private Optional<PendingNote> lastNote = Optional.empty();
  private boolean joined;

  NoteSequenceReader(NoteDefaults defaults, MeasureCollector measures, ReadingRemarks remarks) {
    this.defaults = defaults;
    this.measures = measures;
    this.remarks = remarks;
    signs = new PendingSigns(measures, remarks);
    accidentals = new MeasureAccidentals(defaults.key());
    notes = new NoteReader(accidentals, ties);
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
          rhythm.begin(TupletSpecifier.read(cursor, defaults.meter()));
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
      case '{' -> graces(cursor);
      case '[' -> add(chord(cursor, false));
      case 'z', 'x' -> rest(cursor);
      case 'Z', 'X' -> restsOfMeasures(cursor);
      default -> {
        if (!NoteReader.isNext(cursor)) {
          return signs.read(cursor, defaults);
        }
        add(note(cursor, false));
      }
    }
    return true;
  }

  private void tie(LineCursor place) {
    PendingNote from =
        measures
            .current()
            .lastTimed()
            .filter(pending -> !pending.rest())
            .orElseThrow(
                () ->
                    place.error(
                        "a tie comes after a note: write it immediately after its first note."));
    ties.begin(place, from.heads);
  }

  /**
   * Ends a measure.
   *
   * @throws AbcException if a rhythm is incomplete, or a decoration has no note
   */
  void barLine(BarLine sign) {
    rhythm.barLine();
    signs.refuse();
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

  /**
   * Ends the tune.
   *
   * @throws AbcException if something is incomplete
   */
  void finish() {
    rhythm.barLine();
    signs.refuse();
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
    if (!pending.rest()) {
      slurs.add(pending);
      lastNote = Optional.of(pending);
      if (pending.signs.stream().anyMatch(Decoration::goesUp)) {
        pending.above = accidentals.above(pending.highest(), defaults.propagation());
      }
    }
    measures.current().add(pending, defaults.meter());
  }

  private PendingNote note(LineCursor cursor, boolean grace) {
    PendingNote pending = new PendingNote(cursor.copy());
    pending.heads.add(head(cursor, grace));
    pending.length = NoteReader.length(cursor).multiply(defaults.unit());
    return pending;
  }

  private PendingHead head(LineCursor cursor, boolean grace) {
    int measure = measures.index();
    return notes.head(cursor, defaults, !grace, pitch -> remarks.fromAnotherOctave(measure, pitch));
  }

  private PendingNote chord(LineCursor cursor, boolean grace) {
    PendingNote pending = new PendingNote(cursor.copy());
    Runnable back = signs.aside();
    cursor.take('[');
    Optional<BigFraction> length = Optional.empty();
    while (!cursor.take(']')) {
      LineCursor start = cursor.copy();
      if (NoteReader.isNext(cursor)) {
        PendingHead head = head(cursor, grace);
        BigFraction own = NoteReader.length(cursor);
        if (!length.orElse(own).equals(own)) {
          throw start.error(
              "the notes of a chord must have the same length: write one length after its bracket.");
        }
        length = Optional.of(own);
        head.tieStart = cursor.take('-');
        pending.heads.add(head);
        signs.attachTo(pending, head);
      } else if (!cursor.takeBlanks() && !signs.read(cursor, defaults)) {
        throw cursor.error(
            "a chord contains only notes, as in [DA]: correct it, or close it with ].");
      }
    }
    if (pending.heads.isEmpty()) {
      throw pending.start.error("this chord contains no notes: write some, as in [DA].");
    }
    back.run();
    pending.length =
        length
            .orElse(BigFraction.ONE)
            .multiply(NoteReader.length(cursor))
            .multiply(defaults.unit());
    return pending;
  }

  private void rest(LineCursor cursor) {
    PendingNote pending = new PendingNote(cursor.copy());
    cursor.next();
    pending.length = NoteReader.length(cursor).multiply(defaults.unit());
    add(pending);
  }

  private void restsOfMeasures(LineCursor cursor) {
    LineCursor start = cursor.copy();
    cursor.next();
    int count = cursor.atNumber() ? cursor.number() : 1;
    BigFraction full =
        defaults
            .meter()
            .length()
            .orElseThrow(
                () ->
                    start.error("a rest of whole measures needs a meter: write a field M: first."));
    if (!measures.current().empty() || count < 1 || count > MOST_MEASURES) {
      throw start.error(
          "a rest of 1 to %d whole measures must be alone between bar lines: correct it, or write z."
              .formatted(MOST_MEASURES));
    }
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
    LineCursor start = cursor.copy();
    Runnable back = signs.aside();
    boolean joinedBefore = joined;
    joined = false;
    cursor.take('{');
    boolean slashed = cursor.take('/');
    boolean single = isSingle(cursor);
    int count = 0;
    while (!cursor.take('}')) {
      if (NoteReader.isNext(cursor) || cursor.peek() == '[') {
        PendingNote pending = cursor.peek() == '[' ? chord(cursor, true) : note(cursor, true);
        grace(pending, single, slashed);
        count++;
      } else if (!amongGraces(cursor)) {
        throw cursor.error(
            "grace notes are written between { and }, as in {de}: correct or close them.");
      }
    }
    if (count == 0) {
      throw start.error("there is no grace note between { and }: write some, as in {de}.");
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
        slurs.begin(start);
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
