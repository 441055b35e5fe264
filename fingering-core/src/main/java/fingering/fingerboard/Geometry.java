package fingering.fingerboard;

/** Distances along a string in equal temperament. */
public final class Geometry {
  private Geometry() {}

  /**
   * Distance of a stopped note from the nut: L(1 − 2^(−n/12)), because half the string sounds an
   * octave higher.
   *
   * @param stringLength length of the open string in millimetres
   * @param semitones semitones above the open string, not necessarily whole
   * @return distance in millimetres, negative behind the nut
   */
  public static double fromNut(double stringLength, double semitones) {
    return stringLength * share(semitones);
  }

  /** The same distance as a fraction of the string length. */
  public static double share(double semitones) {
    return 1 - Math.pow(2, -semitones / 12);
  }

  /**
   * Millimetres between two places on a string, in semitones above the open string, lower first.
   */
  static double span(double stringLength, double low, double high) {
    return fromNut(stringLength, high) - fromNut(stringLength, low);
  }
}
