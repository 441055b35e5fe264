package fingering.fingerboard;

/**
 * One playable way to sound one note.
 *
 * @param string number of the string, 1 being the highest
 * @param finger what stops it
 * @param semitones semitones of the stopped place above the open string, 0 when open
 * @param frame the hand frame in which it is played; an open string keeps the frame the hand is in
 * @param millimetres distance of the stopped place from the nut
 * @param stretch millimetres by which the finger reaches beyond where the frame lets it fall
 * @param respelled whether the finger takes the note under a neighbouring letter's name (A♭ by the
 *     finger that has G♯)
 */
public record Placement(
    int string,
    Finger finger,
    int semitones,
    Frame frame,
    double millimetres,
    double stretch,
    boolean respelled) {

  /** Whether the string sounds open. */
  public boolean open() {
    return finger == Finger.OPEN;
  }
}
