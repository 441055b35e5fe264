package fingering.page.staff;

/**
 * Where a note was drawn.
 *
 * @param piece index of its piece
 * @param x the middle of its head
 * @param y the middle of its head, with the top line of the staff at 0
 * @param top the upper end of head and stem
 * @param bottom the lower end of head and stem
 * @param up whether the stem goes up
 */
record DrawnNote(int piece, double x, double y, double top, double bottom, boolean up) {}
