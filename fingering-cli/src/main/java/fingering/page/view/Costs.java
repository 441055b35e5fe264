package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The costs of plans.
 *
 * @param plans the names of the plans
 * @param hardest the hardest measures, the hardest first
 * @param rules the points by rule, the most expensive first
 * @param totals the points of each plan
 */
public record Costs(
    ImmutableList<String> plans,
    ImmutableList<Hard> hardest,
    ImmutableList<Rule> rules,
    ImmutableList<String> totals) {

  /**
   * A hard measure.
   *
   * @param measure the measure
   * @param points the points of each plan, and the rule that costs most
   */
  public record Hard(PlaceLink measure, ImmutableList<String> points) {}

  /**
   * A rule.
   *
   * @param name its name
   * @param explanation what it costs
   * @param bars the points of each plan
   */
  public record Rule(String name, String explanation, ImmutableList<Bar> bars) {}

  /**
   * Points as a number and a bar.
   *
   * @param style the style of the bar
   * @param points the points, as text
   * @param width the width of the bar in percent; 0 for none
   */
  public record Bar(String style, String points, long width) {}
}
