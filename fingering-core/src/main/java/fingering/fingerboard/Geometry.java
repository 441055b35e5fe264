package fingering.fingerboard;

import fingering.tables.Instrument;
import fingering.tables.Pitch;

/** Distances along a string in equal temperament. */
public final class Geometry {
  private Geometry() {}

  /**
   * Distance of a stopped note from the nut: L(1 − 2^(−n/12)), since halving a string raises it an
   * octave and twelve equal semitones fill one.
   *
   * @param stringLength length of the open string in millimetres
   * @param semitones semitones above the open string; fractions are places between
   * @return millimetres from the nut
   */
  public static double fromNut(double stringLength, double semitones) {
    return stringLength * share(semitones);
  }

  /** The same distance as a share of the length of the string, 0 to 1. */
  public static double share(double semitones) {
    return 1 - Math.pow(2, -semitones / 12);
  }

  /** The last semitone of an open string that lies over its fingerboard. */
  public static int lastSemitone(Instrument instrument) {
    double left = 1 - instrument.fingerboardLength() / instrument.stringLength();
    return (int) Math.floor(-Pitch.OCTAVE * Math.log(left) / Math.log(2));
  }

  /** Millimetres between two places on one string, given in semitones above it, low place first. */
  static double span(double stringLength, double low, double high) {
    return fromNut(stringLength, high) - fromNut(stringLength, low);
  }
}
