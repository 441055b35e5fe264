package fingering.page.view;

import com.google.common.base.CharMatcher;
import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;

/**
 * A tempo ladder as a table.
 *
 * @param columns the column heads: day, first tempo, last tempo, the last tempo of each spot, and
 *     how often to play at full tempo
 * @param rows the days; a rest day has only two cells
 * @param figures the explanation of the numbers
 */
public record Ladder(
    ImmutableList<String> columns, ImmutableList<ImmutableList<String>> rows, String figures) {
  /** What stands beside a tempo to reach. */
  public enum Boxes {
    /** Nothing. */
    NONE,
    /** A box on paper. */
    PRINTED,
    /** A box that is ticked on the page. */
    TICKED
  }

  private static final String NONE = "–";
  private static final CharMatcher TEMPO = CharMatcher.inRange('0', '9').or(CharMatcher.is('.'));

  /** The column of the last tempo of the day. */
  private static final int LAST = 2;

  /** The days at its end: the day before the performance, and the day itself. */
  private static final int END = 2;

  /** Whether a cell is a tempo to reach, which is ticked when it is clean. */
  public boolean ticked(ImmutableList<String> row, int column) {
    return column >= LAST && TEMPO.matchesAllOf(row.get(column));
  }

  /** How often to play at full tempo on a day; empty if not at all. */
  public String fullTempo(ImmutableList<String> row) {
    String last = row.get(row.size() - 1);
    return last.equals(NONE) ? "" : last;
  }

  /** The number of columns that the last cell of a row spans. */
  public int span(ImmutableList<String> row) {
    return columns.size() - row.size() + 1;
  }

  /** Whether a row is a day of rest. */
  public boolean resting(ImmutableList<String> row) {
    return row.size() <= LAST;
  }

  /**
   * The same ladder with few rows: the next days, the last two, and between them days at about
   * equal distances.
   *
   * @param most the most rows
   */
  public Ladder atMost(int most) {
    if (rows.size() <= most) {
      return this;
    }
    int next = most / 2;
    List<ImmutableList<String>> few = new ArrayList<>(rows.subList(0, next));
    List<ImmutableList<String>> between =
        rows.subList(next, rows.size() - END).stream().filter(row -> !resting(row)).toList();
    int number = Math.min(most - next - END, between.size());
    for (int i = 1; i <= number; i++) {
      few.add(between.get(between.size() * i / number - 1));
    }
    few.addAll(rows.subList(rows.size() - END, rows.size()));
    return new Ladder(columns, ImmutableList.copyOf(few), figures);
  }
}
