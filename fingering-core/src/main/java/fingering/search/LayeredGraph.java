package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Scoring;

/**
 * The layered graph of a passage: a layer a moment, a node a grip, an edge the way from one grip to
 * the next.
 *
 * @param moments the moments, in order
 * @param grips the grips of each moment
 * @param costs the cost of nodes and edges
 * @param penalty what a grip offends against the brief where nothing better can be had, 0 or more;
 *     the search makes the sum of it least before it looks at costs
 * @param closed the grips that no path takes
 */
public record LayeredGraph(
    ImmutableList<Moment> moments,
    ImmutableList<ImmutableList<Grip>> grips,
    CostCache costs,
    Penalty penalty,
    NodeFilter closed) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if there are no moments, or not as many layers of grips
   */
  public LayeredGraph {
    if (moments.size() != grips.size() || moments.isEmpty()) {
      throw new IllegalArgumentException(
          moments.size() + " moments and grips for " + grips.size() + "; there must be as many");
    }
  }

  /** Layers in which every grip can be taken. */
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

  /** The same layers with further grips closed. */
  public LayeredGraph closing(NodeFilter more) {
    NodeFilter both = (moment, grip) -> closed.at(moment, grip) || more.at(moment, grip);
    return new LayeredGraph(moments, grips, costs, penalty, both);
  }
}
