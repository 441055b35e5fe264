package fingering.page.live;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;

/**
 * Demands that cannot all be met.
 *
 * @param address where the change is sent again
 * @param fields the fields of the change
 * @param sentence which demands, and for which notes
 * @param others the demands that could be dropped to make the change
 */
public record ConflictView(
    String address,
    ImmutableMap<String, String> fields,
    String sentence,
    ImmutableList<DemandsView.Chip> others) {}
