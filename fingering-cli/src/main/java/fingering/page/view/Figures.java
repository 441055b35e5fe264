package fingering.page.view;

import com.google.common.collect.ImmutableList;

/**
 * The figures of plans, side by side: shifts, string crossings, fourth fingers and the like.
 *
 * @param plans the names of the plans; empty if there is only one
 * @param rows a row for each thing counted
 */
public record Figures(ImmutableList<String> plans, ImmutableList<Row> rows) {

  /**
   * A thing counted.
   *
   * @param item its name
   * @param amounts the amount in each plan
   */
  public record Row(String item, ImmutableList<String> amounts) {}
}
