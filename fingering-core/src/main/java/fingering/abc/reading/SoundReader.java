package fingering.abc.reading;

import fingering.abc.reading.PendingNote.DraftHead;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.MeasureAccidentals;
import fingering.abc.syntax.TupletSign;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads notes, chords, rests and grace notes, and the ties, slurs and rhythms between them. */
final class SoundReader {
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
  private NoteDefaults setting;
  private Optional<PendingNote> lastNote = Optional.empty();
  private boolean joined;

  SoundReader(NoteDefaults setting, MeasureCollector measures, ReadingRemarks remarks) {
    this.setting = setting;
    this.measures = measures;
    this.remarks = remarks;
    signs = new PendingSigns(measures, remarks);
    accidentals = new MeasureAccidentals(setting.key());
    notes = new NoteReader(accidentals, ties);
  }

  /** Takes what holds for the notes to come. */
  void setting(NoteDefaults changed) {
    if (!changed.key().equals(setting.key())) {
      accidentals.key(changed.key());
    }
    setting = changed;
  }

  /** Reads what has to do with notes, if that comes next. */
  boolean read(LineCursor cursor) {
    LineCursor start = cursor.back(0);
    switch (cursor.peek()) {
      case ' ', '\t' -> {
        cursor.takeBlanks();
        joined = false;
      }
      case '(' -> {
        if (LineCursor.isDigit(cursor.peek(1))) {
          rhythm.begin(TupletSign.read(cursor, setting.meter()));
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
        if (!NoteReader.comes(cursor)) {
          return signs.read(cursor, setting);
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
            .filter(draft -> !draft.rest())
            .orElseThrow(
                () -> place.wrong("a tie stands behind a note: put it right behind its first."));
    ties.begin(place, from.heads);
  }

  /** Ends a measure. */
  void barLine(BarLine sign) {
    rhythm.barLine();
    signs.refuse();
    accidentals.barLine();
    joined = false;
    if (sign.ends() > 0) {
      ties.repeat();
    }
  }

  /** Whether a note has been read. */
  boolean anyNote() {
    return lastNote.isPresent();
  }

  /** Ends a line. */
  void lineEnd() {
    joined = false;
  }

  /** Ends the tune. */
  void finish() {
    rhythm.barLine();
    signs.refuse();
    slurs.finish();
    ties.finish();
  }

  private void add(PendingNote draft) {
    signs.attachTo(draft);
    draft.joined = joined;
    joined = true;
    rhythm.add(draft);
    ties.add(draft);
    ties.begin(draft.start, draft.heads.stream().filter(head -> head.tieStart).toList());
    place(draft);
  }

  private void place(PendingNote draft) {
    if (!draft.rest()) {
      slurs.add(draft);
      lastNote = Optional.of(draft);
      if (draft.signs.stream().anyMatch(Decoration::goesUp)) {
        draft.above = accidentals.above(draft.highest(), setting.reach());
      }
    }
    measures.current().add(draft, setting.meter());
  }

  private PendingNote note(LineCursor cursor, boolean grace) {
    PendingNote draft = new PendingNote(cursor.back(0));
    draft.heads.add(head(cursor, grace));
    draft.length = NoteReader.length(cursor).multiply(setting.unit());
    return draft;
  }

  private DraftHead head(LineCursor cursor, boolean grace) {
    int measure = measures.index();
    return notes.head(cursor, setting, !grace, pitch -> remarks.fromAnotherOctave(measure, pitch));
  }

  private PendingNote chord(LineCursor cursor, boolean grace) {
    PendingNote draft = new PendingNote(cursor.back(0));
    Runnable back = signs.aside();
    cursor.take('[');
    Optional<BigFraction> length = Optional.empty();
    while (!cursor.take(']')) {
      LineCursor start = cursor.back(0);
      if (NoteReader.comes(cursor)) {
        DraftHead head = head(cursor, grace);
        BigFraction own = NoteReader.length(cursor);
        if (!length.orElse(own).equals(own)) {
          throw start.wrong(
              "the notes of a chord have to last equally long here: write one length behind its bracket.");
        }
        length = Optional.of(own);
        head.tieStart = cursor.take('-');
        draft.heads.add(head);
        signs.attachTo(draft, head);
      } else if (!cursor.takeBlanks() && !signs.read(cursor, setting)) {
        throw cursor.wrong("a chord holds notes only, as in [DA]: mend it, or close it with ].");
      }
    }
    if (draft.heads.isEmpty()) {
      throw draft.start.wrong("this chord holds no note: write some, as in [DA].");
    }
    back.run();
    draft.length =
        length.orElse(BigFraction.ONE).multiply(NoteReader.length(cursor)).multiply(setting.unit());
    return draft;
  }

  private void rest(LineCursor cursor) {
    PendingNote draft = new PendingNote(cursor.back(0));
    cursor.next();
    draft.length = NoteReader.length(cursor).multiply(setting.unit());
    add(draft);
  }

  private void restsOfMeasures(LineCursor cursor) {
    LineCursor start = cursor.back(0);
    cursor.next();
    int count = cursor.atNumber() ? cursor.number() : 1;
    BigFraction full =
        setting
            .meter()
            .length()
            .orElseThrow(
                () ->
                    start.wrong(
                        "a rest of whole measures needs a meter: write M: and a meter first."));
    if (!measures.current().empty() || count < 1 || count > MOST_MEASURES) {
      throw start.wrong(
          "a rest of whole measures stands by itself between bar lines, for 1 to %d of them: mend it, or write z."
              .formatted(MOST_MEASURES));
    }
    for (int i = 0; i < count; i++) {
      if (i > 0) {
        measures.bar(BETWEEN_RESTS);
        barLine(BETWEEN_RESTS);
      }
      PendingNote draft = new PendingNote(start);
      draft.length = full;
      draft.wholeMeasure = true;
      add(draft);
    }
  }

  /** Grace notes; the signs before them are for the note behind. */
  private void graces(LineCursor cursor) {
    LineCursor start = cursor.back(0);
    Runnable back = signs.aside();
    boolean joinedBefore = joined;
    joined = false;
    cursor.take('{');
    boolean slashed = cursor.take('/');
    boolean one = isSingle(cursor);
    int count = 0;
    while (!cursor.take('}')) {
      if (NoteReader.comes(cursor) || cursor.peek() == '[') {
        PendingNote draft = cursor.peek() == '[' ? chord(cursor, true) : note(cursor, true);
        grace(draft, one, slashed);
        count++;
      } else if (!between(cursor)) {
        throw cursor.wrong("grace notes stand between { and }, as in {de}: mend or close them.");
      }
    }
    if (count == 0) {
      throw start.wrong("no grace note stands between { and }: write some, as in {de}.");
    }
    back.run();
    joined = joinedBefore;
  }

  private void grace(PendingNote draft, boolean one, boolean slashed) {
    signs.attachTo(draft);
    draft.grace = true;
    draft.slashed = slashed;
    draft.joined = joined;
    joined = true;
    // The standard leaves the unit to the program: eighths alone, sixteenths together.
    BigFraction unit = one ? ONE_GRACE : SEVERAL_GRACES;
    draft.length = draft.length.divide(setting.unit()).multiply(unit);
    place(draft);
  }

  /** What else may stand among grace notes; their rhythm is not read. */
  private boolean between(LineCursor cursor) {
    LineCursor start = cursor.back(0);
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
        return signs.read(cursor, setting);
      }
    }
    return true;
  }

  private static boolean isSingle(LineCursor cursor) {
    LineCursor ahead = cursor.back(0);
    String group = ahead.takeWhile(c -> c != '}');
    boolean chord = group.contains("[");
    return chord || group.chars().filter(LineCursor::isLetter).count() == 1;
  }
}
