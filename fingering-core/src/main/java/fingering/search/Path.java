package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * A path through a layered graph: one grip for each moment.
 *
 * @param grips the grips, in order
 * @param cost the sum of all node and edge costs, in points
 * @param penalty the sum of the penalties of all grips
 */
public record Path(ImmutableList<Grip> grips, long cost, long penalty) {}
