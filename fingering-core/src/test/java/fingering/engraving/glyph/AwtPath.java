package fingering.engraving.glyph;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Locale;
import java.util.Scanner;
import java.util.regex.Pattern;

/** Path data read into the shapes of {@code java.awt.geom}, by a reader of its own. */
final class AwtPath {
  private static final Pattern COMMAND = Pattern.compile("[A-Z][^A-Z]*");
  private static final double FLATNESS = 1e-6;

  private AwtPath() {}

  /** The shape of a path, filled by the nonzero rule. */
  static Path2D of(String data) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    var commands = COMMAND.matcher(data);
    while (commands.find()) {
      String spaced = commands.group().substring(1).replace("-", " -");
      try (Scanner numbers = new Scanner(spaced).useLocale(Locale.ROOT)) {
        do {
          draw(path, commands.group().charAt(0), numbers);
        } while (numbers.hasNext());
      }
    }
    return path;
  }

  /** The same shape made of straight lines. */
  static Path2D flattened(String data) {
    Path2D path = new Path2D.Double();
    path.append(new FlatteningPathIterator(of(data).getPathIterator(null), FLATNESS, 16), false);
    return path;
  }

  private static void draw(Path2D path, char command, Scanner numbers) {
    Point2D at = path.getCurrentPoint();
    switch (command) {
      case 'M' -> path.moveTo(next(numbers), next(numbers));
      case 'L' -> path.lineTo(next(numbers), next(numbers));
      case 'H' -> path.lineTo(next(numbers), at.getY());
      case 'V' -> path.lineTo(at.getX(), next(numbers));
      case 'C' ->
          path.curveTo(
              next(numbers),
              next(numbers),
              next(numbers),
              next(numbers),
              next(numbers),
              next(numbers));
      case 'Z' -> path.closePath();
      default -> throw new IllegalArgumentException("no command " + command);
    }
  }

  private static double next(Scanner numbers) {
    return Double.parseDouble(numbers.next());
  }
}
