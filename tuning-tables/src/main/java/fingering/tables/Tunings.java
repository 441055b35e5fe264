package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reads tunings from rows of text, one for each string: {@code instrument | tuning | string | open
 * pitch | down to | source}. Pitches are sounding pitches, string 1 is the highest, and {@code -}
 * means that there is no extension. Blank lines and lines that start with {@code #} are ignored.
 */
public final class Tunings {
  static final int FIELDS = 6;

  /** A name that needs no quotes on a command line, and that no file name can be confused with. */
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private static final String NO_EXTENSION = "-";

  private Tunings() {}

  /**
   * Reads a tuning of the user's own: a text with the rows of one tuning for one instrument.
   *
   * @param fileName how messages call the text
   * @param known the instruments that it may be for
   * @throws BadTableException if the text holds no tuning or several, one for an unknown
   *     instrument, one by a name that the tables have for it, or a row that cannot be read; the
   *     message is one sentence that names file and line
   */
  public static Tuning read(String fileName, String text, Instruments known) {
    ImmutableList<Table.Row> rows = Table.parse(fileName, text, FIELDS).rows();
    if (rows.isEmpty()) {
      throw new BadTableException(
          fileName, "there is no tuning in it; write a row for each string, the highest first");
    }
    Table.Row first = rows.get(0);
    for (Table.Row row : rows) {
      if (!sameTuning(first, row)) {
        throw row.bad(
            "'%s' for '%s' begins where the file is to hold '%s' for '%s' alone; give it a file of its own"
                .formatted(row.text(1), row.text(0), first.text(1), first.text(0)));
      }
    }
    Tuning tuning = tuning(rows, known.ids());
    if (known.all().stream()
        .flatMap(instrument -> known.tunings(instrument).stream())
        .anyMatch(other -> sameTuning(other, tuning))) {
      throw first.bad(
          "'%s' is a tuning that the %s has already; give yours another name"
              .formatted(tuning.name(), tuning.instrument()));
    }
    return tuning;
  }

  /** All tunings of a table, in its order. */
  static ImmutableList<Tuning> all(Table table, ImmutableSet<String> instruments) {
    ImmutableList<Table.Row> rows = table.rows();
    List<Tuning> tunings = new ArrayList<>();
    int from = 0;
    while (from < rows.size()) {
      int to = from + 1;
      while (to < rows.size() && sameTuning(rows.get(from), rows.get(to))) {
        to++;
      }
      Tuning tuning = tuning(rows.subList(from, to), instruments);
      if (tunings.stream().anyMatch(earlier -> sameTuning(earlier, tuning))) {
        throw rows.get(from)
            .bad(
                "'%s' for '%s' appears twice; keep its rows together, and each string once"
                    .formatted(tuning.name(), tuning.instrument()));
      }
      tunings.add(tuning);
      from = to;
    }
    return ImmutableList.copyOf(tunings);
  }

  private static boolean sameTuning(Table.Row a, Table.Row b) {
    return a.text(0).equals(b.text(0)) && a.text(1).equals(b.text(1));
  }

  private static boolean sameTuning(Tuning a, Tuning b) {
    return a.instrument().equals(b.instrument()) && a.name().equals(b.name());
  }

  private static Tuning tuning(ImmutableList<Table.Row> rows, ImmutableSet<String> instruments) {
    Table.Row first = rows.get(0);
    first.refuseUnknown(0, instruments);
    if (!NAME.matcher(first.text(1)).matches()) {
      throw first.bad(
          "'%s' is no name for a tuning; write words in lower case joined by hyphens, such as a-string-to-g"
              .formatted(first.text(1)));
    }
    List<OpenString> strings = new ArrayList<>();
    for (Table.Row row : rows) {
      OpenString string = string(row);
      if (string.number() != strings.size() + 1) {
        throw row.bad(
            "string %d where string %d belongs; count the strings down from the highest, which is 1"
                .formatted(string.number(), strings.size() + 1));
      }
      if (!strings.isEmpty() && string.pitch().midi() >= last(strings).pitch().midi()) {
        throw row.bad(
            "string %d (%s) is not lower than string %d (%s); string 1 is the highest"
                .formatted(
                    string.number(),
                    string.pitch().display(),
                    string.number() - 1,
                    last(strings).pitch().display()));
      }
      strings.add(string);
    }
    return new Tuning(first.text(0), first.text(1), ImmutableList.copyOf(strings));
  }

  private static OpenString last(List<OpenString> strings) {
    return strings.get(strings.size() - 1);
  }

  private static OpenString string(Table.Row row) {
    row.text(FIELDS - 1);
    try {
      Pitch open = Pitch.parse(row.text(3));
      String down = row.text(4);
      Pitch lowest = down.equals(NO_EXTENSION) ? open : Pitch.parse(down);
      return new OpenString(row.integer(2), open, lowest);
    } catch (FingeringException e) {
      throw row.bad(e);
    }
  }
}
