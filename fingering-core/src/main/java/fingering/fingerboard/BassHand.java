package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.PositionNames;

/**
 * The hand of the double bass in the 1-2-4 school: first, second and fourth finger a semitone
 * apart; the third may take the fourth's place from 5th position and does from 7th (F. Simandl, New
 * Method for the Double Bass, from memory).
 */
final class BassHand implements Hand {
  private static final int THIRD_MAY = 8;
  private static final int THIRD_DOES = 12;

  private final double stringLength;
  private final ImmutableList<Frame> frames;

  BassHand(Instrument instrument) {
    stringLength = instrument.stringLength();
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    int index = 0;
    for (var entry : PositionNames.of(instrument).bySemitone().entrySet()) {
      int first = entry.getKey();
      double place = Geometry.fromNut(stringLength, first);
      all.add(new Frame(index++, entry.getValue(), first, place, first + 2, Frame.Shape.CLOSED));
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
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (Frame frame : frames) {
      int first = (int) frame.first();
      switch (semitones - first) {
        case 0 -> found.add(placement(string, Finger.FIRST, semitones, frame));
        case 1 -> found.add(placement(string, Finger.SECOND, semitones, frame));
        case 2 -> {
          if (first >= THIRD_MAY) {
            found.add(placement(string, Finger.THIRD, semitones, frame));
          }
          if (first < THIRD_DOES) {
            found.add(placement(string, Finger.FOURTH, semitones, frame));
          }
        }
        default -> {
          // out of this frame
        }
      }
    }
    return found.build();
  }

  private Placement placement(OpenString string, Finger finger, int semitones, Frame frame) {
    return new Placement(
        string.number(),
        finger,
        semitones,
        frame,
        Geometry.fromNut(stringLength, semitones),
        0,
        false);
  }
}
