package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.Locale;

/**
 * A bowed instrument of a certain size in a certain tuning.
 *
 * @param id short name in data and commands: violin, viola, cello, bass
 * @param name the name in print
 * @param kind how the left hand is used
 * @param tuning name of the tuning, for example standard or five-string
 * @param size name of the size, for example 4/4 or 16, or a length such as 610mm
 * @param strings the strings, the highest (I) first
 * @param stringLength length of an open string from nut to bridge, in millimetres
 * @param fingerboardLength length of the fingerboard from the nut, in millimetres
 * @param reach reach of a medium-sized hand of players of this size, from first to fourth finger,
 *     in millimetres
 * @param writtenOctaves octaves from the written to the sounding note, if the part does not specify
 *     a transposition: -1 for the double bass, 0 for the others
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

  /** How the left hand of an instrument is used. */
  public enum HandKind {
    /** One letter for each finger: violin and viola. */
    VIOLIN,
    /** One semitone for each finger, with extensions: cello. */
    CELLO,
    /** First, second and fourth finger each a semitone apart: double bass. */
    BASS
  }

  /**
   * Checks the components.
   *
   * @throws FingeringException if there are not 1 to 8 strings in order of their numbers, if a
   *     length is not above 0, or if the fingerboard is not shorter than the string
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
          name
              + ": a fingerboard of "
              + fingerboardLength
              + " mm with a string of "
              + stringLength
              + " mm");
    }
    if (!(reach > 0)) {
      throw new FingeringException(name + ": a reach of " + reach + " mm");
    }
  }

  /**
   * The same instrument in another tuning.
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
   * The same instrument in another size. The length of the fingerboard is proportional to the
   * string.
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
   * The string with that number, 1 for the highest.
   *
   * @throws IllegalArgumentException if there is no such string
   */
  public OpenString string(int number) {
    if (number < 1 || number > strings.size()) {
      throw new IllegalArgumentException(name + " has no string " + number);
    }
    return strings.get(number - 1);
  }

  /** The name within a sentence, in lower case: double bass. */
  public String nameInSentence() {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The lowest sounding pitch, that of the lowest open string or of its extension. */
  public Pitch lowest() {
    return strings.stream()
        .map(OpenString::lowest)
        .min(Comparator.comparingInt(Pitch::midi))
        .orElseThrow();
  }

  /** The highest place on the fingerboard, in whole semitones above the open string. */
  public int lastSemitone() {
    double remaining = 1 - fingerboardLength / stringLength;
    return (int) Math.floor(-Pitch.OCTAVE * Math.log(remaining) / Math.log(2));
  }
}
