package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.reading.PartInfo;
import java.util.Comparator;
import java.util.Optional;

/**
 * The result of the check of a score.
 *
 * @param title the title of the score; empty if it has none
 * @param level the level it was checked for
 * @param parts the checked parts, in score order; empty if none was recognised as a string part
 * @param leftOut the parts that were not checked
 * @param remarks assumptions made for the score as a whole, a sentence each
 */
public record ScoreCheck(
    String title,
    CheckLevel level,
    ImmutableList<PartCheck> parts,
    ImmutableList<PartInfo> leftOut,
    ImmutableList<String> remarks) {

  /** Returns all findings, part by part. */
  public ImmutableList<Finding> findings() {
    return parts.stream()
        .flatMap(part -> part.findings().stream())
        .collect(ImmutableList.toImmutableList());
  }

  /** Returns the number of findings of a severity in all parts. */
  public int count(Severity severity) {
    return parts.stream().mapToInt(part -> part.count(severity)).sum();
  }

  /** Returns the highest severity of all findings; empty if there are none. */
  public Optional<Severity> mostSevere() {
    return parts.stream()
        .flatMap(part -> part.findings().stream())
        .map(Finding::severity)
        .min(Comparator.naturalOrder());
  }

  /** Returns the most difficult part; empty if no part was checked. */
  public Optional<PartCheck> hardest() {
    return parts.stream().max(Comparator.comparingDouble(part -> part.difficulty().exact()));
  }
}
