package fingering.cli.terminal;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as text, in English. */
public final class Dates {
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private Dates() {}

  /** {@code Saturday 12 December 2026}. */
  public static String full(LocalDate date) {
    return FULL.format(date);
  }

  /** {@code Sat 12 Dec}. */
  public static String brief(LocalDate date) {
    return SHORT.format(date);
  }
}
