package fingering.abc.reading;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.AbcTempo;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.SourceLine;
import java.util.List;
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
  private final ReadingRemarks remarks = new ReadingRemarks();
  private final MeasureCollector measures;
  private final NoteSequenceReader notes;
  private NoteDefaults defaults;
  private String voice;

  private MusicReader(TuneHeader header) {
    this.header = header;
    defaults = header.defaults();
    voice = header.voice();
    measures = new MeasureCollector(defaults.meter());
    notes = new NoteSequenceReader(defaults, measures, remarks);
  }

  /**
   * Reads the body of a tune.
   *
   * @param end the end of the tune, for messages
   * @throws AbcException if it cannot be read
   */
  public static Tune read(TuneHeader header, LineCursor end) {
    return new MusicReader(header).tune(end);
  }

  private Tune tune(LineCursor end) {
    for (SourceLine line : header.body()) {
      if (line.comment()) {
        set(Fields.directive(defaults, line.directive()));
      } else if (line.field()) {
        field(line.letter(), line.content(), new LineCursor(line, 0));
      } else {
        music(new LineCursor(line.code(), 0));
      }
      notes.lineEnd();
    }
    notes.finish();
    measures.finish();
    if (!notes.anyNote()) {
      throw end.error("the tune ends here without a note: type some notes, such as D2 FA d4.");
    }
    ImmutableList<TuneMeasure> finished = measures.finished();
    ImmutableList.Builder<String> all = ImmutableList.builder();
    all.addAll(header.remarks());
    measures.remark().ifPresent(all::add);
    all.addAll(remarks.sentences(finished.stream().map(TuneMeasure::number).toList()));
    return new Tune(header, finished, all.build());
  }

  private void set(NoteDefaults changed) {
    defaults = changed;
    notes.defaults(changed);
  }

  private void field(char letter, LineCursor content, LineCursor field) {
    switch (letter) {
      case 'K' -> key(Fields.key(defaults, content));
      case 'M' -> {
        AbcMeter meter = AbcMeter.read(content);
        set(defaults.withMeter(meter));
        add(new MeasureItem.Change(Optional.empty(), Optional.of(meter), Optional.empty()));
      }
      case 'L' -> set(defaults.withUnit(Fields.unit(content)));
      case 'Q' -> add(new MeasureItem.TempoMark(AbcTempo.read(content, defaults.unit())));
      case 'U' -> set(Fields.symbol(defaults, content));
      case 'I' -> set(Fields.directive(defaults, content));
      case 'P' -> {
        String label = content.rest();
        if (!label.isEmpty()) {
          add(new MeasureItem.Label(label));
        }
      }
      case 'V' -> {
        List<FieldWord> words = FieldWord.all(content);
        String id = words.isEmpty() ? "" : words.get(0).toString();
        boolean begun = measures.size() > 0 || !measures.current().empty();
        if (!id.equals(voice) && (begun || !voice.isEmpty())) {
          throw TuneHeader.secondVoice(field, id);
        }
        voice = id;
        key(Fields.voice(defaults, words));
      }
      case 'w', 'W' -> remarks.lyrics();
      default -> Fields.refuse(letter, field);
    }
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
      BarLine sign = BarLine.read(cursor);
      measures.bar(sign);
      notes.barLine(sign);
      BarLine.ending(cursor, true).ifPresent(numbers -> measures.ending(numbers, start));
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
        if (!cursor.rest().isEmpty()) {
          throw start.error("'\\' is allowed only at the end of a line: leave it out.");
        }
      }
      default -> {
        if (!notes.read(cursor)) {
          throw notUnderstood(cursor);
        }
      }
    }
  }

  private void bracket(LineCursor cursor, LineCursor start) {
    Optional<String> ending = BarLine.ending(cursor, false);
    if (ending.isPresent()) {
      measures.ending(ending.get(), start);
      return;
    }
    if (!LineCursor.isLetter(cursor.peek(1)) || cursor.peek(2) != ':') {
      notes.read(cursor);
      return;
    }
    cursor.next();
    char letter = cursor.next();
    cursor.next();
    int from = cursor.at();
    cursor.upTo(']', "the field", start);
    SourceLine line = start.line();
    SourceLine cut =
        new SourceLine(line.source(), line.number(), line.text().substring(0, cursor.at() - 1));
    field(letter, new LineCursor(cut, from), new LineCursor(cut, start.at() + 1));
  }

  // A dot may begin a dotted slur or tie, which is read like a normal one.
  private void dot(LineCursor cursor) {
    if (cursor.peek(1) == '(' || cursor.peek(1) == '-') {
      cursor.next();
    }
    notes.read(cursor);
  }

  private void words(LineCursor cursor) {
    LineCursor start = cursor.copy();
    cursor.next();
    String text = cursor.upTo('"', "the text", start);
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

  private static AbcException notUnderstood(LineCursor cursor) {
    char next = cursor.peek();
    if (LineCursor.isLetter(next)) {
      return cursor.error(
          "'%s' is not a note or a decoration: notes are C D E F G A B and, an octave higher, c d e f g a b."
              .formatted(next));
    }
    return switch (next) {
      case '&' ->
          cursor.error(
              "'&' begins a second voice in the same measure, but only one voice is read: write it as a separate tune.");
      case '+' ->
          cursor.error(
              "'+' is not a decoration: write decorations as in !trill!, and chords in [ ].");
      case ']', '}' -> cursor.error("'%s' closes nothing here: leave it out.".formatted(next));
      case ',', '\'' ->
          cursor.error(
              "'%s' belongs immediately after the letter of a note: move it there."
                  .formatted(next));
      case '#', '♯' -> cursor.error(accidentalAfterNote(cursor, "sharp", '^', "F"));
      case '♭' -> cursor.error(accidentalAfterNote(cursor, "flat", '_', "B"));
      default ->
          LineCursor.isDigit(next) || next == '/'
              ? cursor.error(
                  "a length belongs immediately after its note, as in D2 or D/2: move it there.")
              : cursor.error("'%s' has no meaning between notes: leave it out.".formatted(next));
    };
  }

  /** The message for an accidental typed after the letter of its note. */
  private static String accidentalAfterNote(
      LineCursor cursor, String name, char sign, String example) {
    char before = cursor.at() > 0 ? cursor.back(1).peek() : LineCursor.NOTHING;
    String note = "ABCDEFGabcdefg".indexOf(before) >= 0 ? String.valueOf(before) : example;
    return "a %s is written before its note: write %s%s for %s %s."
        .formatted(name, sign, note, Ascii.toUpperCase(note), name);
  }
}
