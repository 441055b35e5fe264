package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A student's practice journal: the fastest clean tempo, day by day. The order of the lines counts,
 * not their dates, because a clock may have been wrong. The last line about the same measures is
 * the valid one.
 *
 * @param entries the entries, in the order of the file
 * @param badLines lines that are not entries; they stay in the file
 * @param remarks warnings about valid lines, a sentence each
 */
public record Journal(
    ImmutableList<JournalEntry> entries,
    ImmutableList<BadLine> badLines,
    ImmutableList<String> remarks) {
  private static final char UNREADABLE = '\uFFFD';
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** A journal without entries. */
  public static final Journal EMPTY =
      new Journal(ImmutableList.of(), ImmutableList.of(), ImmutableList.of());

  /**
   * A line that is not an entry.
   *
   * @param number its number, from 1
   * @param text the line
   * @param reason what is wrong with it, without a full stop
   */
  public record BadLine(int number, String text, String reason) {}

  /** Reads the text of a journal, without blank lines and lines that begin with {@code #}. */
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
              "Line %d, the last one, has no line break: its note may be cut off. The line is kept."
                  .formatted(i + 1));
        }
        last = Optional.of(entry);
        entries.add(entry);
      } catch (FingeringException e) {
        String reason = (cut ? "it is cut off; " : "") + e.getMessage();
        bad.add(new BadLine(i + 1, line, reason));
      }
    }
    return new Journal(entries.build(), bad.build(), remarks.build());
  }

  private static JournalEntry entry(String line) {
    if (line.indexOf(UNREADABLE) >= 0) {
      throw new FingeringException("it is not UTF-8 text");
    }
    return JournalEntry.parse(line);
  }

  /**
   * Returns the last clean tempo of the whole piece or of some measures; empty if these have no
   * entry. A later, faster entry of the whole piece counts for its measures as well.
   *
   * @param measures {@link MeasureSpan#WHOLE}, or a span exactly as an entry has it
   */
  public Optional<Tempo> lastClean(MeasureSpan measures) {
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

  /**
   * What a journal says about some measures.
   *
   * @param clean the last clean tempo; empty if they have no entry with one
   * @param bad whether the last entry is about a bad day: nothing was clean, or only less than
   *     before
   * @param own whether there is an entry about exactly these measures that counts; a later entry of
   *     the whole piece that is as fast replaces it
   */
  record Standing(Optional<Tempo> clean, boolean bad, boolean own) {}

  /** Returns what the journal says about the whole piece or about measures of an entry. */
  Standing standing(MeasureSpan measures) {
    Optional<Tempo> before = Optional.empty();
    boolean bad = false;
    boolean own = false;
    for (JournalEntry entry : entries) {
      Optional<Tempo> last = before;
      boolean slower =
          entry.clean().isEmpty()
              || last.filter(tempo -> isSlower(entry.clean().get(), tempo)).isPresent();
      if (entry.measures().equals(measures)) {
        bad = slower;
        own = true;
        before = entry.clean().or(() -> last);
      } else if (entry.measures().equals(MeasureSpan.WHOLE) && (!own || !slower)) {
        // What is clean in the whole piece is clean everywhere.
        bad = false;
        own = false;
        before = entry.clean().or(() -> last);
      }
    }
    return new Standing(lastClean(measures), bad, own);
  }

  /** Returns all measures that have an entry of their own. */
  ImmutableSet<MeasureSpan> spans() {
    return entries.stream()
        .map(JournalEntry::measures)
        .filter(span -> !span.equals(MeasureSpan.WHOLE))
        .collect(ImmutableSet.toImmutableSet());
  }

  private static boolean isSlower(Tempo one, Tempo other) {
    return one.quartersPerMinute().compareTo(other.quartersPerMinute()) < 0;
  }

  private static Tempo faster(Tempo one, Tempo other) {
    return one.quartersPerMinute().compareTo(other.quartersPerMinute()) >= 0 ? one : other;
  }

  /** Returns whether an entry of this date is about the whole piece. */
  public boolean practisedWhole(LocalDate date) {
    return entries.stream()
        .anyMatch(
            entry ->
                entry.when().toLocalDate().equals(date)
                    && entry.measures().equals(MeasureSpan.WHOLE));
  }
}
