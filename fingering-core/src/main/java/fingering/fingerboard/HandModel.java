package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;
import fingering.tables.Pitch;

/** A school of the left hand: the frames there are, and what each finger can stop in them. */
interface HandModel {
  /** The frames, from the nut upward. */
  ImmutableList<Frame> frames();

  /**
   * Whether the frame serves every kind of note; otherwise, as the thumb far down the neck, only
   * grips that need the thumb itself.
   */
  default boolean inLine(Frame frame) {
    return true;
  }

  /**
   * The stopped placements of a sounding pitch on a string; empty where it cannot be stopped.
   *
   * @param wide whether to reach as far as the hand can with another finger down, not as far only
   *     as a line would have it
   */
  ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide);

  /**
   * The placements with which a finger can touch the string at a place, ordinary ones of which the
   * touch is still to be told. A finger that only touches may reach further than one that stops.
   *
   * @param place semitones above the open string, not always whole
   */
  default ImmutableList<Placement> touching(OpenString string, double place) {
    return stopped(string, string.above((int) Math.round(place)), false);
  }

  /** Millimetres that lie within reach of the fingers of an artificial harmonic. */
  double reach(Finger stops);

  /** Whether two stopped placements of one frame can be held together on two strings. */
  default boolean together(Placement a, Placement b) {
    if (a.finger() == b.finger()) {
      // One finger across two neighbouring strings stops a fifth or a fourth: the same place on
      // both.
      return a.semitones() == b.semitones() && Math.abs(a.string() - b.string()) == 1;
    }
    return a.finger().number() < b.finger().number() ? holds(a, b) : holds(b, a);
  }

  /** Whether two different fingers can be held together, the lower finger first. */
  default boolean holds(Placement low, Placement high) {
    return high.semitones() > low.semitones() || sideBySide(low, high);
  }

  /**
   * The share of the reach that two fingers span, by how many fingers lie apart (common practice).
   */
  static double share(int apart) {
    return switch (apart) {
      case 1 -> 0.55;
      case 2 -> 0.65;
      default -> 1;
    };
  }

  /**
   * Whether neighbouring fingers stand in one place with a string between them, as in chords; on
   * strings that lie side by side one finger would take both.
   */
  static boolean sideBySide(Placement low, Placement high) {
    return high.semitones() == low.semitones()
        && high.finger().number() - low.finger().number() == 1
        && Math.abs(high.string() - low.string()) > 1;
  }
}
