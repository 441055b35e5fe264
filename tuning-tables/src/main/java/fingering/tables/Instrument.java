package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.Locale;

/**
 * A bowed instrument as it is built and strung.
 *
 * @param id short name in data and commands: violin, viola, cello, bass
 * @param name the name in print
 * @param kind how the left hand is used
 * @param tuning name of the tuning: standard, five-string
 * @param size name of the size: 4/4, 16, or a length in millimetres
 * @param strings the strings, the highest (I) first
 * @param stringLength sounding length of an open string, nut to bridge, in millimetres
 * @param fingerboardLength nut to the end of the fingerboard, in millimetres
 * @param reach millimetres between first and fourth finger of a medium hand that the size fits
 * @param writtenOctaves octaves from the written to the sounding note where a part does not say: -1
 *     for the double bass, 0 for the others
 */
public record Instrument(
    String id,
    String name,
    HandKind kind,
    String tuning,
    String size,
    ImmutableList<OpenString> strings,
    double stringLength,
    double fingerboardLength,
    double reach,
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

  /**
   * Checks the components.
   *
   * @throws FingeringException if there are not 1 to 8 strings in their order, a length is not over
   *     0, or the fingerboard is as long as the string
   */
  public Instrument {
    if (strings.isEmpty() || strings.size() > 8) {
      throw new FingeringException(name + " has " + strings.size() + " strings, not 1 to 8");
    }
    for (int i = 0; i < strings.size(); i++) {
      if (strings.get(i).number() != i + 1) {
        throw new FingeringException(
            name + ": string " + (i + 1) + " is missing, or the strings are out of order");
      }
    }
    if (!(stringLength > 0)) {
      throw new FingeringException(name + ": string length " + stringLength + " mm");
    }
    if (!(fingerboardLength > 0) || fingerboardLength >= stringLength) {
      throw new FingeringException(
          name + ": a fingerboard of " + fingerboardLength + " mm under such a string");
    }
    if (!(reach > 0)) {
      throw new FingeringException(name + ": a reach of " + reach + " mm");
    }
  }

  /**
   * The same instrument tuned otherwise.
   *
   * @throws FingeringException if the tuning is for another instrument
   */
  public Instrument tuned(Tuning other) {
    if (!other.instrument().equals(id)) {
      throw new FingeringException(
          "the tuning '" + other.name() + "' is for " + other.instrument() + ", not for " + id);
    }
    return new Instrument(
        id,
        name,
        kind,
        other.name(),
        size,
        other.strings(),
        stringLength,
        fingerboardLength,
        reach,
        writtenOctaves);
  }

  /**
   * The same instrument built in another size; the fingerboard shrinks or grows with the string.
   *
   * @throws FingeringException if the size is for another instrument
   */
  public Instrument sized(Size other) {
    if (!other.instrument().equals(id)) {
      throw new FingeringException(
          "the size '" + other.name() + "' is for " + other.instrument() + ", not for " + id);
    }
    return new Instrument(
        id,
        name,
        kind,
        tuning,
        other.name(),
        strings,
        other.stringLength(),
        fingerboardLength * other.stringLength() / stringLength,
        other.reach(),
        writtenOctaves);
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

  /** The name as it stands within a sentence: double bass. */
  public String spoken() {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The lowest sounding pitch: that of the lowest open string, or of its extension. */
  public Pitch lowest() {
    return strings.stream()
        .map(OpenString::lowest)
        .min(Comparator.comparingInt(Pitch::midi))
        .orElseThrow();
  }
}
