package fingering.tables;

import com.google.common.collect.ImmutableList;

/**
 * A node of a vibrating string: a place where a light touch makes a harmonic sound. Nodes are at
 * k/n of the string length, which differs from equal temperament.
 *
 * @param numerator k, the number of the node counted from the nut; k and n have no common divisor
 * @param partial n, the number of the partial that sounds, at least 2
 */
public record Node(int numerator, int partial) {
  /** The highest partial that parts write as a natural harmonic (common practice, no source). */
  private static final int MAX_PARTIAL = 8;

  /** The 7th partial is left out: it is a third of a semitone flat. */
  private static final int OUT_OF_TUNE = 7;

  private static final ImmutableList<Node> ALL = enumerate();

  /**
   * Checks the components.
   *
   * @throws FingeringException if k/n is not between 0 and 1, or not in lowest terms
   */
  public Node {
    if (partial < 2 || numerator < 1 || numerator >= partial || gcd(numerator, partial) > 1) {
      throw new FingeringException("there is no node " + numerator + "/" + partial);
    }
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  private static ImmutableList<Node> enumerate() {
    ImmutableList.Builder<Node> nodes = ImmutableList.builder();
    for (int n = 2; n <= MAX_PARTIAL; n++) {
      for (int k = 1; k < n; k++) {
        if (n != OUT_OF_TUNE && gcd(k, n) == 1) {
          nodes.add(new Node(k, n));
        }
      }
    }
    return nodes.build();
  }

  /** The nodes of partials 2 to 6 and 8, lower partials first. */
  public static ImmutableList<Node> all() {
    return ALL;
  }

  /** Distance from the nut, in the unit of the string length, on an open string. */
  public double millimetres(double stringLength) {
    return stringLength * numerator / partial;
  }

  /**
   * The place as a number of semitones: a note stopped at the node would sound that far above the
   * open string. Usually not a whole number.
   */
  public double place() {
    return -Pitch.OCTAVE * Math.log(1 - (double) numerator / partial) / Math.log(2);
  }

  /** The pitch of the partial in semitones above the open string; close to a whole number. */
  public double sounds() {
    return Pitch.OCTAVE * Math.log(partial) / Math.log(2);
  }
}
