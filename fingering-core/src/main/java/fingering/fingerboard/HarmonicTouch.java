package fingering.fingerboard;

/**
 * The light touch of a harmonic.
 *
 * @param finger the finger that touches; for a natural harmonic the placement's own
 * @param millimetres distance of the node from the nut
 * @param partial which partial of the string, open or stopped, sounds: from 2
 */
public record HarmonicTouch(Finger finger, double millimetres, int partial) {}
