package fingering.musicxml.reading;

import fingering.musicxml.element.Transposition;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Node;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/** The nodes of an instrument's strings, in semitones as printed in parts. */
final class HarmonicNodes {

  /**
   * A node of an open string.
   *
   * @param string the string
   * @param node the node
   * @param sound the sounding pitch
   */
  record Touch(OpenString string, Node node, Pitch sound) {}

  private final Instrument instrument;

  HarmonicNodes(Instrument instrument) {
    this.instrument = instrument;
  }

  /** Returns the lowest pitch of the instrument. */
  Pitch lowest() {
    return instrument.lowest();
  }

  /**
   * Returns whether a pitch is that of an open string.
   *
   * @param printed the string printed at it, from 1
   */
  boolean isOpen(Pitch pitch, OptionalInt printed) {
    return strings(printed).anyMatch(string -> string.pitch().midi() == pitch.midi());
  }

  /** Returns whether a pitch is a natural harmonic of a string. */
  boolean isHarmonic(Pitch pitch) {
    return instrument.strings().stream()
        .anyMatch(string -> sounding(pitch.midi() - string.pitch().midi()).isPresent());
  }

  private Stream<OpenString> strings(OptionalInt printed) {
    return instrument.strings().stream()
        .filter(string -> printed.isEmpty() || printed.getAsInt() == string.number());
  }

  /**
   * Finds the string on which a place is touched. Prefers a sounding pitch that the part prints
   * too; then one that differs from the place, because otherwise a circle would be enough; then the
   * lowest partial, the place nearest to the nut, and the highest string (common practice).
   *
   * @param printed the printed string, from 1
   * @param shown whether the part prints a sounding pitch, by MIDI number
   */
  Optional<Touch> touched(Pitch place, OptionalInt printed, IntPredicate shown) {
    return strings(printed)
        .flatMap(string -> touch(string, place).stream())
        .min(
            Comparator.comparing((Touch touch) -> !shown.test(touch.sound().midi()))
                .thenComparing(touch -> touch.sound().midi() == place.midi())
                .thenComparingInt(touch -> touch.node().partial())
                .thenComparingDouble(touch -> touch.node().place())
                .thenComparingInt(touch -> touch.string().number()));
  }

  private static Optional<Touch> touch(OpenString string, Pitch place) {
    return at(place.midi() - string.pitch().midi())
        .flatMap(
            node ->
                above(string.pitch(), sounds(node)).map(sound -> new Touch(string, node, sound)));
  }

  /** Returns the node this many semitones above the stopped note. */
  static Optional<Node> at(int semitones) {
    return Node.all().stream().filter(node -> place(node) == semitones).findFirst();
  }

  /**
   * Returns the node nearest to the nut whose partial sounds this many semitones above the stopped
   * note.
   */
  static Optional<Node> sounding(int semitones) {
    return Node.all().stream().filter(node -> sounds(node) == semitones).findFirst();
  }

  /** Returns the semitones from the stopped note to the touched place. */
  static int place(Node node) {
    return (int) Math.round(node.place());
  }

  /** Returns the semitones from the stopped note to the sounding pitch. */
  static int sounds(Node node) {
    return (int) Math.round(node.sounds());
  }

  /**
   * Returns the pitch a number of semitones higher, or lower if negative, in its usual spelling.
   */
  static Optional<Pitch> above(Pitch pitch, int semitones) {
    try {
      return Optional.of(Transposition.ofSemitones(semitones).apply(pitch));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
