package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.AbcTempo;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.SourceLine;
import fingering.abc.syntax.TuneFault;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the body of a tune, line by line (ABC 2.1, section 'The tune body'). */
public final class MusicReader {
  /** As in {@code Am7}, {@code F#dim/C}. */
  private static final Pattern CHORD_SYMBOL =
      Pattern.compile(
          "\\(?[A-G][#b\u266f\u266d]?(?:m|min|maj|dim|aug|sus|\\+)?\\d{0,2}(?:sus\\d|add\\d{1,2})?(?:/[A-Ga-g][#b]?)?\\)?");

  private static final Pattern POSITION = Pattern.compile("@-?[\\d.]+,\\s*-?[\\d.]+\\s*");

  private final TuneHeader header;
  private final Repairs repairs;
  private final ReadingRemarks remarks = new ReadingRemarks();
  private final MeasureCollector measures;
  private final NoteSequenceReader notes;
  private NoteDefaults defaults;

  /** Whether the music is a second voice in the same measure. */
  private boolean overlay;

  private MusicReader(TuneHeader header, TuneSize size, Repairs repairs) {
    this.header = header;
    this.repairs = repairs;
    defaults = header.defaults();
    measures = new MeasureCollector(defaults.meter(), header.firstMeasure(), size, repairs);
    notes = new NoteSequenceReader(defaults, measures, remarks, size, repairs);
  }

  /**
   * Reads a tune. Voices without notes are left out.
   *
   * @param size counts the measures and notes
   * @throws AbcException if it has no note, or too many measures or notes
   */
  public static Tune read(TuneSource source, TuneSize size) {
    Repairs repairs = new Repairs();
    TuneHeader.Opening opening = TuneHeader.read(source, repairs);
    ImmutableList.Builder<Tune.Voice> voices = ImmutableList.builder();
    ImmutableSet.Builder<String> all = ImmutableSet.builder();
    ImmutableSet.Builder<String> general = ImmutableSet.builder();
    ImmutableList.Builder<TuneFault> faults = ImmutableList.builder();
    general.addAll(opening.remarks());
    all.addAll(opening.remarks());
    for (TuneHeader header : opening.voices()) {
      MusicReader reader = new MusicReader(header, size, repairs);
      reader.body();
      if (reader.notes.anyNote()) {
        ImmutableList<TuneMeasure> measures = reader.measures.finished();
        voices.add(new Tune.Voice(header, measures));
        reader.measures.remark().ifPresent(all::add);
        ImmutableList<String> sentences =
            reader.remarks.sentences(measures.stream().map(TuneMeasure::number).toList());
        all.addAll(sentences);
        general.addAll(sentences);
        measures.stream()
            .filter(measure -> !measure.fits())
            .map(TuneMeasure::place)
            .forEach(faults::add);
      }
    }
    all.addAll(repairs.sentences());
    ImmutableList<Tune.Voice> withNotes = voices.build();
    if (withNotes.isEmpty()) {
      SourceLine last = source.lines().get(source.lines().size() - 1);
      throw last.error(
          last.text().length(),
          "the tune ends here without a note: type some notes, such as D2 FA d4.");
    }
    return new Tune(
        withNotes,
        all.build().asList(),
        general.build().asList(),
        faults.addAll(repairs.places()).build());
  }

  private void body() {
    for (SourceLine line : header.body()) {
      if (line.comment()) {
        set(Fields.directive(defaults, line.directive(), repairs));
      } else if (line.field()) {
        field(line.letter(), line.content(), new LineCursor(line, 0));
      } else {
        SourceLine code = UnusedSigns.leftOut(line.code(), defaults.symbols().keySet(), repairs);
        music(new LineCursor(code, 0));
      }
      notes.lineEnd();
    }
    notes.finish();
    measures.finish();
  }

  private void set(NoteDefaults changed) {
    defaults = changed;
    notes.defaults(changed);
  }

  private void field(char letter, LineCursor content, LineCursor field) {
    switch (letter) {
      case 'K' -> key(Fields.key(defaults, content, repairs));
      case 'M' -> AbcMeter.read(content, repairs).ifPresent(this::meter);
      case 'L' -> Fields.unit(content, repairs).ifPresent(unit -> set(defaults.withUnit(unit)));
      case 'Q' ->
          AbcTempo.read(content, defaults.unit(), repairs)
              .ifPresent(tempo -> add(new MeasureItem.TempoMark(tempo)));
      case 'U' -> set(Fields.symbol(defaults, content, repairs));
      case 'I' -> set(Fields.directive(defaults, content, repairs));
      case 'P' -> {
        String label = content.rest();
        if (!label.isEmpty()) {
          add(new MeasureItem.Label(label));
        }
      }
      case 'V' -> key(Fields.voice(defaults, FieldWord.all(content, repairs), repairs));
      case 'w', 'W' -> remarks.lyrics();
      default -> {
        if (letter >= 'A' && letter <= 'G') {
          repairs.add(
              field, "the field %s: belongs above the notes; it was left out".formatted(letter));
        } else {
          Fields.leaveOut(letter, field, repairs);
        }
      }
    }
  }

  private void meter(AbcMeter meter) {
    set(defaults.withMeter(meter));
    add(new MeasureItem.Change(Optional.empty(), Optional.of(meter), Optional.empty()));
  }

