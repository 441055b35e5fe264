package fingering.engraving.ink;

import fingering.engraving.glyph.Box;

/**
 * A drawn thing, with the box around it.
 *
 * @param kind what it is
 * @param box in staff spaces from the left end of the system and the top line of the staff
 * @param time the time that it belongs to, in quarter notes from the start of the part; NaN for
 *     what belongs to no time, such as a staff line
 */
public record Ink(Kind kind, Box box, double time) {}
