package fingering.engraving.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The baselines of dynamics and hairpins: one for a system, but a group far from the others does
 * not go down with a single low note elsewhere.
 */
final class DynamicRows {
  /** Things nearer to each other than this share a baseline, in staff spaces. */
  private static final double TOGETHER = 12;

  /** Groups whose baselines differ by less share the lower one. */
  private static final double LEVEL = 2.2;

  private record Span(double left, double right, double baseline) {}

  private final List<Span> spans = new ArrayList<>();

  /**
   * Adds a thing.
   *
   * @param baseline the highest baseline that it can have
   */
  void add(double left, double right, double baseline) {
    spans.add(new Span(left, right, baseline));
  }

  /** The baseline of the thing that begins at a place. */
  double baseline(double left) {
    double lowest = spans.stream().mapToDouble(Span::baseline).max().orElse(0);
    double own =
        groups().stream()
            .filter(group -> group.left() <= left + 1e-9 && left <= group.right() + 1e-9)
            .mapToDouble(Span::baseline)
            .max()
            .orElse(lowest);
    return lowest - own < LEVEL ? lowest : own;
  }

  private List<Span> groups() {
    List<Span> groups = new ArrayList<>();
    for (Span span : spans.stream().sorted(Comparator.comparingDouble(Span::left)).toList()) {
      Span last = groups.isEmpty() ? span : groups.get(groups.size() - 1);
      if (!groups.isEmpty() && span.left() - last.right() < TOGETHER) {
        groups.set(
            groups.size() - 1,
            new Span(
                last.left(),
                Math.max(last.right(), span.right()),
                Math.max(last.baseline(), span.baseline())));
      } else {
        groups.add(span);
      }
    }
    return groups;
  }
}
