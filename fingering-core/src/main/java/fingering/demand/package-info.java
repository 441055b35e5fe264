/**
 * Demands: what a plan must show, keep or avoid. A demand constrains each grip by itself or a whole
 * path, and describes itself in words. {@link fingering.demand.OwnLimit} and {@link
 * fingering.demand.OwnSkill} are demands of your own.
 *
 * <p>The package depends on {@link fingering.search} and the packages below that. Briefs, which
 * combine demands, are in {@code fingering.plan}. No method accepts or returns null unless it says
 * so. All values are immutable.
 */
@NullMarked
package fingering.demand;

import org.jspecify.annotations.NullMarked;
