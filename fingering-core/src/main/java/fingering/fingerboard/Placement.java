package fingering.fingerboard;

import fingering.music.Marks;
import java.util.Optional;

/**
 * One playable way to sound one note.
 *
 * @param string number of the string, 1 being the highest
 * @param finger what stops it; for a natural harmonic the finger that touches
 * @param semitones semitones of the finger's place above the open string, 0 when open, below 0 on
 *     an extension behind the nut
 * @param frame the hand frame in which it is played; an open string keeps the frame the hand is in
 * @param millimetres distance of the finger's place from the nut
 * @param stretch millimetres by which the finger reaches beyond where the frame lets it fall
 * @param respelled whether the finger takes the note under a neighbouring letter's name (A♭ by the
 *     finger that has G♯)
 * @param touch the touch of a harmonic; empty for an ordinary note
 * @param trill the finger that beats the upper note of a trill; empty where there is no trill or no
 *     finger for it
 */
public record Placement(
    int string,
    Finger finger,
    int semitones,
    Frame frame,
    double millimetres,
    double stretch,
    boolean respelled,
    Optional<HarmonicTouch> touch,
    Optional<Finger> trill) {

  /** A string that sounds from the nut, or so many semitones below it on an extension. */
  static Placement open(int string, int semitones, double stringLength, Frame frame) {
    return new Placement(
        string,
        Finger.OPEN,
        semitones,
        frame,
        Geometry.fromNut(stringLength, semitones),
        0,
        false,
        Optional.empty(),
        Optional.empty());
  }

  /** A note stopped by a finger. */
  static Placement stopped(
      int string,
      Finger finger,
      int semitones,
      Frame frame,
      double millimetres,
      double stretch,
      boolean respelled) {
    return new Placement(
        string,
        finger,
        semitones,
        frame,
        millimetres,
        stretch,
        respelled,
        Optional.empty(),
        Optional.empty());
  }

  /** The same place touched for a harmonic. */
  Placement touching(HarmonicTouch how) {
    return new Placement(
        string, finger, semitones, frame, millimetres, stretch, respelled, Optional.of(how), trill);
  }

  /** The same place with a finger that trills. */
  Placement trilling(Finger upper) {
    return new Placement(
        string,
        finger,
        semitones,
        frame,
        millimetres,
        stretch,
        respelled,
        touch,
        Optional.of(upper));
  }

  /** Whether it agrees with the finger and the string printed at its note, as far as they are. */
  public boolean asPrinted(Marks marks) {
    return marks.finger().map(finger.symbol()::equals).orElse(true)
        && marks.string().orElse(string) == string;
  }

  /** Whether the string sounds open, from the nut or from the end of its extension. */
  public boolean open() {
    return finger == Finger.OPEN;
  }

  /** Whether a finger stops an ordinary note: neither open nor a harmonic. */
  public boolean stopped() {
    return finger != Finger.OPEN && touch.isEmpty();
  }
}
