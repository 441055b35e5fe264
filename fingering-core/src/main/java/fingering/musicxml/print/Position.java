package fingering.musicxml.print;

import fingering.music.Measure;
import fingering.music.Place;
import fingering.musicxml.element.Quarters;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A position while a part is read.
 *
 * @param measure index of the measure, from 0
 * @param onset quarter notes from its start
 */
record Position(int measure, BigFraction onset) {

  // An offset may point beyond the measure.
  private BigFraction within(Measure read) {
    return Quarters.compare(onset, read.length()) > 0 ? read.length() : onset;
  }

  /** The place in the music. */
  Place place(List<Measure> measures) {
    Measure read = measures.get(measure);
    return read.place(within(read));
  }

  /** Quarter notes from the start of the part. */
  BigFraction start(List<Measure> measures) {
    Measure read = measures.get(measure);
    return read.start().add(within(read));
  }
}
