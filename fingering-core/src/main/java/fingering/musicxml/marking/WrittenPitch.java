package fingering.musicxml.marking;

import com.google.common.primitives.Ints;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import fingering.musicxml.xml.XmlElement.Leaf;
import java.util.Optional;
import java.util.OptionalInt;

/** The step and octave of a note while it is read. */
final class WrittenPitch {
  private static final String STEPS = "CDEFGAB";

  private int step = -1;
  private Optional<Integer> octave = Optional.empty();

  XmlElement read(XmlCursor cursor, String name) {
    switch (name) {
      case "step" -> {
        Leaf leaf = cursor.leaf();
        step = leaf.text().length() == 1 ? STEPS.indexOf(leaf.text()) : -1;
        return leaf.element();
      }
      case "octave" -> {
        Leaf leaf = cursor.leaf();
        octave =
            leaf.text().length() == 1
                ? Optional.ofNullable(Ints.tryParse(leaf.text()))
                : Optional.empty();
        return leaf.element();
      }
      default -> {
        return cursor.skip();
      }
    }
  }

  /** The number of steps above the C of octave 0; empty if the pitch is damaged. */
  OptionalInt degree() {
    return step < 0 || octave.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(degree(step, octave.get()));
  }

  static int degree(int step, int octave) {
    return STEPS.length() * octave + step;
  }
}
