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

/** Tells where the strings of an instrument are touched, in the semitones that parts print. */
final class NaturalNodes {

  /**
   * A node of an open string.
   *
   * @param string the string
   * @param node the node
   * @param sound the pitch that is heard
   */
  record Touch(OpenString string, Node node, Pitch sound) {}

  private final Instrument instrument;

  NaturalNodes(Instrument instrument) {
    this.instrument = instrument;
  }

  /** The lowest sounding pitch of the instrument. */
  Pitch lowest() {
    return instrument.lowest();
  }

  /**
   * Whether a pitch is that of an open string.
   *
   * @param printed the string printed at it, from 1
   */
  boolean isOpen(Pitch pitch, OptionalInt printed) {
    return strings(printed).anyMatch(string -> string.pitch().midi() == pitch.midi());
  }

  /** Whether a pitch is heard where some node of a string is touched. */
  boolean sound(Pitch pitch) {
    return instrument.strings().stream()
        .anyMatch(string -> sounding(pitch.midi() - string.pitch().midi()).isPresent());
  }

  private Stream<OpenString> strings(OptionalInt printed) {
    return instrument.strings().stream()
        .filter(string -> printed.isEmpty() || printed.getAsInt() == string.number());
  }

  /**
   * Finds the string on which a place is touched. Best is a sound that the part prints too, then
   * one that is not the pitch of the place, for there a circle would do; then the lowest partial,
   * the place next to the nut, the highest string (common practice).
   *
   * @param printed the string printed, from 1
   * @param shown which sounds the part prints beside the place, by MIDI number
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

  /** The node that many semitones above what is stopped. */
  static Optional<Node> at(int semitones) {
    return Node.all().stream().filter(node -> place(node) == semitones).findFirst();
  }

  /** The node next to the nut whose partial sounds that many semitones above what is stopped. */
  static Optional<Node> sounding(int semitones) {
    return Node.all().stream().filter(node -> sounds(node) == semitones).findFirst();
  }

  /** Semitones from what is stopped to the place that is touched. */
  static int place(Node node) {
    return (int) Math.round(node.place());
  }

  /** Semitones from what is stopped to what is heard. */
  static int sounds(Node node) {
    return (int) Math.round(node.sounds());
  }

  /** The pitch so many semitones above, or below where negative, in its usual spelling. */
  static Optional<Pitch> above(Pitch pitch, int semitones) {
    try {
      return Optional.of(Transposition.ofSemitones(semitones).apply(pitch));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
