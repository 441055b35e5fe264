package fingering.cli.practice;

import com.google.common.collect.ImmutableList;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Tempo;
import fingering.practice.Journal;
import fingering.practice.JournalEntry;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A journal as text. */
public final class JournalText {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu HH:mm", Locale.ENGLISH);
  private static final int DATE = 23;
  private static final int CLEAN = 24;
  private static final int LONGEST = 40;

  private JournalText() {}

  /** The problems of a journal, a sentence each. */
  public static List<String> problems(Journal journal) {
    List<String> problems = new ArrayList<>();
    for (Journal.BadLine bad : journal.badLines()) {
      String text = bad.text().replaceAll("\\p{Cntrl}", " ").strip();
      problems.add(
          "Journal, line "
              + bad.number()
              + " is skipped but kept: '"
              + (text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text)
              + "': "
              + bad.reason()
              + ".");
    }
    journal.remarks().forEach(remark -> problems.add("Journal: " + remark));
    return problems;
  }

  /**
   * Remarks on lines of the journal that cannot be read, or on a journal with nothing to draw.
   *
   * @param kept whether there is a journal
   */
  public static ImmutableList<String> remarks(Journal entries, boolean kept) {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    remarks.addAll(problems(entries));
    if (kept && !ProgressSvg.drawable(entries)) {
      remarks.add(ProgressSvg.NO_CLEAN_TEMPO + ".");
    }
    return remarks.build();
  }

  /** The entries, a line each, and the problems. */
  public static String of(Journal journal, int columns, TextStyle style) {
    List<String> lines = new ArrayList<>();
    if (journal.entries().isEmpty()) {
      lines.add("The journal is empty. Begin with 'journal add --clean quarter=60'.");
    } else {
      lines.add(style.bold(TextLayout.pad("date", DATE) + TextLayout.pad("clean", CLEAN) + "note"));
    }
    for (JournalEntry entry : journal.entries()) {
      String row =
          TextLayout.pad(WHEN.format(entry.when()), DATE)
              + TextLayout.pad(clean(entry) + "  ", CLEAN);
      int left = Math.max(20, columns - DATE - CLEAN);
      List<String> note = TextLayout.wrap(entry.note(), left, 0);
      lines.add((row + note.get(0)).stripTrailing());
      note.stream().skip(1).forEach(more -> lines.add(" ".repeat(DATE + CLEAN) + more));
    }
    List<String> problems = problems(journal);
    if (!problems.isEmpty()) {
      lines.add("");
      problems.forEach(problem -> lines.addAll(TextLayout.wrap(problem, columns, 2)));
    }
    return String.join("\n", lines) + "\n";
  }

  /** When an entry was made. */
  public static String when(JournalEntry entry) {
    return WHEN.format(entry.when());
  }

  /** What was clean: {@code quarter = 66, m. 3–4}. */
  public static String clean(JournalEntry entry) {
    String span =
        entry.measures().phrase().replaceFirst("^ in measures? ", ", m. ").replace('-', '–');
    return entry.clean().map(Tempo::toString).map(mark -> mark.replace("=", " = ")).orElse("none")
        + span;
  }
}
