package fingering.engraving;

import com.google.common.collect.ImmutableSet;
import fingering.engraving.glyph.Box;
import fingering.engraving.ink.Ink;
import fingering.engraving.ink.Kind;
import java.util.ArrayList;
import java.util.List;

/** Finds things of a drawn system that overlap though a reader needs them apart. */
final class Collisions {
  /** Overlaps up to this size cannot be seen, in staff spaces: a line of the staff is 0.13. */
  private static final double SEEN = 0.02;

  /** Heads on the two sides of one stem share the stem's thickness. */
  private static final double STEM = 0.13;

  /** What must be clear of everything but staff lines and bar lines. */
  private static final ImmutableSet<Kind> FREE =
      ImmutableSet.of(
          Kind.FINGER,
          Kind.STRING,
          Kind.POSITION,
          Kind.DYNAMIC,
          Kind.HAIRPIN,
          Kind.WORDS,
          Kind.TEMPO,
          Kind.NUMBER,
          Kind.ENDING,
          Kind.ORNAMENT,
          Kind.ARTICULATION);

  private static final ImmutableSet<Kind> BEHIND =
      ImmutableSet.of(Kind.STAFF, Kind.LEDGER, Kind.BAR_LINE, Kind.CIRCLE);

  /** What a slur must not cross, apart from the notes that it joins. */
  private static final ImmutableSet<Kind> NOTES =
      ImmutableSet.of(Kind.HEAD, Kind.BEAM, Kind.REST, Kind.ARTICULATION, Kind.FINGER);

  private Collisions() {}

  /** Overlaps of fingers, words and signs with anything, each as a sentence. */
  static List<String> of(EngravedSystem system) {
    List<String> found = new ArrayList<>();
    List<Ink> inks = system.inks();
    for (int i = 0; i < inks.size(); i++) {
      for (int j = i + 1; j < inks.size(); j++) {
        Ink a = inks.get(i);
        Ink b = inks.get(j);
        if (apart(a.kind(), b.kind())
            && overlap(
                a.box(), b.box(), a.kind() == Kind.HEAD && b.kind() == Kind.HEAD ? STEM : SEEN)) {
          found.add(
              "%s and %s near measure %d, x %.1f"
                  .formatted(a.kind(), b.kind(), system.firstMeasure() + 1, a.box().left()));
        }
      }
    }
    return found;
  }

  private static boolean apart(Kind a, Kind b) {
    if (BEHIND.contains(a) || BEHIND.contains(b)) {
      return false;
    }
    // Parts of one thing: figures of a number, letters in a box, the two lines of a bracket.
    if (a == b) {
      return a == Kind.FINGER || a == Kind.DYNAMIC || a == Kind.HEAD || a == Kind.ACCIDENTAL;
    }
    if (a == Kind.SLUR || b == Kind.SLUR) {
      return NOTES.contains(a) || NOTES.contains(b);
    }
    return FREE.contains(a) || FREE.contains(b);
  }

  private static boolean overlap(Box a, Box b, double seen) {
    // Two voices may share one head.
    return !a.equals(b)
        && Math.min(a.right(), b.right()) - Math.max(a.left(), b.left()) > seen
        && Math.min(a.bottom(), b.bottom()) - Math.max(a.top(), b.top()) > SEEN;
  }
}
