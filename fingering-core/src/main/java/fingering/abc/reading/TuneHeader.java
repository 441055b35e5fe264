package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.AbcTempo;
import fingering.abc.syntax.FieldWord;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.abc.syntax.SourceLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The header of a tune, for one of its voices.
 *
 * @param title its first title, empty for none
 * @param composer its composer, empty for none
 * @param name the name of its voice, empty for none
 * @param defaults the settings at the beginning of the body
 * @param tempo the tempo at the beginning
 * @param firstMeasure the number of the first full measure
 * @param body the lines of the voice after the header
 */
public record TuneHeader(
    String title,
    String composer,
    String name,
    NoteDefaults defaults,
    Optional<AbcTempo> tempo,
    int firstMeasure,
    ImmutableList<SourceLine> body) {

  /**
   * What is read before the notes.
   *
   * @param voices the header of each voice, at least one
   * @param remarks assumptions, one sentence each, without full stop
   */
  public record Opening(ImmutableList<TuneHeader> voices, ImmutableList<String> remarks) {}

  /** Reads the header of a tune, and divides the body among the voices. */
  public static Opening read(TuneSource tune, Repairs repairs) {
    return new Reading(repairs).read(tune);
  }

  /** Collects the fields. Those that depend on others are completed at the end. */
  private static final class Reading {
    private final Repairs repairs;
    private final VoiceLines voices;
    private String title = "";
    private String composer = "";
    private NoteDefaults defaults = NoteDefaults.START;
    private int firstMeasure = 1;
    private boolean hasNumber;
    private boolean hasKey;
    private boolean hasMeter;
    private boolean hasUnit;
    private boolean hasClef;
    private Optional<LineCursor> tempo = Optional.empty();

    Reading(Repairs repairs) {
      this.repairs = repairs;
      voices = new VoiceLines(repairs);
    }

    Opening read(TuneSource tune) {
      List<SourceLine> lines = tune.lines();
      int at = 0;
      while (at < lines.size() && isHeader(lines.get(at))) {
        line(lines.get(at));
        at++;
      }
      if (!hasUnit) {
        defaults = defaults.withUnit(defaults.meter().unit());
      }
      lines.subList(at, lines.size()).forEach(voices::add);
      Optional<AbcTempo> first =
          tempo.flatMap(mark -> AbcTempo.read(mark, defaults.unit(), repairs));
      return new Opening(
          voices.ids().stream()
              .map(id -> voice(id, first))
              .collect(ImmutableList.toImmutableList()),
          remarks());
    }

    /** The header of a voice. Its clef overrides the clef in the key field. */
    private TuneHeader voice(String id, Optional<AbcTempo> first) {
      List<FieldWord> words = voices.words(id);
      String name =
          words.stream()
              .filter(word -> word.key().equals("name") || word.key().equals("nm"))
              .map(word -> word.value().strip())
              .reduce((before, last) -> last)
              .orElse("");
      hasClef |= words.stream().skip(1).anyMatch(AbcClef::isClefWord);
      return new TuneHeader(
          title,
          composer,
          name,
          Fields.voice(defaults, words, repairs),
          first,
          firstMeasure,
          voices.lines(id));
    }

    /**
     * In the standard K: ends the header; fields after it are accepted too, except P:. An empty
     * line in the header is ignored.
     */
    private boolean isHeader(SourceLine line) {
      return line.comment() || line.blank() || (line.field() && !(hasKey && line.letter() == 'P'));
    }

    private void line(SourceLine line) {
      if (line.blank()) {
        return;
      }
      if (line.comment()) {
        defaults = Fields.directive(defaults, line.directive(), repairs);
        firstMeasure = Fields.firstMeasure(line.directive(), repairs).orElse(firstMeasure);
        return;
      }
      LineCursor content = line.content();
      switch (line.letter()) {
        case 'X' -> hasNumber = true;
        case 'T' -> title = title.isEmpty() ? content.rest() : title;
        case 'C' -> composer = composer.isEmpty() ? content.rest() : composer;
        case 'K' -> {
          hasClef |=
              FieldWord.all(line.content(), new Repairs()).stream().anyMatch(AbcClef::isClefWord);
          defaults = Fields.key(defaults, content, repairs);
          if (!hasKey) {
            voices.first();
          }
          hasKey = true;
        }
        case 'M' -> {
          Optional<AbcMeter> meter = AbcMeter.read(content, repairs);
          meter.ifPresent(read -> defaults = defaults.withMeter(read));
          hasMeter |= meter.isPresent();
        }
        case 'L' -> {
          Optional<BigFraction> unit = Fields.unit(content, repairs);
          unit.ifPresent(read -> defaults = defaults.withUnit(read));
          hasUnit |= unit.isPresent();
        }
        case 'Q' -> tempo = Optional.of(content);
        case 'U' -> defaults = Fields.symbol(defaults, content, repairs);
        case 'I' -> defaults = Fields.directive(defaults, content, repairs);
        case 'V' -> voices.field(content);
        default -> Fields.leaveOut(line.letter(), new LineCursor(line, 0), repairs);
      }
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
}
