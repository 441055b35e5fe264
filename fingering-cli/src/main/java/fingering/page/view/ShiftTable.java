package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The shifts of a plan, and what to write in the part for each.
 *
 * @param plan the name of the plan; empty if it is the only one
 * @param rows the shifts in score order; may be empty
 */
public record ShiftTable(String plan, ImmutableList<Row> rows) {

  /**
   * A shift.
   *
   * @param place where the hand arrives
   * @param note the first note there
   * @param write what to write in the part
   * @param move when the hand has time to move
   * @param tune which note to tune by
   */
  public record Row(PlaceLink place, String note, String write, String move, String tune) {}
}
