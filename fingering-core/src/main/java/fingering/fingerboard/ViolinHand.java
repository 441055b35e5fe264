package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.Instrument.HandKind;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;

/**
 * The hand of violin and viola: one letter for each finger. In 1st position, the first finger has
 * the letter above the open string, in 3rd the third letter above; low and high fingers belong to
 * the same position. In half position, the second finger has the letter that the first has in 1st.
 *
 * <p>The centre of a finger is the mean place of its letter; neighbouring letters are 12/7
 * semitones apart on average. A finger moves low and high around its centre. It can also stop a
 * note spelled with a neighbouring letter, so that enharmonic spellings need no shift.
 */
final class ViolinHand implements HandModel {
  /** Mean distance of neighbouring letters in semitones: seven letters in an octave of twelve. */
  private static final double LETTER = 12.0 / 7;

  /** Largest distance of a finger from its centre for its own letter: allows a sharp or a flat. */
  private static final double SPELLED = 1.75;

  /** The same for a note spelled with a neighbouring letter. */
  private static final double RESPELLED = 1.3;

  /** The same in half position, which is only a semitone from 1st. */
  private static final double RESPELLED_HALF = 0.6;

  /** Extension of the fourth finger up, or the first back, in single notes, in semitones. */
  private static final double EXTENSION = 2;

  /** The same in double stops, for fingered octaves and tenths. */
  private static final double WIDE_EXTENSION = 4.6;

  /** Distance of a finger from its centre without a stretch, in semitones. */
  private static final double EASY = 0.9;

  /** The same for the fourth finger, the shortest, above its centre. */
  private static final double EASY_FOURTH = 0.3;

  /** Fraction of the reach that the hand spans without a stretch (common practice, no source). */
  private static final double AT_EASE = 0.85;

  /** The third and fourth finger are never further apart, in semitones (common practice). */
  private static final int WHOLE_TONE = 2;

  /** Number of fingers above the first that are on the fingerboard in the highest position. */
  private static final int FINGERS_AT_THE_END = 2;

  private final double stringLength;
  private final double reach;
  private final int end;
  private final ImmutableList<Frame> frames;

  ViolinHand(Instrument instrument, LeftHand hand) {
    stringLength = instrument.stringLength();
    reach = hand.reach(instrument);
    end = instrument.lastSemitone();
    ImmutableList.Builder<Frame> all = ImmutableList.builder();
    for (int p = 0; centre(p, 1 + FINGERS_AT_THE_END) <= end; p++) {
      double first = centre(p, 1);
      Position position = p == 0 ? Position.HALF : Position.of(p);
      all.add(
          new Frame(
              p,
              HandKind.VIOLIN,
              position,
              "",
              first,
              Geometry.share(first),
              centre(p, 4),
              Frame.Shape.LETTERS));
    }
    frames = all.build();
  }

  @Override
  public ImmutableList<Frame> frames() {
    return frames;
  }

  /** The centre of a finger in a position, in semitones above the open string. */
  private static double centre(int position, int finger) {
    int letters = position + finger - 1;
    // In half position, the first finger is a semitone above the open string, never at the nut.
    return letters == 0 ? 1 : LETTER * letters;
  }

  @Override
  public ImmutableList<Placement> stopped(OpenString string, Pitch pitch, boolean wide) {
    double extension = wide ? WIDE_EXTENSION : EXTENSION;
    int semitones = pitch.midi() - string.pitch().midi();
    if (semitones < 1 || semitones > end) {
      return ImmutableList.of();
    }
    int letters = pitch.letterNumber() - string.pitch().letterNumber();
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (Frame frame : frames) {
      for (int finger = 1; finger <= 4; finger++) {
        int expected = frame.index() + finger - 1;
        double offset = semitones - centre(frame.index(), finger);
        boolean spelled = letters == expected || expected == 0;
        if (fits(frame, finger, semitones, letters - expected, offset, extension)) {
          found.add(
              Placement.stopped(
                  string.number(),
                  Finger.of(finger),
                  semitones,
                  frame,
                  Geometry.fromNut(stringLength, semitones),
                  stretch(frame, finger, semitones, offset),
                  !spelled));
        }
      }
    }
    return found.build();
  }

  private boolean fits(
      Frame frame, int finger, int semitones, int letterOffset, double offset, double extension) {
    boolean half = frame.position().equals(Position.HALF);
    // In chords the fingers can be closer together than in single notes.
    double respelled = half ? RESPELLED_HALF : extension > EXTENSION ? SPELLED : RESPELLED;
    if (half && finger == 1) {
      return semitones == 1;
    }
    if (letterOffset == 0 && Math.abs(offset) <= (half ? RESPELLED : SPELLED)) {
      return true;
    }
    if (Math.abs(letterOffset) <= 1 && Math.abs(offset) <= respelled) {
      return true;
    }
    if (finger == 4 && offset > 0 && offset <= extension && letterOffset >= 0) {
      return Geometry.span(stringLength, frame.first(), semitones) <= reach;
    }
    return finger == 1
        && offset < 0
        && -offset <= extension
        && letterOffset <= 0
        && Geometry.span(stringLength, semitones, frame.highest()) <= reach;
  }

  private double stretch(Frame frame, int finger, int semitones, double offset) {
    double reached =
        finger == 4 ? Geometry.span(stringLength, frame.first(), semitones) - AT_EASE * reach : 0;
    return Math.max(reached, outOfPlace(frame, finger, semitones, offset));
  }

  private double outOfPlace(Frame frame, int finger, int semitones, double offset) {
    double centre = centre(frame.index(), finger);
    double easyAbove = finger == 4 ? EASY_FOURTH : EASY;
    if (offset > easyAbove) {
      return Geometry.span(stringLength, centre + easyAbove, semitones);
    }
    if (offset < -EASY) {
      return Geometry.span(stringLength, semitones, centre - EASY);
    }
    return 0;
  }

  @Override
  public double reach(Finger stops) {
    return stops == Finger.FIRST ? reach : 0;
  }

  @Override
  public boolean canStopTogether(Placement low, Placement high) {
    int apart = high.finger().number() - low.finger().number();
    int semitones = high.semitones() - low.semitones();
    if (semitones < apart && !HandModel.sideBySide(low, high)) {
      return false;
    }
    if (low.finger() == Finger.THIRD && semitones > WHOLE_TONE) {
      return false;
    }
    // Neighbouring fingers a whole tone apart are the hand's own shape, on the largest viola too.
    double share = semitones <= WHOLE_TONE * apart ? 1 : HandModel.share(apart);
    return high.millimetres() - low.millimetres() <= reach * share;
  }
}
