package fingering.engraving.glyph;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableMap;
import fingering.tables.Table;
import java.util.List;

/**
 * A row of {@code glyphs.table}: one shape as it is drawn.
 *
 * @param path the outline as SVG path data, filled by the nonzero rule
 * @param box the box around the path
 * @param advance where the next shape of a row starts
 * @param stemUp where a stem that goes up joins, at its right side
 * @param stemDown where a stem that goes down joins, at its left side
 */
record Outline(String path, Box box, double advance, Anchor stemUp, Anchor stemDown) {
  private static final int FIELDS = 5;

  /** All rows, by id. */
  static ImmutableMap<String, Outline> all() {
    ImmutableMap.Builder<String, Outline> all = ImmutableMap.builder();
    for (Table.Row row : Table.load(Glyph.class, "glyphs.table", FIELDS).rows()) {
      all.put(row.text(0), read(row));
    }
    return all.buildOrThrow();
  }

  private static Outline read(Table.Row row) {
    try {
      Box box = PathBox.of(row.text(3));
      double advance = row.text(1).equals("-") ? box.right() : Double.parseDouble(row.text(1));
      Anchor stemUp = new Anchor(box.right(), 0);
      Anchor stemDown = new Anchor(box.left(), 0);
      if (!row.text(2).equals("-")) {
        List<String> stems = Splitter.on(' ').splitToList(row.text(2));
        stemUp = new Anchor(Double.parseDouble(stems.get(0)), Double.parseDouble(stems.get(1)));
        stemDown = new Anchor(Double.parseDouble(stems.get(2)), Double.parseDouble(stems.get(3)));
      }
      return new Outline(row.text(3), box, advance, stemUp, stemDown);
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      throw row.error("not a shape: " + e.getMessage());
    }
  }
}
