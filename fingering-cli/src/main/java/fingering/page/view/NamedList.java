package fingering.page.view;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;

/**
 * Lines under a heading.
 *
 * @param heading the heading
 * @param lines the lines, not empty
 */
public record NamedList(String heading, ImmutableList<String> lines) {

  /** A list for each key, with the key as its heading. */
  public static ImmutableList<NamedList> of(ImmutableListMultimap<String, String> lines) {
    return Multimaps.asMap(lines).entrySet().stream()
        .map(entry -> new NamedList(entry.getKey(), ImmutableList.copyOf(entry.getValue())))
        .collect(ImmutableList.toImmutableList());
  }
}
