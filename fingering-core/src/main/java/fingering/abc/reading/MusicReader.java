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

/** Reads the music of a tune, line by line (ABC 2.1, section 'The tune body'). */
public final class MusicReader {
  /** As in {@code Am7}, {@code F#dim/C}. */
  private static final Pattern CHORD_SYMBOL =
      Pattern.compile(
          "\\(?[A-G][#b\u266f\u266d]?(?:m|min|maj|dim|aug|sus|\\+)?\\d{0,2}(?:sus\\d|add\\d{1,2})?(?:/[A-Ga-g][#b]?)?\\)?");

  private static final Pattern PLACE = Pattern.compile("@-?[\\d.]+,\\s*-?[\\d.]+\\s*");

  private final TuneHeader header;
  private final ReadingRemarks remarks = new ReadingRemarks();
  private final MeasureCollector measures;
  private final SoundReader sounds;
  private NoteDefaults setting;
  private String voice;

  private MusicReader(TuneHeader header) {
    this.header = header;
    setting = header.setting();
    voice = header.voice();
    measures = new MeasureCollector(setting.meter());
    sounds = new SoundReader(setting, measures, remarks);
  }

  /** Reads the music below a header. */
  public static Tune read(TuneHeader header, LineCursor end) {
    return new MusicReader(header).tune(end);
  }

  private Tune tune(LineCursor end) {
    for (SourceLine line : header.body()) {
      if (line.comment()) {
        set(Fields.directive(setting, line.directive()));
      } else if (line.field()) {
        field(line.letter(), line.content(), new LineCursor(line, 0));
      } else {
        music(new LineCursor(line.code(), 0));
      }
      sounds.lineEnd();
    }
    sounds.finish();
    measures.finish();
    if (!sounds.anyNote()) {
      throw end.wrong("the tune ends here without a note: type some, such as D2 FA d4.");
    }
    ImmutableList<TuneMeasure> finished = measures.finished();
    ImmutableList.Builder<String> told = ImmutableList.builder();
    told.addAll(header.remarks());
    measures.remark().ifPresent(told::add);
    told.addAll(remarks.sentences(finished.stream().map(TuneMeasure::number).toList()));
    return new Tune(header, finished, told.build());
  }

  private void set(NoteDefaults changed) {
    setting = changed;
    sounds.setting(changed);
  }

  private void field(char letter, LineCursor content, LineCursor field) {
    switch (letter) {
      case 'K' -> key(Fields.key(setting, content));
      case 'M' -> {
        AbcMeter meter = AbcMeter.read(content);
        set(setting.withMeter(meter));
        add(new MeasureItem.Change(Optional.empty(), Optional.of(meter), Optional.empty()));
      }
      case 'L' -> set(setting.withUnit(Fields.unit(content)));
      case 'Q' -> add(new MeasureItem.TempoMark(AbcTempo.read(content, setting.unit())));
      case 'U' -> set(Fields.symbol(setting, content));
      case 'I' -> set(Fields.directive(setting, content));
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
        key(Fields.voice(setting, words));
      }
      case 'w', 'W' -> remarks.words();
      default -> Fields.refuse(letter, field);
    }
  }

  private void key(NoteDefaults changed) {
    boolean sameKey = changed.key().equals(setting.key());
    boolean sameClef = changed.clef().equals(setting.clef());
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
    LineCursor start = cursor.back(0);
    if (BarLine.comes(cursor)) {
      BarLine sign = BarLine.read(cursor);
      measures.bar(sign);
      sounds.barLine(sign);
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
          throw start.wrong("'\\' may only stand at the end of a line: leave it out.");
        }
      }
      default -> {
        if (!sounds.read(cursor)) {
          throw unread(cursor);
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
      sounds.read(cursor);
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

  // A dot may be the first of a dotted slur or tie, which is read like another.
  private void dot(LineCursor cursor) {
    if (cursor.peek(1) == '(' || cursor.peek(1) == '-') {
      cursor.next();
    }
    sounds.read(cursor);
  }

  private void words(LineCursor cursor) {
    LineCursor start = cursor.back(0);
    cursor.next();
    String text = cursor.upTo('"', "the text", start);
    String words = PLACE.matcher(text).replaceFirst("");
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

  private static AbcException unread(LineCursor cursor) {
    char next = cursor.peek();
    if (LineCursor.isLetter(next)) {
      return cursor.wrong(
          "'%s' is no note and no sign: notes are C D E F G A B and, an octave higher, c d e f g a b."
              .formatted(next));
    }
    return switch (next) {
      case '&' ->
          cursor.wrong(
              "'&' begins a second voice in the same measure, and only a single line is read: write it as a tune of its own.");
      case '+' ->
          cursor.wrong("'+' is no sign of a note: signs stand as in !trill!, chords in [ ].");
      case ']', '}' -> cursor.wrong("'%s' closes nothing here: leave it out.".formatted(next));
      case ',', '\'' ->
          cursor.wrong(
              "'%s' stands right behind the letter of a note: put it there.".formatted(next));
      case '#', '♯' -> cursor.wrong(behind(cursor, "sharp", '^', "F"));
      case '♭' -> cursor.wrong(behind(cursor, "flat", '_', "B"));
      default ->
          LineCursor.isDigit(next) || next == '/'
              ? cursor.wrong(
                  "a length stands right behind its note, as in D2 or D/2: put it there.")
              : cursor.wrong("'%s' means nothing between notes: leave it out.".formatted(next));
    };
  }

  /** What to type where an accidental stands behind the letter of its note, as it is said. */
  private static String behind(LineCursor cursor, String name, char sign, String example) {
    char before = cursor.at() > 0 ? cursor.back(1).peek() : LineCursor.NOTHING;
    String note = "ABCDEFGabcdefg".indexOf(before) >= 0 ? String.valueOf(before) : example;
    return "a %s is written before its note: write %s%s for %s %s."
        .formatted(name, sign, note, Ascii.toUpperCase(note), name);
  }
}
