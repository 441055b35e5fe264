package fingering.abc.reading;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.BarLine;
import java.util.Optional;

/**
 * A measure of a tune.
 *
 * @param number its number in print
 * @param implicit whether it is a pickup, or goes on with the measure before, so that its number is
 *     not printed
 * @param items what stands in it
 * @param begins whether a repeat begins with it
 * @param ending the numbers of the ending that begins with it
 * @param bar the bar line behind it, if there is one
 * @param endsEnding the numbers of the ending that ends with it
 */
public record TuneMeasure(
    String number,
    boolean implicit,
    ImmutableList<MeasureItem> items,
    boolean begins,
    Optional<String> ending,
    Optional<BarLine> bar,
    Optional<String> endsEnding) {}
