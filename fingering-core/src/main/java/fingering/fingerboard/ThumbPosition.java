package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument.HandKind;
import fingering.tables.OpenString;
import fingering.tables.Position;

/**
 * Thumb position of cello and double bass. The thumb lies across the strings like a nut, and the
 * first to third finger stop above it. The fourth is not used.
 */
final class ThumbPosition {
  /**
   * The lowest usual place of the thumb in single notes, in semitones (common practice, no source).
   */
  private static final int OCTAVE = 12;

  /**
   * The same for players who use the thumb low: the end of the neck (common practice, no source).
   */
  private static final int NECK_END = 7;

  /** The lowest place of the thumb in double stops and artificial harmonics, in semitones. */
  private static final int LOWEST = 1;

  /** Reach from thumb to third finger, as a multiple of that from first to fourth finger. */
  static final double THUMB_SHARE = 1.2;

  /**
   * The places of a finger, in semitones above the thumb.
   *
   * @param finger the finger
   * @param lowest the lowest place
   * @param atRest the highest place without a stretch
   * @param highest the highest place
   */
  private record FingerRange(Finger finger, int lowest, int atRest, int highest) {}

  /** A perfect fourth from thumb to third finger, or a fifth with a stretch (common practice). */
  private static final ImmutableList<FingerRange> CELLO =
      ImmutableList.of(
          new FingerRange(Finger.FIRST, 1, 2, 3),
          new FingerRange(Finger.SECOND, 2, 4, 5),
          new FingerRange(Finger.THIRD, 4, 5, 7));

  /** A major third to a perfect fourth from thumb to third finger (common practice). */
  private static final ImmutableList<FingerRange> BASS =
      ImmutableList.of(
          new FingerRange(Finger.FIRST, 1, 2, 2),
          new FingerRange(Finger.SECOND, 2, 3, 4),
          new FingerRange(Finger.THIRD, 3, 5, 5));

  private final HandKind hand;
  private final double stringLength;
  private final double reach;
  private final int end;
  private final ImmutableList<FingerRange> fingers;

  private ThumbPosition(
      HandKind hand,
      double stringLength,
      double reach,
      int end,
      ImmutableList<FingerRange> fingers) {
    this.hand = hand;
    this.stringLength = stringLength;
    this.reach = reach * THUMB_SHARE;
    this.end = end;
    this.fingers = fingers;
  }

  static ThumbPosition cello(double stringLength, double reach, int end) {
    return new ThumbPosition(HandKind.CELLO, stringLength, reach, end, CELLO);
  }

  static ThumbPosition bass(double stringLength, double reach, int end) {
    return new ThumbPosition(HandKind.BASS, stringLength, reach, end, BASS);
  }

  /** Whether a frame can be used for single notes: not in thumb position, or high enough. */
  static boolean forSingleNotes(Frame frame, boolean lowThumb) {
    return frame.thumb().orElse(OCTAVE) >= (lowThumb ? NECK_END : OCTAVE);
  }

  /** The frames from the lowest thumb up, with consecutive indices from the given one. */
  ImmutableList<Frame> frames(int firstIndex) {
    ImmutableList.Builder<Frame> frames = ImmutableList.builder();
    int index = firstIndex;
    for (int thumb = LOWEST; thumb + 1 < end; thumb++) {
      int first = thumb + Frame.THUMB_TO_FIRST;
      int highest = thumb + fingers.get(2).atRest();
      frames.add(
          new Frame(
              index++,
              hand,
              Position.THUMB,
              "",
              first,
              Geometry.share(first),
              highest,
              Frame.Shape.THUMB));
    }
    return frames.build();
  }

  /** Adds the placements at a place in a frame of thumb position. */
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
    for (FingerRange range : fingers) {
      if (above >= range.lowest()
          && above <= range.highest()
          && Geometry.span(stringLength, thumb, semitones) <= reach) {
        double stretch =
            above <= range.atRest()
                ? 0
                : Geometry.span(stringLength, thumb + range.atRest(), semitones);
        found.add(
            Placement.stopped(
                string.number(), range.finger(), semitones, frame, millimetres, stretch, false));
      }
    }
  }

  /** Whether thumb and finger, or two fingers, can stop together, the lower one first. */
  boolean canStopTogether(Placement low, Placement high) {
    int apart = high.finger().number() - low.finger().number();
    double limit =
        low.finger() == Finger.THUMB ? reach : reach / THUMB_SHARE * HandModel.share(apart);
    return high.millimetres() - low.millimetres() <= limit
        && high.semitones() - low.semitones() >= apart;
  }
}
