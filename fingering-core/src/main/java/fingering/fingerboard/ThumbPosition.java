package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;
import fingering.tables.Position;

/**
 * Thumb position of cello and double bass: the thumb lies across the strings like a nut, first to
 * third finger stop above it, the fourth rests.
 */
final class ThumbPosition {
  /** The octave, where the thumb is at home (common practice, no source). */
  private static final int OCTAVE = 12;

  /** Where the neck ends and the thumb comes up from behind it, in semitones (common practice). */
  private static final int LOWEST_ASKED = 7;

  /** The lowest place of the thumb in double stops and artificial harmonics, in semitones. */
  private static final int LOWEST = 1;

  /** The thumb stands off from the third finger further than the first from the fourth. */
  static final double THUMB_SHARE = 1.2;

  /**
   * Where a finger lies above the thumb, in semitones.
   *
   * @param lowest drawn in
   * @param atRest the highest place without a stretch
   * @param highest stretched
   */
  private record Room(Finger finger, int lowest, int atRest, int highest) {}

  /** A perfect fourth from thumb to third finger, a fifth stretched (common practice). */
  private static final ImmutableList<Room> CELLO =
      ImmutableList.of(
          new Room(Finger.FIRST, 1, 2, 3),
          new Room(Finger.SECOND, 2, 4, 5),
          new Room(Finger.THIRD, 4, 5, 7));

  /** A major third to a perfect fourth from thumb to third finger (common practice). */
  private static final ImmutableList<Room> BASS =
      ImmutableList.of(
          new Room(Finger.FIRST, 1, 2, 2),
          new Room(Finger.SECOND, 2, 3, 4),
          new Room(Finger.THIRD, 3, 5, 5));

  private final double stringLength;
  private final double reach;
  private final int end;
  private final ImmutableList<Room> fingers;

  private ThumbPosition(double stringLength, double reach, int end, ImmutableList<Room> fingers) {
    this.stringLength = stringLength;
    this.reach = reach * THUMB_SHARE;
    this.end = end;
    this.fingers = fingers;
  }

  static ThumbPosition cello(double stringLength, double reach, int end) {
    return new ThumbPosition(stringLength, reach, end, CELLO);
  }

  static ThumbPosition bass(double stringLength, double reach, int end) {
    return new ThumbPosition(stringLength, reach, end, BASS);
  }

  /** Whether single notes are played in a frame: any of the neck, or the thumb high enough. */
  static boolean inLine(Frame frame, boolean lowThumb) {
    return frame.thumb().orElse(OCTAVE) >= (lowThumb ? LOWEST_ASKED : OCTAVE);
  }

  /** The frames, from the lowest thumb upward, numbered on from an index. */
  ImmutableList<Frame> frames(int firstIndex) {
    ImmutableList.Builder<Frame> frames = ImmutableList.builder();
    int index = firstIndex;
    for (int thumb = LOWEST; thumb + 1 < end; thumb++) {
      int first = thumb + Frame.THUMB_TO_FIRST;
      int highest = thumb + fingers.get(2).atRest();
      frames.add(
          new Frame(
              index++,
              Position.THUMB,
              "",
              first,
              Geometry.share(first),
              highest,
              Frame.Shape.THUMB));
    }
    return frames.build();
  }

  /** Adds the placements of a place in a thumb frame. */
  void add(OpenString string, int semitones, Frame frame, ImmutableList.Builder<Placement> found) {
    int thumb = frame.thumb().orElseThrow();
    if (semitones > end) {
      return;
    }
    double millimetres = Geometry.fromNut(stringLength, semitones);
    if (semitones == thumb) {
      found.add(
          Placement.stopped(
              string.number(), Finger.THUMB, semitones, frame, millimetres, 0, false));
    }
    int above = semitones - thumb;
    for (Room room : fingers) {
      if (above >= room.lowest()
          && above <= room.highest()
          && Geometry.span(stringLength, thumb, semitones) <= reach) {
        double stretch =
            above <= room.atRest()
                ? 0
                : Geometry.span(stringLength, thumb + room.atRest(), semitones);
        found.add(
            Placement.stopped(
                string.number(), room.finger(), semitones, frame, millimetres, stretch, false));
      }
    }
  }

  /** Whether thumb and finger, or two fingers, can be held together, the lower one first. */
  boolean holds(Placement low, Placement high) {
    int apart = high.finger().number() - low.finger().number();
    double room =
        low.finger() == Finger.THUMB ? reach : reach / THUMB_SHARE * HandModel.share(apart);
    return high.millimetres() - low.millimetres() <= room
        && high.semitones() - low.semitones() >= apart;
  }
}
