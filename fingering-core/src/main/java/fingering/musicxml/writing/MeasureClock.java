package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds the time of everything in the measures of a part, which are read in order. */
final class MeasureClock {
  /** A longer number is damage. */
  private static final int MOST_DIGITS = 12;

  private BigFraction divisions = BigFraction.ONE;

  /**
   * A child of a measure.
   *
   * @param node the element
   * @param onset when it begins, in quarter notes from the start of the measure
   * @param written the time without the offset of a direction, where its element is
   * @param divisions units of duration in a quarter note
   */
  record Timed(XmlNode node, BigFraction onset, BigFraction written, BigFraction divisions) {
    boolean atStart() {
      return onset.compareTo(BigFraction.ZERO) <= 0;
    }

    boolean isNote() {
      return node.is("note");
    }
  }

  /**
   * A measure.
   *
   * @param node the element
   * @param items its children with their time
   * @param end the time after the last of them, in quarter notes
   */
  record Timing(XmlNode node, ImmutableList<Timed> items, BigFraction end) {}

  Timing read(XmlNode measure) {
    ImmutableList.Builder<Timed> items = ImmutableList.builder();
    BigFraction now = BigFraction.ZERO;
    BigFraction head = BigFraction.ZERO;
    for (XmlNode child : measure.children()) {
      BigFraction at = now;
      BigFraction onset = now;
      switch (child.name()) {
        case "attributes" -> {
          BigFraction changed = number(child.textOf("divisions"));
          divisions = changed.signum() > 0 ? changed : divisions;
        }
        case "note" -> {
          boolean chord = child.has("chord");
          at = chord ? head : now;
          onset = at;
          head = at;
          now = chord || child.has("grace") ? now : now.add(quarters(child, "duration"));
        }
        case "backup" -> {
          BigFraction back = now.subtract(quarters(child, "duration"));
          now = back.signum() < 0 ? BigFraction.ZERO : back;
        }
        case "forward" -> now = now.add(quarters(child, "duration"));
        case "direction", "sound" -> onset = now.add(quarters(child, "offset"));
        default -> {}
      }
      items.add(new Timed(child, onset, at, divisions));
    }
    return new Timing(measure, items.build(), now);
  }

  private BigFraction quarters(XmlNode node, String child) {
    return number(node.textOf(child)).divide(divisions);
  }

  /** A number; 0 if the text is none. */
  private static BigFraction number(String text) {
    if (text.isEmpty() || text.length() > MOST_DIGITS || !text.matches("[-+]?[0-9]*\\.?[0-9]+")) {
      return BigFraction.ZERO;
    }
    BigDecimal value = new BigDecimal(text);
    return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(Math.max(0, value.scale())));
  }
}
