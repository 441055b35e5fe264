package fingering.cli.option;

import fingering.demand.MeasureSpan;
import fingering.exercise.ScalePattern;
import fingering.files.FileNames;
import fingering.fingerboard.LeftHand;
import fingering.lesson.LessonLadder;
import fingering.lesson.PlanName;
import fingering.music.MeasureBeat;
import fingering.music.Tempo;
import fingering.musicxml.SelectionException;
import fingering.musicxml.file.ScoreLimits;
import fingering.playability.Forces;
import fingering.playability.Severity;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.NoteNames;
import fingering.tempo.PlayerSpeed;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/**
 * Converters from the text after an option to its value. Each reports a wrong text as one phrase
 * that says what to type instead; picocli adds the name of the option.
 */
public final class Converters {
  /** The name that stands for the terminal, as in other programs. */
  public static final String TERMINAL = "-";

  private Converters() {}

  /** A converter made from a parser that throws {@link FingeringException}. */
  private abstract static class Converter<T> implements ITypeConverter<T> {
    private final Function<String, T> parser;

    Converter(Function<String, T> parser) {
      this.parser = parser;
    }

    @Override
    public final T convert(String text) {
      try {
        return parser.apply(text);
      } catch (FingeringException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  public static final class TempoConverter extends Converter<Tempo> {
    TempoConverter() {
      super(Tempo::parse);
    }
  }

  public static final class InstrumentConverter extends Converter<Instrument> {
    InstrumentConverter() {
      super(text -> Instruments.standard().named(text));
    }
  }

  public static final class MeasureSpanConverter extends Converter<MeasureSpan> {
    MeasureSpanConverter() {
      super(MeasureSpan::parse);
    }
  }

  public static final class MeasureBeatConverter extends Converter<MeasureBeat> {
    MeasureBeatConverter() {
      super(MeasureBeat::parse);
    }
  }

  public static final class ScalePatternConverter extends Converter<ScalePattern> {
    ScalePatternConverter() {
      super(ScalePattern::named);
    }
  }

  public static final class SeverityConverter extends Converter<Severity> {
    SeverityConverter() {
      super(
          text ->
              Arrays.stream(Severity.values())
                  .filter(severity -> severity.id().equalsIgnoreCase(text.strip()))
                  .findFirst()
                  .orElseThrow(
                      () -> mistake(text, "is not one of unplayable, risky, worth-knowing")));
    }
  }

  static final class ForcesConverter extends Converter<Forces> {
    ForcesConverter() {
      super(
          text ->
              Arrays.stream(Forces.values())
                  .filter(forces -> forces.id().equalsIgnoreCase(text.strip()))
                  .findFirst()
                  .orElseThrow(() -> mistake(text, "is neither section nor one-player")));
    }
  }

  static final class HandConverter extends Converter<LeftHand> {
    HandConverter() {
      super(LeftHand::parse);
    }
  }

  static final class LimitsConverter extends Converter<ScoreLimits> {
    LimitsConverter() {
      super(ScoreLimits.DEFAULT::with);
    }
  }

  static final class NoteNamesConverter extends Converter<NoteNames> {
    NoteNamesConverter() {
      super(NoteNames::parse);
    }
  }

  static final class PlanNameConverter extends Converter<PlanName> {
    PlanNameConverter() {
      super(PlanName::parse);
    }
  }

  static final class PresetConverter extends Converter<String> {
    PresetConverter() {
      super(Weights::presetName);
    }
  }

  static final class SpeedConverter extends Converter<PlayerSpeed> {
    SpeedConverter() {
      super(PlayerSpeed::named);
    }
  }

  public static final class DateConverter extends Converter<LocalDate> {
    DateConverter() {
      super(Converters::date);
    }
  }

  public static final class DateTimeConverter extends Converter<LocalDateTime> {
    DateTimeConverter() {
      super(Converters::dateTime);
    }
  }

  public static final class WeekdayConverter extends Converter<DayOfWeek> {
    WeekdayConverter() {
      super(LessonLadder::day);
    }
  }

  /** Names of files, but not that of the terminal; picocli converts to {@code Path} with it. */
  public static final class FileConverter extends Converter<Path> {
    public FileConverter() {
      super(Converters::file);
    }
  }

  /** Names of files, or {@code -} for the terminal. */
  public static final class OutputConverter extends Converter<Path> {
    /** Creates a converter, as picocli does. */
    public OutputConverter() {
      super(text -> text.equals(TERMINAL) ? Path.of(text) : file(text));
    }
  }

  private static Path file(String text) {
    if (text.isBlank()) {
      throw new FingeringException("the name is empty; name a file");
    }
    if (text.equals(TERMINAL)) {
      throw new FingeringException(
          "'-' is not a file name; only --output takes it, for the terminal");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new FingeringException(FileNames.fault(text), e);
    }
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text.strip());
    } catch (DateTimeParseException e) {
      throw mistake(text, "is not a date; write year, month and day, such as 2026-12-12");
    }
  }

  private static LocalDateTime dateTime(String text) {
    try {
      return LocalDateTime.parse(text.strip().replace(' ', 'T'));
    } catch (DateTimeParseException e) {
      throw mistake(text, "is not a date and time; write them as 2026-11-21T18:30");
    }
  }

  private static FingeringException mistake(String text, String fault) {
    return new FingeringException("'" + text + "' " + fault);
  }

  /**
   * The value that a parser returns, for options that are parsed only when the command runs.
   *
   * @throws ParameterException if the parser rejects the text
   * @throws SelectionException if the parser rejects a file that the text names
   */
  public static <T> T parsed(CommandSpec command, Supplier<T> parser) {
    try {
      return parser.get();
    } catch (SelectionException e) {
      throw e;
    } catch (FingeringException e) {
      throw new ParameterException(command.commandLine(), e.getMessage(), e);
    }
  }
}
