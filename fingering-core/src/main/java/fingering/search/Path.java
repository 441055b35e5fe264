package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * A grip for every moment.
 *
 * @param grips the grips, in order
 * @param cost the sum of all node and edge costs, in points
 * @param penalty the sum of what the grips offend against the brief
 */
public record Path(ImmutableList<Grip> grips, long cost, long penalty) {}
