package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame.Shape;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.PositionNames;
import java.util.Map;

/**
 * The hand of the cello. In the neck positions the closed hand has a semitone a finger; extended
 * back only the first finger moves, extended forward the second to fourth move. Above 4th position
 * the fourth finger leaves the string as a rule: 1-2-3 as tone and semitone or semitone and tone,
 * extended to two tones. From the octave up the thumb lies on the string.
 */
final class CelloHand implements ThumbPositionHand {
  private static final int LAST_NECK_SEMITONE = 7;

  private final double stringLength;
  private final NeckTouch touch;
  private final boolean lowThumb;
  private final ThumbPosition thumb;
  private final ImmutableList<Frame> frames;

  CelloHand(Instrument instrument, LeftHand hand) {
    stringLength = instrument.stringLength();
    double reach = hand.reach(instrument);
    lowThumb = hand.lowThumb();
    thumb = ThumbPosition.cello(stringLength, reach, Geometry.lastSemitone(instrument));
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    int index = 0;
    PositionNames names = PositionNames.of(instrument);
    for (Map.Entry<Integer, fingering.tables.Position> entry : names.bySemitone().entrySet()) {
      int first = entry.getKey();
      for (Shape shape : Shape.values()) {
        if (opens(shape, first, reach)) {
          all.add(
              new Frame(
                  index++,
                  entry.getValue(),
                  names.remark(first),
                  first,
                  Geometry.share(first),
                  first + (shape == Shape.EXTENDED_FORWARD ? 4 : 3),
                  shape));
        }
      }
    }
    all.addAll(thumb.frames(index));
    frames = all.build();
    touch = new NeckTouch(frames, stringLength, reach);
  }

  /** Whether the hand takes that shape with its first finger there: extended, if it reaches. */
  private boolean opens(Shape shape, int first, double reach) {
    double room = first <= LAST_NECK_SEMITONE ? reach : 0;
    return switch (shape) {
      case CLOSED -> true;
      case EXTENDED_BACK -> first > 1 && Geometry.span(stringLength, first - 1, first + 3) <= room;
      case EXTENDED_FORWARD -> Geometry.span(stringLength, first, first + 4) <= room;
      case LETTERS, THUMB -> false;
    };
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
    int letters = pitch.letterNumber() - string.pitch().letterNumber();
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (Frame frame : frames) {
      if (frame.shape() == Shape.THUMB) {
        if (wide || inLine(frame)) {
          thumb.add(string, semitones, frame, found);
        }
        continue;
      }
      for (int finger = 1; finger <= 4; finger++) {
        double stretch =
            drawnIn(frame, finger, semitones, wide) ? 0 : stretch(frame, finger, semitones);
        if (stretch >= 0) {
          found.add(
              Placement.stopped(
                  string.number(),
                  Finger.of(finger),
                  semitones,
                  frame,
                  Geometry.fromNut(stringLength, semitones),
                  stretch,
                  respelled(frame, finger, letters)));
        }
      }
    }
    return found.build();
  }

  /** In a chord the fourth finger can be drawn in beside the third. */
  private static boolean drawnIn(Frame frame, int finger, int semitones, boolean wide) {
    return wide
        && finger == 4
        && frame.shape() == Shape.CLOSED
        && frame.first() <= LAST_NECK_SEMITONE
        && semitones == frame.first() + 2;
  }

  /** Millimetres of stretch with which the finger takes the place, or -1 where it does not. */
  private double stretch(Frame frame, int finger, int semitones) {
    int rest = (int) frame.first();
    if (rest > LAST_NECK_SEMITONE) {
      int above = semitones - rest;
      return switch (finger) {
        case 1 -> above == 0 ? 0 : -1;
        case 2 -> above == 1 || above == 2 ? 0 : -1;
        case 3 ->
            above == 3
                ? 0
                : above == 4 ? Geometry.span(stringLength, semitones - 1, semitones) : -1;
        default -> -1;
      };
    }
    int place =
        switch (frame.shape()) {
          case LETTERS, CLOSED, THUMB -> rest + finger - 1;
          case EXTENDED_BACK -> finger == 1 ? rest - 1 : rest + finger - 1;
          case EXTENDED_FORWARD -> finger == 1 ? rest : rest + finger;
        };
    if (semitones != place) {
      return -1;
    }
    // The open hand is charged on the fingers that make it: the first, or third and fourth. The
    // second falls by itself where it opens, so that D, E and F♯ go 1-2-4 and not 1-3-4.
    return switch (frame.shape()) {
      case LETTERS, CLOSED, THUMB -> 0;
      case EXTENDED_BACK -> finger == 1 ? Geometry.span(stringLength, semitones, rest) : 0;
      case EXTENDED_FORWARD ->
          finger <= 2 ? 0 : Geometry.span(stringLength, semitones - 1, semitones);
    };
  }

  /**
   * The same open hand is 1st extended back for A♭ and half extended forward for G♯: the letter
   * under first, second and fourth finger tells which.
   */
  private static boolean respelled(Frame frame, int finger, int letters) {
    if (frame.shape() == Shape.CLOSED || finger == 3) {
      return false;
    }
    int number = frame.position().number();
    int expected = finger == 1 ? number : finger == 2 ? number + 1 : number + 2;
    return letters != expected;
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
