package fingering.practice;

import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A line of the journal: {@code 2026-11-21 18:30 | quarter=60 | all | read through}.
 *
 * @param when the local date and time, to the minute
 * @param clean the fastest clean tempo, 10 beats a minute or more; empty if none was clean
 * @param measures the measures it is about
 * @param note a note on one line; may be empty
 */
public record JournalEntry(
    LocalDateTime when, Optional<Tempo> clean, MeasureSpan measures, String note) {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final String ALL = "all";
  private static final String NONE = "-";
  private static final int FIELDS = 4;

  /** Characters; far more than anybody writes about a day. */
  private static final int LONGEST_NOTE = 2000;

  /**
   * Truncates the time to the minute, and joins the lines of the note.
   *
   * @throws JournalException if the note is too long or the tempo too slow
   */
  public JournalEntry {
    when = when.truncatedTo(ChronoUnit.MINUTES);
    note = note.replaceAll("[\\p{Cntrl}\\s\\u2028\\u2029]+", " ").strip();
    if (note.length() > LONGEST_NOTE) {
      throw new JournalException(
          "The note has "
              + note.length()
              + " characters: shorten it to at most "
              + LONGEST_NOTE
              + ".");
    }
    clean.ifPresent(
        tempo -> {
          if (tempo.perMinute().compareTo(BigDecimal.TEN) < 0) {
            throw new JournalException(
                "A clean tempo of " + tempo + " is too slow: count in a shorter note value.");
          }
        });
  }

  /**
   * Reads a line.
   *
   * @throws FingeringException if it is not an entry; the message says why
   */
  static JournalEntry parse(String line) {
    List<String> fields = List.of(line.split("\\|", FIELDS));
    if (fields.size() < FIELDS) {
      throw new FingeringException(
          "it has "
              + fields.size()
              + (fields.size() == 1 ? " field" : " fields")
              + " instead of four: date and time, clean tempo, measures, and note, separated by |");
    }
    String clean = fields.get(1).strip();
    String measures = fields.get(2).strip();
    return new JournalEntry(
        when(fields.get(0).strip()),
        clean.equals(NONE) ? Optional.empty() : Optional.of(Tempo.parse(clean)),
        measures.equals(ALL) ? MeasureSpan.WHOLE : MeasureSpan.parse(measures),
        fields.get(3));
  }

  private static LocalDateTime when(String text) {
    try {
      return LocalDateTime.parse(text, WHEN);
    } catch (DateTimeParseException e) {
      throw new FingeringException(
          "'" + text + "' is not a date and time such as 2026-11-21 18:30", e);
    }
  }

  /** Returns the entry as a line of the file, without a line break. */
  String line() {
    String span =
        measures
            .ends()
            .map(e -> e.first().equals(e.last()) ? e.first() : e.first() + "-" + e.last())
            .orElse(ALL);
    return String.join(
            " | ", List.of(WHEN.format(when), clean.map(Tempo::toString).orElse(NONE), span, note))
        .stripTrailing();
  }
}
