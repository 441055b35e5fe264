package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.xml.XmlText;
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
 * @param reason why the part is not taken for a string part, a few words such as "with lyrics";
 *     empty if it is
 */
public record PartInfo(
    int number,
    String id,
    String name,
    Optional<Instrument> instrument,
    boolean guessed,
    Optional<String> doubt,
    String reason) {

  /** Creates a part without a remark on its instrument. */
  public PartInfo(
      int number, String id, String name, Optional<Instrument> instrument, boolean guessed) {
    this(number, id, name, instrument, guessed, Optional.empty(), "");
  }

  /** Returns whether the part is known to be for a bowed string instrument. */
  public boolean isString() {
    return instrument.isPresent() && !guessed;
  }

  /**
   * Returns the parts that are not for strings, as in a list of choices, with the reasons: {@code 1
   * Tenor (with lyrics)}.
   */
  public static String withReasons(ImmutableList<PartInfo> parts) {
    return XmlText.listed(
        parts.stream()
            .map(part -> part + (part.reason.isEmpty() ? "" : " (" + part.reason + ")"))
            .collect(ImmutableList.toImmutableList()));
  }

  /** Returns number and name, as in a list of choices: {@code 2 Violin 2}. */
  @Override
  public String toString() {
    return number + " " + name;
  }
}
