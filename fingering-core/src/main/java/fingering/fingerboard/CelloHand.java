package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame.Shape;
import fingering.tables.Instrument;
import fingering.tables.Instrument.HandKind;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import fingering.tables.PositionNames;
import java.util.Map;

/**
 * The hand of the cello. In the neck positions, the closed hand has one semitone for each finger.
 * In a backward extension only the first finger moves; in a forward extension the second to fourth
 * fingers move. Above 4th position the fourth finger is not normally used: fingers 1-2-3 play a
 * tone and a semitone, a semitone and a tone, or two tones with an extension. From the octave up,
 * the thumb is on the string.
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
    thumb = ThumbPosition.cello(stringLength, reach, instrument.lastSemitone());
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    int index = 0;
    PositionNames names = PositionNames.of(instrument);
    for (Map.Entry<Integer, Position> entry : names.bySemitone().entrySet()) {
      int first = entry.getKey();
      for (Shape shape : Shape.values()) {
        if (canTake(shape, first, reach)) {
          all.add(
              new Frame(
                  index++,
                  HandKind.CELLO,
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

  /** Whether the hand can take that shape with the first finger at that place. */
  private boolean canTake(Shape shape, int first, double reach) {
    double limit = first <= LAST_NECK_SEMITONE ? reach : 0;
    return switch (shape) {
      case CLOSED -> true;
      case EXTENDED_BACK -> first > 1 && Geometry.span(stringLength, first - 1, first + 3) <= limit;
      case EXTENDED_FORWARD -> Geometry.span(stringLength, first, first + 4) <= limit;
      case LETTERS, THUMB -> false;
    };
  }

  @Override
  public ImmutableList<Frame> frames() {
    return frames;
  }

  @Override
  public boolean forSingleNotes(Frame frame) {
    return ThumbPosition.forSingleNotes(frame, lowThumb);
  }

  @Override
  public ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide) {
    int semitones = pitch.midi() - string.pitch().midi();
    int letters = pitch.letterNumber() - string.pitch().letterNumber();
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (Frame frame : frames) {
      if (frame.shape() == Shape.THUMB) {
        if (wide || forSingleNotes(frame)) {
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

  /** In a chord, the fourth finger can be placed a semitone lower, beside the third. */
  private static boolean drawnIn(Frame frame, int finger, int semitones, boolean wide) {
    return wide
        && finger == 4
        && frame.shape() == Shape.CLOSED
        && frame.first() <= LAST_NECK_SEMITONE
        && semitones == frame.first() + 2;
  }

  /** Stretch in millimetres of the finger at that place, or -1 if it cannot stop there. */
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
    // The stretch of an extended hand counts for the fingers that make the extension: the first, or
    // the third and fourth. It does not count for the second, so that D, E, F♯ is played 1-2-4, not
    // 1-3-4.
    return switch (frame.shape()) {
      case LETTERS, CLOSED, THUMB -> 0;
      case EXTENDED_BACK -> finger == 1 ? Geometry.span(stringLength, semitones, rest) : 0;
      case EXTENDED_FORWARD ->
          finger <= 2 ? 0 : Geometry.span(stringLength, semitones - 1, semitones);
    };
  }

  /**
   * Whether the spelling belongs to another frame with the same hand. The same extended hand is 1st
   * position extended back for A♭, and half position extended forward for G♯; the letters of the
   * first, second and fourth finger decide.
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
