package fingering.tables;

import com.google.common.collect.ImmutableList;

/**
 * A node of a vibrating string: where a finger that only touches makes one of its partials sound.
 * Nodes lie at k/n of the string, not at tempered places.
 *
 * @param numerator k, the number of the node from the nut, with no divisor in common with n
 * @param partial n, the number of the partial that sounds, from 2
 */
public record Node(int numerator, int partial) {
  /** The highest partial that parts ask for by name of its node (common practice). */
  private static final int HIGHEST = 8;

  /** The partial left out: it lies a third of a semitone under every note of the scale. */
  private static final int FLAT = 7;

  private static final ImmutableList<Node> ALL = enumerate();

  /**
   * Checks the components.
   *
   * @throws FingeringException if the fraction is not between 0 and 1, or not in its lowest terms
   */
  public Node {
    if (partial < 2 || numerator < 1 || numerator >= partial || divisor(numerator, partial) > 1) {
      throw new FingeringException("there is no node " + numerator + "/" + partial);
    }
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  private static ImmutableList<Node> enumerate() {
    ImmutableList.Builder<Node> nodes = ImmutableList.builder();
    for (int n = 2; n <= HIGHEST; n++) {
      for (int k = 1; k < n; k++) {
        if (n != FLAT && divisor(k, n) == 1) {
          nodes.add(new Node(k, n));
        }
      }
    }
    return nodes.build();
  }

  /** The nodes of the 2nd to 6th and the 8th partial, lower partials first. */
  public static ImmutableList<Node> all() {
    return ALL;
  }

  /** Millimetres from the nut on an open string of that length. */
  public double millimetres(double stringLength) {
    return stringLength * numerator / partial;
  }

  /** The place in semitones above the open string: where a stopped note of that pitch would lie. */
  public double place() {
    return -Pitch.OCTAVE * Math.log(1 - (double) numerator / partial) / Math.log(2);
  }

  /** How far the partial sounds above the open string, in semitones; not whole but near it. */
  public double sounds() {
    return Pitch.OCTAVE * Math.log(partial) / Math.log(2);
  }
}
