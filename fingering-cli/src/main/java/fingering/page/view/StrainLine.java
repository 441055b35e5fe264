package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The measures in which a plan strains the hand in one way.
 *
 * @param text what the plan does in them
 * @param measures the first of them
 * @param more the number of the others
 */
public record StrainLine(String text, ImmutableList<PlaceLink> measures, int more) {}
