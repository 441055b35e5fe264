package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;

/** Draws a part with the marks of plans. Implementations can be exchanged. */
public interface Engraver {
  /**
   * Draws a part as pieces that are set in rows.
   *
   * @param passage the planned music
   * @param part what is printed in the part
   * @param lanes the marks of each plan: the first above the staff, the others below
   */
  Strip engrave(Passage passage, PrintedPart part, ImmutableList<Lane> lanes);
}
