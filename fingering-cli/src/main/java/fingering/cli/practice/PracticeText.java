package fingering.cli.practice;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.practice.Journal;
import java.util.List;

/** The practice of a plan as text: what to do today, and the days after it. */
public final class PracticeText {
  /** The advice below every tempo ladder. */
  public static final String CARE =
      "Raise the tempo only while it stays easy. Long practice and fast tempi can cause pain: rest"
          + " ten minutes in every hour, stop if it hurts, and ask your teacher or a clinician."
          + " Your teacher has the last word.";

  private static final int DAY = 12;

  /** The narrowest column of numbers. */
  private static final int NUMBER = 6;

  /** The column of the first spot; the last column is not a spot. */
  private static final int FIRST_SPOT = 3;

  private final PracticeWords words;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text = new StringBuilder();

  private PracticeText(PracticeWords words, int columns, TextStyle style) {
    this.words = words;
    this.columns = columns;
    this.style = style;
  }

  public static String of(
      PracticeWords words, Journal journal, List<String> spots, int columns, TextStyle style) {
    PracticeText page = new PracticeText(words, columns, style);
    page.line(style.bold(words.title()));
    words.about().forEach(page::paragraph);
    page.line("");
    page.paragraphs(JournalText.problems(journal));
    page.line(style.bold(words.day()));
    words.today().forEach(line -> page.paragraph("- " + line));
    page.line("");
    if (words.practised()) {
      spots.forEach(page::line);
    }
    page.days();
    page.line("");
    page.paragraph(words.figures());
    page.line("");
    page.paragraph(CARE);
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(this::line);
  }

  private void paragraphs(List<String> paragraphs) {
    paragraphs.forEach(this::paragraph);
    if (!paragraphs.isEmpty()) {
      line("");
    }
  }

  private void days() {
    List<String> heads = words.columns();
    int spots = heads.size() - FIRST_SPOT - 1;
    int fitting = spots;
    while (fitting > 0 && row(heads, heads, fitting).length() > columns) {
      fitting--;
    }
    int shown = fitting;
    line(style.bold(row(heads, heads, shown)));
    words.rows().forEach(cells -> line(row(cells, heads, shown)));
    if (shown < spots) {
      paragraph(
          "Too wide for this window: "
              + String.join(", ", heads.subList(FIRST_SPOT + shown, FIRST_SPOT + spots))
              + ". The page has them all: --format html.");
    }
  }

  /**
   * A row of the table.
   *
   * @param spots how many columns of spots it has
   */
  private static String row(List<String> cells, List<String> heads, int spots) {
    StringBuilder row = new StringBuilder(TextLayout.pad(cells.get(0), DAY));
    for (int c = 1; c < cells.size(); c++) {
      boolean left = c >= FIRST_SPOT + spots && c < heads.size() - 1;
      row.append(
          left
              ? ""
              : TextLayout.padLeft(cells.get(c), Math.max(heads.get(c).length(), NUMBER) + 2));
    }
    return row.toString();
  }
}
