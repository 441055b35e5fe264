package fingering.fingerboard;

import fingering.tables.Instrument;
import fingering.tables.Pitch;

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

  /** The highest place on the fingerboard, in whole semitones above the open string. */
  public static int lastSemitone(Instrument instrument) {
    double remaining = 1 - instrument.fingerboardLength() / instrument.stringLength();
    return (int) Math.floor(-Pitch.OCTAVE * Math.log(remaining) / Math.log(2));
  }

  /**
   * Millimetres between two places on a string, in semitones above the open string, lower first.
   */
  static double span(double stringLength, double low, double high) {
    return fromNut(stringLength, high) - fromNut(stringLength, low);
  }
}
