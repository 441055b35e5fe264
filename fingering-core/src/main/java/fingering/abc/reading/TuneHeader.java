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
 * The header of a tune.
 *
 * @param title its first title, empty for none
 * @param composer its composer, empty for none
 * @param name the name of its voice, empty for none
 * @param voice the id of the voice in V: fields, empty for none
 * @param defaults the settings at the beginning of the body
 * @param tempo the tempo at the beginning
 * @param body the lines after the header
 * @param remarks assumptions, one sentence each, without full stop
 */
public record TuneHeader(
    String title,
    String composer,
    String name,
    String voice,
    NoteDefaults defaults,
    Optional<AbcTempo> tempo,
    ImmutableList<SourceLine> body,
    ImmutableList<String> remarks) {

  /**
   * Reads the header of a tune.
   *
   * @throws AbcException if a field is not valid
   */
  public static TuneHeader read(TuneSource tune) {
    return new Reading().read(tune);
  }

  /** Collects the fields. Those that depend on others are completed at the end. */
  private static final class Reading {
    private String title = "";
    private String composer = "";
    private String name = "";
    private String voice = "";
    private NoteDefaults defaults = NoteDefaults.START;
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
        defaults = defaults.withUnit(defaults.meter().unit());
      }
      // The clef of a voice overrides the clef in the key field.
      voiceWords.ifPresent(words -> defaults = Fields.voice(defaults, words));
      return new TuneHeader(
          title,
          composer,
          name,
          voice,
          defaults,
          tempo.map(mark -> AbcTempo.read(mark, defaults.unit())),
          ImmutableList.copyOf(lines.subList(at, lines.size())),
          remarks());
    }

    /** In the standard K: ends the header; fields after it are accepted too, except P:. */
    private boolean isHeader(SourceLine line) {
      return line.comment() || (line.field() && !(hasKey && line.letter() == 'P'));
    }

    private void line(SourceLine line) {
      if (line.comment()) {
        defaults = Fields.directive(defaults, line.directive());
        return;
      }
      LineCursor content = line.content();
      switch (line.letter()) {
        case 'X' -> hasNumber = true;
        case 'T' -> title = title.isEmpty() ? content.rest() : title;
        case 'C' -> composer = composer.isEmpty() ? content.rest() : composer;
        case 'K' -> {
          hasClef |= FieldWord.all(line.content()).stream().anyMatch(AbcClef::isClefWord);
          defaults = Fields.key(defaults, content);
          hasKey = true;
        }
        case 'M' -> {
          defaults = defaults.withMeter(AbcMeter.read(content));
          hasMeter = true;
        }
        case 'L' -> {
          defaults = defaults.withUnit(Fields.unit(content));
          hasUnit = true;
        }
        case 'Q' -> tempo = Optional.of(content);
        case 'U' -> defaults = Fields.symbol(defaults, content);
        case 'I' -> defaults = Fields.directive(defaults, content);
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
        hasClef |= AbcClef.isClefWord(word);
      }
      voiceWords = Optional.of(words);
    }

    private ImmutableList<String> remarks() {
      List<String> missing = new ArrayList<>();
      List<String> assumed = new ArrayList<>();
      if (!hasNumber) {
        missing.add("number (X:)");
      }
      if (!hasMeter) {
        missing.add("meter (M:)");
        assumed.add("free meter");
      }
      if (!hasUnit) {
        missing.add("note length (L:)");
        assumed.add(defaults.unit().equals(AbcMeter.FREE.unit()) ? "eighths" : "sixteenths");
      }
      if (!hasKey) {
        missing.add("key (K:)");
        assumed.add("C major");
      }
      if (!hasClef) {
        missing.add("clef");
        assumed.add("the treble clef");
      }
      if (assumed.isEmpty()) {
        return ImmutableList.of();
      }
      return ImmutableList.of(
          "the tune has no %s; %s %s assumed"
              .formatted(
                  joined(missing, "or"), joined(assumed, "and"), isOne(assumed) ? "is" : "are"));
    }

    private static boolean isOne(List<String> assumed) {
      return assumed.size() == 1 && !assumed.get(0).endsWith("s");
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

  /**
   * Returns the exception for a second voice.
   *
   * @param id the id of the voice
   */
  static AbcException secondVoice(LineCursor place, String id) {
    return place.error(
        "a second voice '%s' begins here, but only one voice is read: write each voice as a separate tune."
            .formatted(id));
  }
}
