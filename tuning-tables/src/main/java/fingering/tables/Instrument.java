package fingering.tables;

import com.google.common.collect.ImmutableList;

/**
 * A bowed instrument as it is strung.
 *
 * @param id short name in data and commands: violin, viola, cello, bass
 * @param name the name in print
 * @param kind how the left hand is used
 * @param strings the strings, the highest (I) first
 * @param stringLength sounding length of an open string, nut to bridge, in millimetres
 * @param writtenOctaves octaves from the written to the sounding note where a part does not say: -1
 *     for the double bass, 0 for the others
 */
public record Instrument(
    String id,
    String name,
    HandKind kind,
    ImmutableList<OpenString> strings,
    double stringLength,
    int writtenOctaves) {

  /** Which school of the left hand an instrument follows. */
  public enum HandKind {
    /** A letter a finger: violin and viola. */
    VIOLIN,
    /** A semitone a finger, with extensions: cello. */
    CELLO,
    /** First, second and fourth finger a semitone apart: double bass. */
    BASS
  }

  public Instrument {
    if (strings.isEmpty() || strings.size() > 8) {
      throw new IllegalArgumentException(name + " has " + strings.size() + " strings, not 1 to 8");
    }
    for (int i = 0; i < strings.size(); i++) {
      if (strings.get(i).number() != i + 1) {
        throw new IllegalArgumentException(
            name + ": string " + (i + 1) + " is missing, or the strings are out of order");
      }
    }
    if (!(stringLength > 0)) {
      throw new IllegalArgumentException(name + ": string length " + stringLength + " mm");
    }
  }

  /**
   * The string of that number, 1 being the highest.
   *
   * @throws IllegalArgumentException if there is no such string
   */
  public OpenString string(int number) {
    if (number < 1 || number > strings.size()) {
      throw new IllegalArgumentException(name + " has no string " + number);
    }
    return strings.get(number - 1);
  }

  /** The sounding pitch of the lowest open string. */
  public Pitch lowest() {
    return strings.stream()
        .map(OpenString::pitch)
        .min(java.util.Comparator.comparingInt(Pitch::midi))
        .orElseThrow();
  }
}
