package fingering.cli.terminal;

import com.google.common.base.Ascii;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Dates as they are typed and told. */
public final class Dates {
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final int SHORTEST_NAME = 3;

  private Dates() {}

  /** {@code Saturday 12 December 2026}. */
  public static String told(LocalDate date) {
    return LONG.format(date);
  }

  /** {@code Sat 12 Dec}. */
  public static String brief(LocalDate date) {
    return SHORT.format(date);
  }

  public static final class DateConverter implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return LocalDate.parse(text.strip());
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "'" + text + "' is no date; write year, month and day, such as 2026-12-12");
      }
    }
  }

  public static final class TimeConverter implements ITypeConverter<LocalDateTime> {
    @Override
    public LocalDateTime convert(String text) {
      try {
        return LocalDateTime.parse(text.strip().replace(' ', 'T'));
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "'" + text + "' is no date and time; write them as 2026-11-21T18:30");
      }
    }
  }

  public static final class WeekdayConverter implements ITypeConverter<DayOfWeek> {
    @Override
    public DayOfWeek convert(String text) {
      String typed = Ascii.toLowerCase(text.strip());
      return Arrays.stream(DayOfWeek.values())
          .filter(day -> typed.length() >= SHORTEST_NAME && name(day).startsWith(typed))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'" + text + "' is no day of the week; write mon, tue, wed and so on"));
    }

    private static String name(DayOfWeek day) {
      return Ascii.toLowerCase(day.getDisplayName(TextStyle.FULL, Locale.ENGLISH));
    }
  }
}
