package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.reading.PartInfo;
import java.util.Comparator;
import java.util.Optional;

/**
 * What was found in a score.
 *
 * @param title the score's title, empty where it has none
 * @param level the level it was checked for
 * @param parts its string parts, in score order; empty where it has none
 * @param leftOut the parts that were not checked
 * @param remarks what was assumed for the score as a whole, a sentence each
 */
public record ScoreCheck(
    String title,
    CheckLevel level,
    ImmutableList<PartCheck> parts,
    ImmutableList<PartInfo> leftOut,
    ImmutableList<String> remarks) {

  /** All findings, part by part. */
  public ImmutableList<Finding> findings() {
    return parts.stream()
        .flatMap(part -> part.findings().stream())
        .collect(ImmutableList.toImmutableList());
  }

  /** Findings of a severity in all parts. */
  public int count(Severity severity) {
    return parts.stream().mapToInt(part -> part.count(severity)).sum();
  }

  /** The severity of the gravest finding; empty where there is none. */
  public Optional<Severity> gravest() {
    return parts.stream()
        .flatMap(part -> part.findings().stream())
        .map(Finding::severity)
        .min(Comparator.naturalOrder());
  }

  /** The hardest part; empty where there is none. */
  public Optional<PartCheck> hardest() {
    return parts.stream().max(Comparator.comparingDouble(part -> part.difficulty().exact()));
  }
}
