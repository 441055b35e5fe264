package fingering.page.live;

import com.google.common.collect.ImmutableList;

/**
 * The demands on the chosen plan.
 *
 * @param address the address of the lesson on the server
 * @param demands the demands
 * @param folded the number of fixed notes that are not among them, because there are many
 * @param priced whether their prices are known; if not, the page asks for them
 */
public record DemandsView(String address, ImmutableList<Chip> demands, int folded, boolean priced) {

  /**
   * A demand.
   *
   * @param key its key in a lesson
   * @param value its value in a lesson
   * @param text the demand in words
   * @param price what it costs, in words; empty before that is known
   * @param measure the index of the first measure that it concerns; -1 for the whole passage
   */
  public record Chip(String key, String value, String text, String price, int measure) {}
}
