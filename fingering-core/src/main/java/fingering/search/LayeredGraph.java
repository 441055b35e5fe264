package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Scoring;

/**
 * The layered graph of a passage: a layer for each moment, a node for each grip, an edge for each
 * pair of successive grips.
 *
 * @param moments the moments, in order
 * @param grips the grips of each moment
 * @param costs the costs of nodes and edges
 * @param penalty the penalties of grips, 0 or more; the search minimises their sum before the cost
 * @param excluded the grips that no path may use
 */
public record LayeredGraph(
    ImmutableList<Moment> moments,
    ImmutableList<ImmutableList<Grip>> grips,
    CostCache costs,
    Penalty penalty,
    NodeFilter excluded) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if there are no moments, or not as many lists of grips
   */
  public LayeredGraph {
    if (moments.size() != grips.size() || moments.isEmpty()) {
      throw new IllegalArgumentException(
          moments.size()
              + " moments and "
              + grips.size()
              + " lists of grips; there must be as many of both, and at least one");
    }
  }

  /** A graph without excluded grips. */
  public LayeredGraph(
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> grips,
      Scoring scoring,
      Penalty penalty) {
    this(moments, grips, new CostCache(scoring), penalty, NodeFilter.NONE);
  }

  /** The rules with their weights. */
  public Scoring scoring() {
    return costs.scoring();
  }

  /** A copy with more grips excluded. */
  public LayeredGraph excluding(NodeFilter more) {
    NodeFilter both = (moment, grip) -> excluded.at(moment, grip) || more.at(moment, grip);
    return new LayeredGraph(moments, grips, costs, penalty, both);
  }
}
