package fingering.abc;

import com.google.common.collect.ImmutableList;
import fingering.abc.syntax.TuneFault;

/**
 * Places in the text of a tune, for a program that shows the text beside the music.
 *
 * @param faults signs that could not be read as typed, and measures that do not fill their meter;
 *     by line and column
 * @param measures the measures of the first voice with notes, as many as in the score
 * @param remarks assumptions and omissions without a place, one sentence each, without full stop
 */
public record TuneText(
    ImmutableList<TuneFault> faults,
    ImmutableList<TypedMeasure> measures,
    ImmutableList<String> remarks) {

  /**
   * A measure as typed.
   *
   * @param number its number
   * @param pickup whether it is the pickup before the first measure
   * @param line the line of its first note or rest, from 1
   * @param column the column of its first note or rest, from 1
   * @param fits whether it is as long as its meter requires, as far as this is known
   */
  public record TypedMeasure(String number, boolean pickup, int line, int column, boolean fits) {}
}
