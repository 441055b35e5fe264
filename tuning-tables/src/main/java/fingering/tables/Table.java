package fingering.tables;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A table of facts: one row a fact, its fields parted by {@code |}, its last field the source.
 * Blank lines and what follows {@code #} at the start of a line are not read.
 *
 * @param name the table's name
 * @param rows its rows, in order
 */
public record Table(String name, ImmutableList<Row> rows) {
  private static final Splitter FIELDS = Splitter.on('|').trimResults();

  /**
   * One row, with the line it stands on.
   *
   * @param table the table's name
   * @param line the line, from 1
   * @param fields what stands between the bars
   */
  public record Row(String table, int line, ImmutableList<String> fields) {
    /**
     * The text of a field, counted from 0.
     *
     * @throws BadTableException if it is empty
     */
    public String text(int field) {
      String value = fields.get(field);
      if (value.isEmpty()) {
        throw bad("field " + (field + 1) + " is empty");
      }
      return value;
    }

    /**
     * The whole number in a field, counted from 0.
     *
     * @throws BadTableException if there is none
     */
    public int integer(int field) {
      try {
        return Integer.parseInt(text(field));
      } catch (NumberFormatException e) {
        throw bad("'" + text(field) + "' is not a whole number");
      }
    }

    double millimetres(int field) {
      try {
        double value = Double.parseDouble(text(field));
        if (value > 0 && value < 10_000) {
          return value;
        }
      } catch (NumberFormatException e) {
        // told below, with the other values that are no length
      }
      throw bad("'" + text(field) + "' is not a length in millimetres");
    }

    /** Refuses the row where the field names none of the instruments. */
    void refuseUnknown(int field, ImmutableSet<String> instruments) {
      if (!instruments.contains(text(field))) {
        throw bad(
            "no instrument '" + text(field) + "'; known are " + String.join(", ", instruments));
      }
    }

    /** What to throw where the row cannot be meant. */
    public BadTableException bad(String complaint) {
      return new BadTableException(table, line, complaint);
    }

    /** A complaint about this row that something else made. */
    public BadTableException bad(FingeringException complaint) {
      return complaint instanceof BadTableException already ? already : bad(complaint.getMessage());
    }
  }

  /** Reads the table of that name that lies beside this class. */
  static Table read(String name, int fields) {
    return beside(Table.class, name, fields);
  }

  /**
   * Reads the table of that name that lies beside a class.
   *
   * @param fields how many fields each row has, the source among them
   * @throws BadTableException if a row has another number of fields
   */
  public static Table beside(Class<?> owner, String name, int fields) {
    try (InputStream in = owner.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the table " + name + " is missing from the library");
      }
      return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8), fields);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Table parse(String name, String text, int fields) {
    ImmutableList.Builder<Row> rows = ImmutableList.builder();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> values = FIELDS.splitToList(line);
      if (values.size() != fields) {
        throw new BadTableException(
            name, number, values.size() + " fields where " + fields + " belong");
      }
      rows.add(new Row(name, number, ImmutableList.copyOf(values)));
    }
    return new Table(name, rows.build());
  }
}
