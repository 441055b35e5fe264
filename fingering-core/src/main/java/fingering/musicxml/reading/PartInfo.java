package fingering.musicxml.reading;

import fingering.tables.Instrument;
import java.util.Optional;

/**
 * A part of a score.
 *
 * @param number number in the score, from 1
 * @param id the part's id in the file, such as P1; empty where it has none
 * @param name the name as printed; where there is none, that of its instrument or its number
 * @param instrument the instrument it shows, empty where it shows none that the tables know
 * @param guessed whether only the first clef speaks for the instrument
 * @param doubt what is to be said of the instrument where no other is asked for, a sentence without
 *     its full stop; empty where the part names one and no other
 */
public record PartInfo(
    int number,
    String id,
    String name,
    Optional<Instrument> instrument,
    boolean guessed,
    Optional<String> doubt) {

  /** A part of whose instrument nothing is to be said. */
  public PartInfo(
      int number, String id, String name, Optional<Instrument> instrument, boolean guessed) {
    this(number, id, name, instrument, guessed, Optional.empty());
  }

  /** As in a list to choose from: {@code 2 Violin 2}. */
  @Override
  public String toString() {
    return number + " " + name;
  }
}
