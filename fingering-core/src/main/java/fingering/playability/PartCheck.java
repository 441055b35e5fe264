package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.Movements;
import fingering.musicxml.reading.PartInfo;
import fingering.tables.Instrument;

/**
 * The result of the check of a part.
 *
 * @param part the part
 * @param instrument the instrument it was checked for
 * @param forces who plays from it
 * @param measures the number of its measures
 * @param movements its movements, by its measure numbers
 * @param notes the number of its notes; tied notes count once
 * @param findings the findings, in the order of the part
 * @param difficulty its difficulty
 * @param remarks assumptions made while reading it, a sentence each
 */
public record PartCheck(
    PartInfo part,
    Instrument instrument,
    Forces forces,
    int measures,
    Movements movements,
    int notes,
    ImmutableList<Finding> findings,
    Difficulty difficulty,
    ImmutableList<String> remarks) {

  /** Returns the number of findings of a severity. */
  public int count(Severity severity) {
    int count = 0;
    for (Finding finding : findings) {
      count += finding.severity() == severity ? 1 : 0;
    }
    return count;
  }
}
