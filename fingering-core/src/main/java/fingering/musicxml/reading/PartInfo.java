package fingering.musicxml.reading;

import fingering.tables.Instrument;
import java.util.Optional;

/**
 * A part of a score. Immutable.
 *
 * @param number number in the score, from 1
 * @param id the part's id in the file, such as P1; empty if it has none
 * @param name the printed name; without one, the name of its instrument, or "Part" and its number
 * @param instrument the instrument, empty if none is recognised
 * @param guessed whether only the first clef suggests the instrument
 * @param doubt a remark on the instrument if none is requested, without full stop; empty if the
 *     part names exactly one
 */
public record PartInfo(
    int number,
    String id,
    String name,
    Optional<Instrument> instrument,
    boolean guessed,
    Optional<String> doubt) {

  /** Creates a part without a remark on its instrument. */
  public PartInfo(
      int number, String id, String name, Optional<Instrument> instrument, boolean guessed) {
    this(number, id, name, instrument, guessed, Optional.empty());
  }

  /** Returns number and name, as in a list of choices: {@code 2 Violin 2}. */
  @Override
  public String toString() {
    return number + " " + name;
  }
}
