package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;
import fingering.tables.Pitch;

/** A model of the left hand on an instrument: its frames, and the places each finger can stop. */
interface HandModel {
  /** The frames, from the nut up. */
  ImmutableList<Frame> frames();

  /**
   * Whether the frame can be used for single notes. Otherwise it is thumb position low on the neck,
   * only for grips that need the thumb.
   */
  default boolean forSingleNotes(Frame frame) {
    return true;
  }

  /**
   * The stopped placements of a sounding pitch on a string; empty if it cannot be stopped.
   *
   * @param wide whether to include the wide stretches of double stops
   */
  ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide);

  /**
   * The placements in which a finger can touch a string at a place, without their {@link
   * Placement#touch() touch}. A touching finger may reach further than a stopping one.
   *
   * @param place semitones above the open string, not necessarily whole
   */
  default ImmutableList<Placement> touching(OpenString string, double place) {
    return stopped(string, string.above((int) Math.round(place)), false);
  }

  /**
   * The reach for an artificial harmonic, in millimetres; 0 if that finger cannot stop one.
   *
   * @param stops the finger that stops the note
   */
  double reach(Finger stops);

  /** Whether two stopped placements in one frame, on two strings, can be held together. */
  default boolean canHoldTogether(Placement a, Placement b) {
    if (a.finger() == b.finger()) {
      // One finger can bar several strings at the same place.
      return a.semitones() == b.semitones();
    }
    return a.finger().number() < b.finger().number()
        ? canStopTogether(a, b)
        : canStopTogether(b, a);
  }

  /** Whether two different fingers can stop together, the lower finger first. */
  default boolean canStopTogether(Placement low, Placement high) {
    return high.semitones() > low.semitones() || sideBySide(low, high);
  }

  /**
   * The fraction of the reach that two fingers can span (common practice, no source).
   *
   * @param apart difference of the finger numbers
   */
  static double share(int apart) {
    return switch (apart) {
      case 1 -> 0.55;
      case 2 -> 0.65;
      default -> 1;
    };
  }

  /**
   * Whether neighbouring fingers stop the same place with at least one string between them, as in
   * chords. On adjacent strings, one finger would bar both.
   */
  static boolean sideBySide(Placement low, Placement high) {
    return high.semitones() == low.semitones()
        && high.finger().number() - low.finger().number() == 1
        && Math.abs(high.string() - low.string()) > 1;
  }
}
