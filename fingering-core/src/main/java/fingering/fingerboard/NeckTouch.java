package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;

/**
 * Where fingers of cello and double bass touch without stopping: wherever they can stop, and from
 * the neck the third or fourth finger further up, as far as the hand reaches. So the third takes
 * the octave harmonic from below (F. Simandl, New Method for the Double Bass, from memory).
 */
record NeckTouch(ImmutableList<Frame> frames, double stringLength, double reach) {

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

  /** Millimetres from first finger, or thumb, to the finger that touches above it. */
  double reach(Finger stops) {
    return switch (stops) {
      case FIRST -> reach;
      case THUMB -> reach * ThumbPosition.THUMB_SHARE;
      default -> 0;
    };
  }
}
