package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame.Shape;
import fingering.tables.Instrument;
import fingering.tables.Instrument.HandKind;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.PositionNames;

/**
 * The hand of the double bass. In 1-2-4 fingering, the first, second and fourth finger are each a
 * semitone apart; the third can replace the fourth from 5th position up, is the usual finger there
 * from 6th, and the only one from 7th (F. Simandl, New Method for the Double Bass, from memory). In
 * four-finger fingering, each finger has its own semitone in the positions where the hand can span
 * a minor third. Above the neck positions, the thumb is on the string.
 */
final class BassHand implements ThumbPositionHand {
  /** Place of the first finger from which the third can replace the fourth: 5th position. */
  private static final int THIRD_OPTIONAL = 8;

  /** Place of the first finger from which the third is preferred to the fourth: 6th position. */
  private static final int THIRD_USUAL = 10;

  /** Place of the first finger from which the third always replaces the fourth: 7th position. */
  private static final int THIRD_ALWAYS = 12;

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
    thumb = ThumbPosition.bass(stringLength, reach, instrument.lastSemitone());
    int behindNut =
        instrument.strings().stream().mapToInt(BassHand::extensionLength).max().orElse(0);
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    int index = 0;
    PositionNames names = PositionNames.of(instrument);
    for (var entry : names.bySemitone().entrySet()) {
      int first = entry.getKey();
      if (first > -behindNut) {
        int highest = first + (usesFourFingers(first) ? 3 : 2);
        all.add(
            new Frame(
                index++,
                HandKind.BASS,
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

  /** Semitones of the extension behind the nut; 0 if there is none. */
  private static int extensionLength(OpenString string) {
    return string.pitch().midi() - string.lowest().midi();
  }

  /** Whether each finger has its own semitone with the first finger at that place. */
  private boolean usesFourFingers(int first) {
    return fourFingers
        && first > 0
        && first < THIRD_ALWAYS
        && Geometry.span(stringLength, first, first + 3) <= reach;
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
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    if (semitones <= 0 && semitones <= -extensionLength(string)) {
      return found.build();
    }
    for (Frame frame : frames) {
      int first = (int) frame.first();
      if (frame.shape() == Shape.THUMB) {
        if (semitones > 0 && (wide || forSingleNotes(frame))) {
          thumb.add(string, semitones, frame, found);
        }
      } else if (first > 0 || (semitones <= 0 && first > -extensionLength(string))) {
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

  /** The fingers at a place some semitones above the first finger. */
  private ImmutableList<Finger> fingers(int first, int above) {
    if (usesFourFingers(first)) {
      return above < 0 || above > 3 ? ImmutableList.of() : ImmutableList.of(Finger.of(above + 1));
    }
    return switch (above) {
      case 0 -> ImmutableList.of(Finger.FIRST);
      case 1 -> ImmutableList.of(Finger.SECOND);
      case 2 ->
          first < THIRD_OPTIONAL
              ? ImmutableList.of(Finger.FOURTH)
              : first < THIRD_USUAL
                  ? ImmutableList.of(Finger.FOURTH, Finger.THIRD)
                  : first < THIRD_ALWAYS
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
