package fingering.fingerboard;

/**
 * The light touch of a harmonic.
 *
 * @param finger the touching finger; for a natural harmonic, that of the placement
 * @param millimetres distance of the node from the nut, in millimetres
 * @param partial number of the sounding partial of the open or stopped string, at least 2
 */
public record HarmonicTouch(Finger finger, double millimetres, int partial) {}
