package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was clean, day by day, as a student wrote it down. The order of the lines is the order of
 * what happened, whatever the clock said; the last line about some measures counts.
 *
 * @param entries the entries, in the order of the file
 * @param bad lines that are no entries; they stay in the file
 * @param remarks what else is odd, a sentence each
 */
public record Journal(
    ImmutableList<JournalEntry> entries,
    ImmutableList<BadLine> bad,
    ImmutableList<String> remarks) {
  private static final char UNREADABLE = '\uFFFD';
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** A journal in which nothing is written. */
  public static final Journal EMPTY =
      new Journal(ImmutableList.of(), ImmutableList.of(), ImmutableList.of());

  /**
   * A line that is no entry.
   *
   * @param number its number, from 1
   * @param text the line
   * @param why why it is none
   */
  public record BadLine(int number, String text, String why) {}

  /** Reads the text of a journal. Blank lines and those that begin with # are no entries. */
  public static Journal parse(String text) {
    String content = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    ImmutableList.Builder<JournalEntry> entries = ImmutableList.builder();
    ImmutableList.Builder<BadLine> bad = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    Optional<JournalEntry> last = Optional.empty();
    List<String> lines = content.lines().toList();
    boolean torn = !content.isEmpty() && !content.endsWith("\n") && !content.endsWith("\r");
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      boolean cut = torn && i == lines.size() - 1;
      try {
        JournalEntry entry = entry(line);
        if (last.filter(before -> entry.when().isBefore(before.when())).isPresent()) {
          remarks.add(
              "Line %d is dated before the line above it: was the clock set back? The order of the lines counts."
                  .formatted(i + 1));
        }
        if (cut) {
          remarks.add(
              "Line %d, the last, has no end: its note may be cut off. It is kept."
                  .formatted(i + 1));
        }
        last = Optional.of(entry);
        entries.add(entry);
      } catch (FingeringException e) {
        String why = (cut ? "it was cut off before its end; " : "") + e.getMessage();
        bad.add(new BadLine(i + 1, line, why));
      }
    }
    return new Journal(entries.build(), bad.build(), remarks.build());
  }

  private static JournalEntry entry(String line) {
    if (line.indexOf(UNREADABLE) >= 0) {
      throw new FingeringException("it is not text in UTF-8");
    }
    return JournalEntry.parse(line);
  }

  /**
   * The last tempo that was clean, of the whole or of some measures. Measures are no slower than
   * the whole was, unless they were found so since.
   */
  public Optional<Tempo> clean(MeasureSpan measures) {
    Optional<Tempo> own = Optional.empty();
    Optional<Tempo> known = Optional.empty();
    for (JournalEntry entry : entries) {
      if (entry.clean().isEmpty()) {
        continue;
      }
      if (entry.measures().equals(measures)) {
        own = entry.clean();
        known = own;
      } else if (entry.measures().equals(MeasureSpan.WHOLE) && own.isPresent()) {
        known = Optional.of(faster(own.get(), entry.clean().get()));
      }
    }
    return known;
  }

  private static Tempo faster(Tempo one, Tempo other) {
    return one.quartersPerMinute().compareTo(other.quartersPerMinute()) >= 0 ? one : other;
  }

  /** Whether the whole was practised on a day: then the next day is the first of a ladder. */
  public boolean practised(LocalDate date) {
    return entries.stream()
        .anyMatch(
            entry ->
                entry.when().toLocalDate().equals(date)
                    && entry.measures().equals(MeasureSpan.WHOLE));
  }
}
