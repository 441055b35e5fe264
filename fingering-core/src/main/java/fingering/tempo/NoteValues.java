package fingering.tempo;

import com.google.common.collect.ImmutableMap;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** Names of note values. */
final class NoteValues {
  private static final ImmutableMap<BigFraction, String> NAMES =
      ImmutableMap.<BigFraction, String>builder()
          .put(BigFraction.of(4), "whole note")
          .put(BigFraction.of(3), "dotted half")
          .put(BigFraction.of(2), "half")
          .put(BigFraction.of(3, 2), "dotted quarter")
          .put(BigFraction.of(4, 3), "triplet half")
          .put(BigFraction.of(1), "quarter")
          .put(BigFraction.of(3, 4), "dotted eighth")
          .put(BigFraction.of(2, 3), "triplet quarter")
          .put(BigFraction.of(1, 2), "eighth")
          .put(BigFraction.of(3, 8), "dotted sixteenth")
          .put(BigFraction.of(1, 3), "triplet eighth")
          .put(BigFraction.of(1, 4), "sixteenth")
          .put(BigFraction.of(1, 5), "quintuplet sixteenth")
          .put(BigFraction.of(1, 6), "triplet sixteenth")
          .put(BigFraction.of(1, 8), "32nd")
          .put(BigFraction.of(1, 12), "triplet 32nd")
          .put(BigFraction.of(1, 16), "64th")
          .buildOrThrow();

  private NoteValues() {}

  /**
   * A length as a phrase: {@code in a sixteenth}, or {@code in 0.65 s} if no single note has it.
   *
   * @param quarters the length in quarter notes
   * @param micros the same length in microseconds
   */
  static String in(BigFraction quarters, long micros) {
    String name = NAMES.get(quarters);
    if (name == null) {
      return String.format(Locale.ROOT, "in %.2f s", micros / 1e6);
    }
    return "in " + (name.startsWith("e") ? "an " : "a ") + name;
  }
}
