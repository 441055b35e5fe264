package fingering.page.staff;

/**
 * The place of a note that has been drawn.
 *
 * @param piece index of its piece
 * @param x the middle of its notehead
 * @param y the middle of its notehead, with the top line of the staff at 0
 * @param top the upper end of notehead and stem
 * @param bottom the lower end of notehead and stem
 * @param up whether the stem goes up
 */
record DrawnNote(int piece, double x, double y, double top, double bottom, boolean up) {}
