package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;

/**
 * The placements in which fingers of cello and double bass can touch a harmonic node: all stopped
 * placements, and in the neck positions also the third or fourth finger further up, within the
 * reach of the hand. This includes the octave harmonic touched by the third finger from below (F.
 * Simandl, New Method for the Double Bass, from memory).
 *
 * @param frames the frames of the hand
 * @param stringLength length of the open string in millimetres
 * @param reach reach from first to fourth finger in millimetres
 */
record NeckTouch(ImmutableList<Frame> frames, double stringLength, double reach) {

  /** See {@link HandModel#touching}. */
  ImmutableList<Placement> touching(HandModel hand, OpenString string, double place) {
    int semitones = (int) Math.round(place);
    ImmutableList<Placement> stopped = hand.stopped(string, string.above(semitones), false);
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    found.addAll(stopped);
    for (Frame frame : frames) {
      if (frame.shape() == Frame.Shape.CLOSED
          && frame.first() > 0
          && semitones > frame.highest()
          && Geometry.span(stringLength, frame.first(), place) <= reach) {
        double stretch = Geometry.span(stringLength, frame.highest(), place);
        for (Finger finger : ImmutableList.of(Finger.THIRD, Finger.FOURTH)) {
          if (stopped.stream().anyMatch(p -> p.frame().equals(frame) && p.finger() == finger)) {
            continue;
          }
          found.add(
              Placement.stopped(
                  string.number(),
                  finger,
                  semitones,
                  frame,
                  Geometry.fromNut(stringLength, place),
                  stretch,
                  false));
        }
      }
    }
    return found.build();
  }

  /** See {@link HandModel#reach}. */
  double reach(Finger stops) {
    return switch (stops) {
      case FIRST -> reach;
      case THUMB -> reach * ThumbPosition.THUMB_SHARE;
      default -> 0;
    };
  }
}
