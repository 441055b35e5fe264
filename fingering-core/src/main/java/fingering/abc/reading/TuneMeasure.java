package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.TuneFault;
import java.util.Optional;

/**
 * A measure of a tune.
 *
 * @param number its number
 * @param implicit whether the number is not printed: for a pickup, and for the second part of a
 *     divided measure
 * @param place where its first note or rest was typed, and what is wrong with its length; empty for
 *     nothing
 * @param items its content
 * @param begins whether a repeat begins with it
 * @param ending the numbers of the ending that begins with it
 * @param bar the bar line after it, if there is one
 * @param endsEnding the numbers of the ending that ends with it
 */
public record TuneMeasure(
    String number,
    boolean implicit,
    TuneFault place,
    ImmutableList<MeasureItem> items,
    boolean begins,
    Optional<String> ending,
    Optional<BarLine> bar,
    Optional<String> endsEnding) {

  /** Whether it is as long as its meter requires, as far as this is known. */
  public boolean fits() {
    return place.what().isEmpty();
  }
}
