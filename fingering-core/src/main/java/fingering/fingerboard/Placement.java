package fingering.fingerboard;

import fingering.music.Marks;
import java.util.Optional;

/**
 * A string and finger for one note, in a hand frame.
 *
 * @param string number of the string, 1 for the highest
 * @param finger the stopping finger; the touching finger for a natural harmonic; {@link
 *     Finger#OPEN} for an open string
 * @param semitones place of the finger in semitones above the open string: 0 if open, below 0 on an
 *     extension behind the nut
 * @param frame the hand frame; for an open string, the frame the hand is in
 * @param millimetres distance of the finger from the nut, in millimetres
 * @param stretch distance by which the finger stretches out of the frame, in millimetres
 * @param respelled whether the note is spelled with a neighbouring letter of that of the finger: A♭
 *     with the finger for G♯
 * @param touch the touch of a harmonic; empty for an ordinary note
 * @param trill the finger that plays the upper note of a trill; empty if there is no trill, or no
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

  /** An open string; below 0 semitones for the end of an extension. */
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

  /** The same placement with the touch of a harmonic. */
  Placement touching(HarmonicTouch harmonic) {
    return new Placement(
        string,
        finger,
        semitones,
        frame,
        millimetres,
        stretch,
        respelled,
        Optional.of(harmonic),
        trill);
  }

  /** The same placement with a trilling finger. */
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

  /** Whether it matches the finger and string printed at its note, if any. */
  public boolean matchesPrinted(Marks marks) {
    return marks.finger().map(finger.symbol()::equals).orElse(true)
        && marks.string().orElse(string) == string;
  }

  /** Whether the string is open, including the open end of an extension. */
  public boolean open() {
    return finger == Finger.OPEN;
  }

  /** Whether it is an ordinary stopped note, neither open nor a harmonic. */
  public boolean stopped() {
    return finger != Finger.OPEN && touch.isEmpty();
  }
}
