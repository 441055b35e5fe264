package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.PrintedPart;

/** Draws a part with the marks of plans; anything that can do so may take this one's place. */
public interface Engraver {
  /**
   * The part as pieces that stand one after another in rows.
   *
   * @param passage the music that was planned
   * @param part what is printed of it
   * @param lanes the marks of each plan; the first stand over the staff, the others under it
   */
  Strip engrave(Passage passage, PrintedPart part, ImmutableList<Lane> lanes);
}
