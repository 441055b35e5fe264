package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;
import fingering.tables.Pitch;

/** A school of the left hand: the frames there are, and what each finger can stop in them. */
interface Hand {
  /** The frames, from the nut upward. */
  ImmutableList<Frame> frames();

  /**
   * The stopped placements of a sounding pitch on a string; empty where it cannot be stopped.
   *
   * @param wide whether to reach as far as the hand can with another finger down, not as far only
   *     as a line would have it
   */
  ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide);

  /** Whether two stopped placements of one frame can be held together on neighbouring strings. */
  boolean together(Placement lower, Placement higher);

  /** Whether one finger lies across two neighbouring strings at the same place: a stopped fifth. */
  static boolean barred(Placement a, Placement b) {
    return a.semitones() == b.semitones() && Math.abs(a.string() - b.string()) == 1;
  }
}
