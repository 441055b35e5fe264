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
 * A table of facts, one in each row. Fields are separated by {@code |}; the last is the source.
 * Blank lines, and lines that start with {@code #}, are ignored.
 *
 * @param name the name of the table, for messages
 * @param rows the rows, in order
 */
public record Table(String name, ImmutableList<Row> rows) {
  private static final Splitter FIELDS = Splitter.on('|').trimResults();

  /**
   * One row of a table.
   *
   * @param table the name of the table
   * @param line the number of the line, from 1
   * @param fields the fields, without surrounding blanks
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
        throw error("field " + (field + 1) + " is empty");
      }
      return value;
    }

    /**
     * The whole number in a field, counted from 0.
     *
     * @throws BadTableException if the field is not a whole number
     */
    public int integer(int field) {
      try {
        return Integer.parseInt(text(field));
      } catch (NumberFormatException e) {
        throw error("'" + text(field) + "' is not a whole number");
      }
    }

    double millimetres(int field) {
      try {
        double value = Double.parseDouble(text(field));
        if (value > 0 && value < 10_000) {
          return value;
        }
      } catch (NumberFormatException e) {
        // reported below, together with lengths out of range
      }
      throw error("'" + text(field) + "' is not a length in millimetres");
    }

    /**
     * Checks that the field names one of the instruments.
     *
     * @throws BadTableException if it does not
     */
    void refuseUnknown(int field, ImmutableSet<String> instruments) {
      if (!instruments.contains(text(field))) {
        throw error(
            "no instrument '" + text(field) + "'; choose " + String.join(", ", instruments));
      }
    }

    /** An exception about this row, to be thrown by the caller. */
    public BadTableException error(String problem) {
      return new BadTableException(table, line, problem);
    }

    /**
     * An exception about this row with the message of another; if that one already names a row, it
     * is returned as it is.
     */
    public BadTableException error(FingeringException problem) {
      return problem instanceof BadTableException already ? already : error(problem.getMessage());
    }
  }

  /** Reads the table with that resource name in this package. */
  static Table read(String name, int fields) {
    return load(Table.class, name, fields);
  }

  /**
   * Reads the table with that resource name in the package of a class.
   *
   * @param owner the class
   * @param fields number of fields in each row, including the source
   * @throws BadTableException if a row has a different number of fields
   * @throws IllegalStateException if there is no such resource
   */
  public static Table load(Class<?> owner, String name, int fields) {
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
        throw new BadTableException(name, number, values.size() + " fields instead of " + fields);
      }
      rows.add(new Row(name, number, ImmutableList.copyOf(values)));
    }
    return new Table(name, rows.build());
  }
}
