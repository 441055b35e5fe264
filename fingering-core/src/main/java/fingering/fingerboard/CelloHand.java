package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import fingering.tables.PositionNames;

/**
 * The hand of the cello. In the neck positions the closed hand has a semitone a finger; extended
 * back only the first finger moves, extended forward the second to fourth move. Above 4th position
 * the fourth finger leaves the string as a rule: 1-2-3 as tone and semitone or semitone and tone,
 * extended to two tones.
 */
final class CelloHand implements Hand {
  private static final int LAST_NECK_SEMITONE = 7;

  private final double stringLength;
  private final ImmutableList<Frame> frames;

  CelloHand(Instrument instrument) {
    stringLength = instrument.stringLength();
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    int index = 0;
    for (var entry : PositionNames.of(instrument).bySemitone().entrySet()) {
      int first = entry.getKey();
      double place = Geometry.fromNut(stringLength, first);
      Position position = entry.getValue();
      all.add(new Frame(index++, position, first, place, first + 3, Frame.Shape.CLOSED));
      if (first <= LAST_NECK_SEMITONE) {
        if (first > 1) {
          all.add(new Frame(index++, position, first, place, first + 3, Frame.Shape.EXTENDED_BACK));
        }
        all.add(
            new Frame(index++, position, first, place, first + 4, Frame.Shape.EXTENDED_FORWARD));
      }
    }
    frames = all.build();
  }

  @Override
  public ImmutableList<Frame> frames() {
    return frames;
  }

  @Override
  public ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide) {
    int semitones = pitch.midi() - string.pitch().midi();
    int letters = pitch.letterNumber() - string.pitch().letterNumber();
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (Frame frame : frames) {
      for (int finger = 1; finger <= 4; finger++) {
        double stretch = stretch(frame, finger, semitones);
        if (stretch >= 0) {
          found.add(
              new Placement(
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
          case LETTERS, CLOSED -> rest + finger - 1;
          case EXTENDED_BACK -> finger == 1 ? rest - 1 : rest + finger - 1;
          case EXTENDED_FORWARD -> finger == 1 ? rest : rest + finger;
        };
    if (semitones != place) {
      return -1;
    }
    // The open hand is charged on the fingers that make it: the first, or the others.
    return switch (frame.shape()) {
      case LETTERS, CLOSED -> 0;
      case EXTENDED_BACK -> finger == 1 ? Geometry.span(stringLength, semitones, rest) : 0;
      case EXTENDED_FORWARD ->
          finger == 1 ? 0 : Geometry.span(stringLength, semitones - 1, semitones);
    };
  }

  /**
   * The same open hand is 1st extended back for A♭ and half extended forward for G♯: the letter
   * under first, second and fourth finger tells which.
   */
  private static boolean respelled(Frame frame, int finger, int letters) {
    if (frame.shape() == Frame.Shape.CLOSED || finger == 3) {
      return false;
    }
    int number = frame.position().halves() / 2;
    int expected = finger == 1 ? number : finger == 2 ? number + 1 : number + 2;
    return letters != expected;
  }
}
