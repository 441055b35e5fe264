package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.reading.PartInfo;
import fingering.tables.Instrument;

/**
 * What was found in a part.
 *
 * @param part the part
 * @param instrument the instrument it was checked for
 * @param forces how many play from it
 * @param measures measures in it
 * @param notes sounding notes in it, tied ones once
 * @param findings the findings, in the order of the part
 * @param difficulty how hard it is
 * @param remarks what was assumed in reading it, a sentence each
 */
public record PartCheck(
    PartInfo part,
    Instrument instrument,
    Forces forces,
    int measures,
    int notes,
    ImmutableList<Finding> findings,
    Difficulty difficulty,
    ImmutableList<String> remarks) {

  /** Findings of a severity. */
  public int count(Severity severity) {
    int count = 0;
    for (Finding finding : findings) {
      count += finding.severity() == severity ? 1 : 0;
    }
    return count;
  }
}
