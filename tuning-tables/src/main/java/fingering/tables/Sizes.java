package fingering.tables;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads sizes from rows of {@code instrument | size | string length | reach | source}. */
final class Sizes {
  static final int FIELDS = 5;

  private static final Pattern MILLIMETRES =
      Pattern.compile("(\\d{1,5}(?:\\.\\d{1,3})?)\\s*mm", Pattern.CASE_INSENSITIVE);

  /** The shortest string, as a multiple of the usual length of the instrument. */
  private static final double SHORTEST = 0.5;

  /** The longest string, as a multiple of the usual length of the instrument. */
  private static final double LONGEST = 1.5;

  private Sizes() {}

  /** All sizes of a table, in its order. */
  static ImmutableList<Size> all(Table table, ImmutableSet<String> instruments) {
    ImmutableList.Builder<Size> sizes = ImmutableList.builder();
    Set<String> seen = new HashSet<>();
    for (Table.Row row : table.rows()) {
      row.refuseUnknown(0, instruments);
      row.text(FIELDS - 1);
      Size size = new Size(row.text(0), row.text(1), row.millimetres(2), row.millimetres(3));
      if (!seen.add(size.instrument() + " " + size.name())) {
        throw row.error(
            "the size '%s' of '%s' appears twice; delete one of the rows"
                .formatted(size.name(), size.instrument()));
      }
      sizes.add(size);
    }
    return sizes.build();
  }

  /**
   * The size with a string length such as {@code 610mm}; empty if the text is not a length.
   *
   * @throws FingeringException if the length is not 0.5 to 1.5 times that of the instrument
   */
  static Optional<Size> ofLength(Instrument instrument, String text, ImmutableList<Size> sizes) {
    Matcher matcher = MILLIMETRES.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    double length = Double.parseDouble(matcher.group(1));
    double shortest = SHORTEST * instrument.stringLength();
    double longest = LONGEST * instrument.stringLength();
    if (length < shortest || length > longest) {
      throw new FingeringException(
          "a %s has no string of %s mm; give %d to %d mm"
              .formatted(
                  instrument.nameInSentence(),
                  matcher.group(1),
                  (int) Math.ceil(shortest),
                  (int) Math.floor(longest)));
    }
    return Optional.of(
        new Size(instrument.id(), matcher.group(1) + "mm", length, reach(length, sizes)));
  }

  /**
   * The reach of a player of an instrument with that string length: interpolated linearly between
   * two sizes, proportional to the string below the smallest size, and constant above the largest,
   * because hands of adults do not grow.
   */
  private static double reach(double length, ImmutableList<Size> sizes) {
    ImmutableList<Size> ascending =
        ImmutableList.sortedCopyOf(Comparator.comparingDouble(Size::stringLength), sizes);
    Size below = ascending.get(0);
    if (length <= below.stringLength()) {
      return below.reach() * length / below.stringLength();
    }
    for (Size above : ascending) {
      if (length <= above.stringLength()) {
        double fraction =
            (length - below.stringLength()) / (above.stringLength() - below.stringLength());
        return below.reach() + fraction * (above.reach() - below.reach());
      }
      below = above;
    }
    return below.reach();
  }
}
