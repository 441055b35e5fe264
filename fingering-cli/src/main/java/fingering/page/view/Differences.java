package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The measures in which plans differ, with the fingers of each plan.
 *
 * @param plans the names of the plans
 * @param first the measures that decide; empty if the plans do not differ
 * @param more the others
 */
public record Differences(
    ImmutableList<String> plans, ImmutableList<Row> first, ImmutableList<Row> more) {

  /**
   * A measure.
   *
   * @param measure the measure
   * @param fingers the fingers of each plan
   */
  public record Row(PlaceLink measure, ImmutableList<String> fingers) {}
}
