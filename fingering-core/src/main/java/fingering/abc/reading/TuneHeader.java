package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.AbcTempo;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.SourceLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What stands above the music of a tune.
 *
 * @param title its first title, empty for none
 * @param composer who made it, empty where nobody is named
 * @param name the name of its voice, empty for none
 * @param voice the voice's short name in V: fields, empty where there is none
 * @param setting what holds at the beginning
 * @param tempo the tempo at the beginning
 * @param body the lines below
 * @param remarks what was assumed, a sentence each
 */
public record TuneHeader(
    String title,
    String composer,
    String name,
    String voice,
    NoteDefaults setting,
    Optional<AbcTempo> tempo,
    ImmutableList<SourceLine> body,
    ImmutableList<String> remarks) {

  public static TuneHeader read(TuneSource tune) {
    return new Reading().read(tune);
  }

  /** Collects the fields; what depends on others waits until all are known. */
  private static final class Reading {
    private String title = "";
    private String composer = "";
    private String name = "";
    private String voice = "";
    private NoteDefaults setting = NoteDefaults.START;
    private boolean hasNumber;
    private boolean hasKey;
    private boolean hasMeter;
    private boolean hasUnit;
    private boolean hasClef;
    private Optional<LineCursor> tempo = Optional.empty();
    private Optional<List<FieldWord>> voiceWords = Optional.empty();

    TuneHeader read(TuneSource tune) {
      List<SourceLine> lines = tune.lines();
      int at = 0;
      while (at < lines.size() && isHeader(lines.get(at))) {
        line(lines.get(at));
        at++;
      }
      if (!hasUnit) {
        setting = setting.withUnit(setting.meter().unit());
      }
      // What a voice says of its clef goes before what the key says.
      voiceWords.ifPresent(words -> setting = Fields.voice(setting, words));
      return new TuneHeader(
          title,
          composer,
          name,
          voice,
          setting,
          tempo.map(mark -> AbcTempo.read(mark, setting.unit())),
          ImmutableList.copyOf(lines.subList(at, lines.size())),
          remarks());
    }

    /** The standard ends the header at K:; whoever types a line by hand may forget that. */
    private boolean isHeader(SourceLine line) {
      return line.comment() || (line.field() && !(hasKey && line.letter() == 'P'));
    }

    private void line(SourceLine line) {
      if (line.comment()) {
        setting = Fields.directive(setting, line.directive());
        return;
      }
      LineCursor content = line.content();
      switch (line.letter()) {
        case 'X' -> hasNumber = true;
        case 'T' -> title = title.isEmpty() ? content.rest() : title;
        case 'C' -> composer = composer.isEmpty() ? content.rest() : composer;
        case 'K' -> {
          hasClef |= FieldWord.all(line.content()).stream().anyMatch(AbcClef::speaks);
          setting = Fields.key(setting, content);
          hasKey = true;
        }
        case 'M' -> {
          setting = setting.withMeter(AbcMeter.read(content));
          hasMeter = true;
        }
        case 'L' -> {
          setting = setting.withUnit(Fields.unit(content));
          hasUnit = true;
        }
        case 'Q' -> tempo = Optional.of(content);
        case 'U' -> setting = Fields.symbol(setting, content);
        case 'I' -> setting = Fields.directive(setting, content);
        case 'V' -> voice(line);
        default -> Fields.refuse(line.letter(), new LineCursor(line, 0));
      }
    }

    private void voice(SourceLine line) {
      List<FieldWord> words = FieldWord.all(line.content());
      String id = words.isEmpty() ? "" : words.get(0).toString();
      if (!voice.isEmpty() && !voice.equals(id)) {
        throw secondVoice(new LineCursor(line, 0), id);
      }
      voice = id;
      for (FieldWord word : words) {
        if (word.key().equals("name") || word.key().equals("nm")) {
          name = word.value().strip();
        }
        hasClef |= AbcClef.speaks(word);
      }
      voiceWords = Optional.of(words);
    }

    private ImmutableList<String> remarks() {
      List<String> missing = new ArrayList<>();
      List<String> taken = new ArrayList<>();
      if (!hasNumber) {
        missing.add("number (X:)");
      }
      if (!hasMeter) {
        missing.add("meter (M:)");
        taken.add("free meter");
      }
      if (!hasUnit) {
        missing.add("note length (L:)");
        taken.add(setting.unit().equals(AbcMeter.FREE.unit()) ? "eighths" : "sixteenths");
      }
      if (!hasKey) {
        missing.add("key (K:)");
        taken.add("C major");
      }
      if (!hasClef) {
        missing.add("clef");
        taken.add("the treble clef");
      }
      if (taken.isEmpty()) {
        return ImmutableList.of();
      }
      return ImmutableList.of(
          "the tune names no %s; %s %s taken"
              .formatted(joined(missing, "or"), joined(taken, "and"), isOne(taken) ? "is" : "are"));
    }

    private static boolean isOne(List<String> taken) {
      return taken.size() == 1 && !taken.get(0).endsWith("s");
    }

    private static String joined(List<String> all, String word) {
      int last = all.size() - 1;
      return last == 0
          ? all.get(0)
          : all.subList(0, last).stream().collect(Collectors.joining(", "))
              + " "
              + word
              + " "
              + all.get(last);
    }
  }

  /** What to throw where a second voice begins. */
  static AbcException secondVoice(LineCursor place, String id) {
    return place.wrong(
        "a second voice '%s' begins here, and only a single line is read: make each voice a tune of its own."
            .formatted(id));
  }
}
