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

  /**
   * A string shorter or longer than these shares of the usual one belongs to another instrument.
   */
  private static final double SHORTEST = 0.5;

  private static final double LONGEST = 1.5;

  private Sizes() {}

  /** Every size of a table, in its order. */
  static ImmutableList<Size> all(Table table, ImmutableSet<String> instruments) {
    ImmutableList.Builder<Size> sizes = ImmutableList.builder();
    Set<String> seen = new HashSet<>();
    for (Table.Row row : table.rows()) {
      row.refuseUnknown(0, instruments);
      row.text(FIELDS - 1);
      Size size = new Size(row.text(0), row.text(1), row.millimetres(2), row.millimetres(3));
      if (!seen.add(size.instrument() + " " + size.name())) {
        throw row.bad(
            "the size '%s' of '%s' stands here a second time; keep one of them"
                .formatted(size.name(), size.instrument()));
      }
      sizes.add(size);
    }
    return sizes.build();
  }

  /**
   * The size that a length such as {@code 610mm} describes; empty where the text is no length.
   *
   * @throws FingeringException if no such instrument is built so short or long
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
          "a string of %s mm is none of a %s; give %d to %d mm"
              .formatted(
                  matcher.group(1),
                  instrument.spoken(),
                  (int) Math.ceil(shortest),
                  (int) Math.floor(longest)));
    }
    return Optional.of(
        new Size(instrument.id(), matcher.group(1) + "mm", length, reach(length, sizes)));
  }

  /**
   * The reach of the player whom a string of that length fits: between two sizes in proportion to
   * the way from one to the other, below the smallest in proportion to the string. Above the
   * largest it stays, for a hand grows no further.
   */
  private static double reach(double length, ImmutableList<Size> sizes) {
    ImmutableList<Size> rising =
        ImmutableList.sortedCopyOf(Comparator.comparingDouble(Size::stringLength), sizes);
    Size below = rising.get(0);
    if (length <= below.stringLength()) {
      return below.reach() * length / below.stringLength();
    }
    for (Size above : rising) {
      if (length <= above.stringLength()) {
        double way =
            (length - below.stringLength()) / (above.stringLength() - below.stringLength());
        return below.reach() + way * (above.reach() - below.reach());
      }
      below = above;
    }
    return below.reach();
  }
}
