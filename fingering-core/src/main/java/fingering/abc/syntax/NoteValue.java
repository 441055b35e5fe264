package fingering.abc.syntax;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note value as printed.
 *
 * @param type the MusicXML name, such as {@code 16th}
 * @param dots augmentation dots, 0 to 3
 * @param quarters length in quarter notes
 */
public record NoteValue(String type, int dots, BigFraction quarters) {
  private static final int MOST_DOTS = 3;

  /** The undotted values, the longest first (MusicXML 4.0, note-type-value). */
  private static final ImmutableList<NoteValue> PLAIN =
      ImmutableList.of(
          new NoteValue("breve", 0, BigFraction.of(8)),
          new NoteValue("whole", 0, BigFraction.of(4)),
          new NoteValue("half", 0, BigFraction.of(2)),
          new NoteValue("quarter", 0, BigFraction.of(1)),
          new NoteValue("eighth", 0, BigFraction.of(1, 2)),
          new NoteValue("16th", 0, BigFraction.of(1, 4)),
          new NoteValue("32nd", 0, BigFraction.of(1, 8)),
          new NoteValue("64th", 0, BigFraction.of(1, 16)),
          new NoteValue("128th", 0, BigFraction.of(1, 32)),
          new NoteValue("256th", 0, BigFraction.of(1, 64)));

  /** The number of values without flags. */
  private static final int WITHOUT_FLAG = 4;

  /** The highest number of tied notes for one length. */
  private static final int MOST_TIED = 64;

  /**
   * Returns the note values that make a length when tied together, the longest first; empty if
   * there are none.
   *
   * @param quarters the length in quarter notes
   */
  public static ImmutableList<NoteValue> of(BigFraction quarters) {
    ImmutableList.Builder<NoteValue> tied = ImmutableList.builder();
    BigFraction left = quarters;
    for (int i = 0; i < MOST_TIED && left.signum() > 0; i++) {
      BigFraction now = left;
      Optional<NoteValue> value =
          single(now)
              .or(() -> PLAIN.stream().filter(p -> p.quarters.compareTo(now) <= 0).findFirst());
      if (value.isEmpty()) {
        return ImmutableList.of();
      }
      tied.add(value.get());
      left = left.subtract(value.get().quarters);
    }
    return left.signum() == 0 ? tied.build() : ImmutableList.of();
  }

  /** Returns the single value, plain or dotted, that is nearest to a length in quarter notes. */
  public static NoteValue nearest(BigFraction quarters) {
    double wanted = quarters.doubleValue();
    return PLAIN.stream()
        .flatMap(plain -> IntStream.rangeClosed(0, 1).mapToObj(plain::dotted))
        .min(Comparator.comparingDouble(value -> Math.abs(value.quarters.doubleValue() - wanted)))
        .orElseThrow();
  }

  private NoteValue dotted(int count) {
    return new NoteValue(
        type, count, quarters.multiply(BigFraction.of((2 << count) - 1, 1 << count)));
  }

  /** Returns the single value, plain or dotted, of a length in quarter notes. */
  static Optional<NoteValue> single(BigFraction quarters) {
    for (NoteValue plain : PLAIN) {
      for (int dots = 0; dots <= MOST_DOTS; dots++) {
        NoteValue value = plain.dotted(dots);
        if (value.quarters.equals(quarters)) {
          return Optional.of(value);
        }
      }
    }
    return Optional.empty();
  }

  /** Returns a length in quarter notes as a fraction of a whole note: {@code 3/8}. */
  public static String fraction(BigFraction quarters) {
    BigFraction whole = quarters.divide(4);
    return whole.getNumerator() + "/" + whole.getDenominator();
  }

  /**
   * Returns the number of beams or flags: 1 for an eighth, 2 for a 16th, 0 for a quarter and
   * longer.
   */
  public int beams() {
    for (int i = 0; i < PLAIN.size(); i++) {
      if (PLAIN.get(i).type.equals(type)) {
        return Math.max(0, i + 1 - WITHOUT_FLAG);
      }
    }
    return 0;
  }
}