  private void key(NoteDefaults changed) {
    boolean sameKey = changed.key().equals(defaults.key());
    boolean sameClef = changed.clef().equals(defaults.clef());
    if (!sameKey || !sameClef) {
      add(
          new MeasureItem.Change(
              sameKey ? Optional.empty() : Optional.of(changed.key()),
              Optional.empty(),
              sameClef ? Optional.empty() : Optional.of(changed.clef())));
    }
    set(changed);
  }

  private void add(MeasureItem item) {
    measures.current().items.add(() -> item);
  }

  private void music(LineCursor cursor) {
    while (!cursor.done()) {
      element(cursor);
    }
  }

  private void element(LineCursor cursor) {
    LineCursor start = cursor.copy();
    if (BarLine.isNext(cursor)) {
      Optional<BarLine> bar = BarLine.read(cursor, repairs);
      bar.ifPresent(
          sign -> {
            overlay = false;
            measures.bar(sign);
            notes.barLine(sign);
            BarLine.ending(cursor, true, repairs).ifPresent(measures::ending);
          });
      return;
    }
    if (overlay) {
      skip(cursor);
      return;
    }
    switch (cursor.peek()) {
      case '[' -> bracket(cursor, start);
      case '"' -> words(cursor);
      case '.' -> dot(cursor);
      case '`', '$' -> cursor.next();
      case 'y' -> {
        cursor.next();
        cursor.takeWhile(LineCursor::isDigit);
      }
      case '\\' -> {
        cursor.next();
        if (!cursor.copy().rest().isEmpty()) {
          repairs.add(start, "'\\' is allowed only at the end of a line; it was left out");
        }
      }
      case '&' -> overlay(cursor, start);
      default -> notes(cursor);
    }
  }

  private void notes(LineCursor cursor) {
    // "(&" and "&)" enclose a second voice of several measures.
    if (cursor.peek() == '(' && cursor.peek(1) == '&') {
      LineCursor start = cursor.copy();
      cursor.next();
      overlay(cursor, start);
    } else if (!notes.read(cursor)) {
      leaveOut(cursor);
    }
  }

  /** A second voice in the same measure (ABC 2.1, section 'Voice overlay'). */
  private void overlay(LineCursor cursor, LineCursor start) {
    cursor.takeWhile(c -> c == '&');
    overlay = !cursor.take(')') && start.peek() == '&';
    repairs.add(
        start, "'&' begins a second voice in the same measure; only the first voice was read");
  }

  private static void skip(LineCursor cursor) {
    if (cursor.peek() == '"') {
      cursor.to(UnusedSigns.wordsEnd(cursor.line().text(), cursor.at()));
    }
    cursor.next();
  }

  private void bracket(LineCursor cursor, LineCursor start) {
    if (LineCursor.isDigit(cursor.peek(1))) {
      BarLine.ending(cursor, false, repairs).ifPresent(measures::ending);
      return;
    }
    String text = start.line().text();
    if (!UnusedSigns.isField(text, start.at())) {
      notes(cursor);
      return;
    }
    int end = UnusedSigns.fieldEnd(text, start.at());
    boolean closed = text.charAt(end) == ']';
    if (!closed) {
      repairs.add(start, "the field that begins here has no end; it was read to the next blank");
    }
    SourceLine field = start.line().part(start.at() + 1, closed ? end : end + 1);
    cursor.to(end + 1);
    field(field.letter(), field.content(), new LineCursor(field, 0));
  }

  // A dot may begin a dotted slur or tie, which is read like a normal one.
  private void dot(LineCursor cursor) {
    if (cursor.peek(1) == '(' || cursor.peek(1) == '-') {
      cursor.next();
    }
    notes(cursor);
  }

  private void words(LineCursor cursor) {
    LineCursor start = cursor.copy();
    int end = UnusedSigns.wordsEnd(cursor.line().text(), cursor.at());
    boolean closed = end > cursor.at() && cursor.line().text().charAt(end) == '"';
    cursor.next();
    String text = cursor.to(closed ? end : end + 1);
    if (closed) {
      cursor.next();
    } else {
      repairs.add(start, "the words that begin here have no end; they were read to the next blank");
    }
    String words = POSITION.matcher(text).replaceFirst("");
    boolean placed = words.length() < text.length();
    if (!words.isEmpty() && "^_<>@".indexOf(words.charAt(0)) >= 0) {
      placed = true;
      words = words.substring(1);
    }
    if (words.isBlank()) {
      return;
    }
    if (!placed && CHORD_SYMBOL.matcher(words.strip()).matches()) {
      remarks.chordSymbol();
    } else {
      add(new MeasureItem.Words(words.strip(), text.startsWith("_")));
    }
  }

  /** Leaves out a sign that has no meaning where it stands. */
  private void leaveOut(LineCursor cursor) {
    LineCursor start = cursor.copy();
    char sign = cursor.next();
    switch (sign) {
      case ',', '\'' ->
          repairs.add(
              start, "'%s' belongs immediately after a note; it was left out".formatted(sign));
      case ']', '}', '[', '{' ->
          repairs.add(start, "'%s' has no counterpart here; it was left out".formatted(sign));
      case '!' -> repairs.add(start, "a single '!' is not a decoration; it was left out");
      default -> {
        if (LineCursor.isDigit(sign) || sign == '/') {
          cursor.takeWhile(c -> c == '/' || LineCursor.isDigit(c));
          repairs.add(start, "a length belongs immediately after its note; it was left out");
        } else {
          repairs.add(start, "the sign '%s' is not used here; it was left out".formatted(sign));
        }
      }
    }
  }
}
