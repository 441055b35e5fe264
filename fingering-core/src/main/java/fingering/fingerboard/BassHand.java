package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame.Shape;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.PositionNames;

/**
 * The hand of the double bass. In the 1-2-4 school first, second and fourth finger lie a semitone
 * apart; the third may take the fourth's place from 5th position and does from 7th (F. Simandl, New
 * Method for the Double Bass, from memory). The four-finger hand has a semitone for each finger
 * wherever it reaches so far. Above, the thumb lies on the string.
 */
final class BassHand implements ThumbPositionHand {
  private static final int THIRD_MAY = 8;
  private static final int THIRD_DOES = 12;

  private final double stringLength;
  private final double reach;
  private final boolean fourFingers;
  private final boolean lowThumb;
  private final ThumbPosition thumb;
  private final NeckTouch touch;
  private final ImmutableList<Frame> frames;

  BassHand(Instrument instrument, LeftHand hand) {
    stringLength = instrument.stringLength();
    reach = hand.reach(instrument);
    fourFingers = hand.fourFingers();
    lowThumb = hand.lowThumb();
    thumb = ThumbPosition.bass(stringLength, reach, Geometry.lastSemitone(instrument));
    int behind = instrument.strings().stream().mapToInt(BassHand::extension).max().orElse(0);
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    int index = 0;
    PositionNames names = PositionNames.of(instrument);
    for (var entry : names.bySemitone().entrySet()) {
      int first = entry.getKey();
      if (first > -behind) {
        int highest = first + (opensToFour(first) ? 3 : 2);
        all.add(
            new Frame(
                index++,
                entry.getValue(),
                names.remark(first),
                first,
                Geometry.share(first),
                highest,
                Shape.CLOSED));
      }
    }
    all.addAll(thumb.frames(index));
    frames = all.build();
    touch = new NeckTouch(frames, stringLength, reach);
  }

  private static int extension(OpenString string) {
    return string.pitch().midi() - string.lowest().midi();
  }

  /** Whether the hand takes a semitone a finger with its first finger there. */
  private boolean opensToFour(int first) {
    return fourFingers
        && first > 0
        && first < THIRD_DOES
        && Geometry.span(stringLength, first, first + 3) <= reach;
  }

  @Override
  public ImmutableList<Frame> frames() {
    return frames;
  }

  @Override
  public boolean inLine(Frame frame) {
    return ThumbPosition.inLine(frame, lowThumb);
  }

  @Override
  public ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide) {
    int semitones = pitch.midi() - string.pitch().midi();
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    if (semitones <= 0 && semitones <= -extension(string)) {
      return found.build();
    }
    for (Frame frame : frames) {
      int first = (int) frame.first();
      if (frame.shape() == Shape.THUMB) {
        if (semitones > 0 && (wide || inLine(frame))) {
          thumb.add(string, semitones, frame, found);
        }
      } else if (first > 0 || (semitones <= 0 && first > -extension(string))) {
        for (Finger finger : fingers(first, semitones - first)) {
          found.add(
              Placement.stopped(
                  string.number(),
                  finger,
                  semitones,
                  frame,
                  Geometry.fromNut(stringLength, semitones),
                  0,
                  false));
        }
      }
    }
    return found.build();
  }

  /** The fingers that lie so many semitones above the first. */
  private ImmutableList<Finger> fingers(int first, int above) {
    if (opensToFour(first)) {
      return above < 0 || above > 3 ? ImmutableList.of() : ImmutableList.of(Finger.of(above + 1));
    }
    return switch (above) {
      case 0 -> ImmutableList.of(Finger.FIRST);
      case 1 -> ImmutableList.of(Finger.SECOND);
      case 2 ->
          first < THIRD_MAY
              ? ImmutableList.of(Finger.FOURTH)
              : first < THIRD_DOES
                  ? ImmutableList.of(Finger.THIRD, Finger.FOURTH)
                  : ImmutableList.of(Finger.THIRD);
      default -> ImmutableList.of();
    };
  }

  @Override
  public ThumbPosition thumb() {
    return thumb;
  }

  @Override
  public NeckTouch touch() {
    return touch;
  }
}
