package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Tunings. A table has a row for each string: {@code instrument | tuning | string | open pitch |
 * down to | source}. Pitches are sounding, string 1 is the highest, and {@code -} means that no
 * extension carries the string down.
 */
public final class Tunings {
  static final int FIELDS = 6;

  /** Names that need no quotes on a command line and do not look like the name of a file. */
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private static final String NO_EXTENSION = "-";

  private Tunings() {}

  /**
   * A user's own tuning.
   *
   * @param known the tables, which must not have a tuning of that name for the instrument
   * @param name words in lower case joined by hyphens
   * @param strings the strings, from the highest, each lower than the one before
   * @throws FingeringException if the name is malformed or already used, or the strings are in the
   *     wrong order
   */
  public static Tuning own(
      Instruments known, Instrument instrument, String name, ImmutableList<OpenString> strings) {
    if (!NAME.matcher(name).matches()) {
      throw new FingeringException(badName(name));
    }
    for (int i = 1; i < strings.size(); i++) {
      requireLower(strings.get(i - 1), strings.get(i));
    }
    Tuning own = new Tuning(instrument.id(), name, strings);
    if (known.tunings(instrument).stream().anyMatch(other -> sameTuning(other, own))) {
      throw new FingeringException(
          "'%s' is the name of another tuning of the %s; give yours another name"
              .formatted(name, instrument.nameInSentence()));
    }
    return own;
  }

  /**
   * Checks that a string is lower than the one above it.
   *
   * @throws FingeringException if it is not
   */
  public static void requireLower(OpenString above, OpenString string) {
    if (string.pitch().midi() >= above.pitch().midi()) {
      throw new FingeringException(
          "string %d (%s) is not lower than string %d (%s); string 1 is the highest"
              .formatted(
                  string.number(),
                  string.pitch().display(),
                  above.number(),
                  above.pitch().display()));
    }
  }

  private static String badName(String name) {
    return "'%s' is not a name for a tuning; write words in lower case joined by hyphens, such as a-string-to-g"
        .formatted(name);
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
            .error(
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
      throw first.error(badName(first.text(1)));
    }
    List<OpenString> strings = new ArrayList<>();
    for (Table.Row row : rows) {
      OpenString string = string(row);
      if (string.number() != strings.size() + 1) {
        throw row.error(
            "string %d where string %d belongs; count the strings down from the highest, which is 1"
                .formatted(string.number(), strings.size() + 1));
      }
      if (!strings.isEmpty()) {
        requireLower(row, strings.get(strings.size() - 1), string);
      }
      strings.add(string);
    }
    return new Tuning(first.text(0), first.text(1), ImmutableList.copyOf(strings));
  }

  private static void requireLower(Table.Row row, OpenString above, OpenString string) {
    try {
      requireLower(above, string);
    } catch (FingeringException e) {
      throw row.error(e);
    }
  }

  private static OpenString string(Table.Row row) {
    row.text(FIELDS - 1);
    try {
      Pitch open = Pitch.parse(row.text(3));
      String down = row.text(4);
      Pitch lowest = down.equals(NO_EXTENSION) ? open : Pitch.parse(down);
      return new OpenString(row.integer(2), open, lowest);
    } catch (FingeringException e) {
      throw row.error(e);
    }
  }
}
