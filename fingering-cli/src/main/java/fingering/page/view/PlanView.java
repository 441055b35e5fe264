package fingering.page.view;

import com.google.common.collect.ImmutableList;
import gg.jte.Content;

/**
 * What the page of plans shows, in its order.
 *
 * @param key the letter, place and name of each plan; empty if there is only one
 * @param signs what the signs in the music mean
 * @param music the music with the marks of the plans
 * @param differences where the plans differ
 * @param demands the price of each demand, by plan
 * @param figures the plans in figures
 * @param remarks remarks on the plans
 * @param notes further remarks by heading
 * @param strains where the plans strain the hand
 * @param care the warning about strain
 * @param circles what to circle in the part
 * @param shifts the shifts of each plan
 * @param hand the hand over time, where it moves; empty if it never does
 * @param hatched whether the hand over time has hatching
 * @param boards the fingerboard of each plan
 * @param limits the measures that limit the tempo, a line for each plan; may be empty
 * @param costs the costs
 */
public record PlanView(
    ImmutableList<String> key,
    String signs,
    Content music,
    Differences differences,
    ImmutableList<NamedList> demands,
    Figures figures,
    ImmutableList<String> remarks,
    ImmutableList<NamedList> notes,
    ImmutableList<StrainLine> strains,
    String care,
    ImmutableList<CircleGroup> circles,
    ImmutableList<ShiftTable> shifts,
    ImmutableList<Content> hand,
    boolean hatched,
    ImmutableList<Content> boards,
    ImmutableList<String> limits,
    Costs costs) {

  /** Whether there is only one plan. */
  public boolean alone() {
    return key.isEmpty();
  }

  /** The number of things to circle. */
  public int circled() {
    return circles.stream().mapToInt(group -> group.lines().size()).sum();
  }

  /** The number of shifts of all plans. */
  public int shifted() {
    return shifts.stream().mapToInt(table -> table.rows().size()).sum();
  }
}
