/**
 * The shapes of music notation, drawn for this program, and the thicknesses of engraved lines.
 *
 * <p>Lengths are in staff spaces: 1.0 is the distance of two lines of the staff. x grows to the
 * right, y downward. Depends on the tables of the library only. No method takes or returns null
 * unless it says so.
 */
package fingering.engraving.glyph;
