package fingering.check;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings of one kind and one severity in a part, as they are told together.
 *
 * @param severity how much each of them weighs
 * @param kind what they are
 * @param findings the findings, in the order of the part
 */
public record FindingGroup(Severity severity, FindingKind kind, ImmutableList<Finding> findings) {

  /** More measures than this are counted and not named. */
  private static final int NAMED = 20;

  private record Key(Severity severity, FindingKind kind) {}

  private record Said(String reason, Optional<String> wayOut) {}

  /**
   * Findings of which the same is said.
   *
   * @param where where they are: {@code m. 12, beat 2.5} or {@code m. 12, 14, 16}
   * @param reason what is wrong, one sentence
   * @param wayOut what could be written instead
   */
  public record Told(String where, String reason, Optional<String> wayOut) {}

  /**
   * The findings of a part in groups, the gravest first, of those that weigh alike as they come.
   */
  public static ImmutableList<FindingGroup> of(List<Finding> findings) {
    Map<Key, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups
          .computeIfAbsent(new Key(finding.severity(), finding.kind()), key -> new ArrayList<>())
          .add(finding);
    }
    return groups.entrySet().stream()
        .sorted(Comparator.comparing(group -> group.getKey().severity()))
        .map(
            group ->
                new FindingGroup(
                    group.getKey().severity(),
                    group.getKey().kind(),
                    ImmutableList.copyOf(group.getValue())))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * What is said of them, each sentence once.
   *
   * @param most sentences to be said; one more is said rather than left out alone
   */
  public ImmutableList<Told> told(int most) {
    Map<Said, List<Finding>> said = said();
    return said.entrySet().stream()
        .limit(said.size() == most + 1 ? most + 1 : most)
        .map(one -> new Told(where(one.getValue()), one.getKey().reason(), one.getKey().wayOut()))
        .collect(ImmutableList.toImmutableList());
  }

  /** The findings of which {@link #told told} says nothing, in the order of the part. */
  public ImmutableList<Finding> untold(int most) {
    Map<Said, List<Finding>> said = said();
    return said.values().stream()
        .skip(said.size() == most + 1 ? most + 1 : most)
        .flatMap(List::stream)
        .sorted(Finding.BY_PLACE)
        .collect(ImmutableList.toImmutableList());
  }

  private Map<Said, List<Finding>> said() {
    Map<Said, List<Finding>> said = new LinkedHashMap<>();
    for (Finding finding : findings) {
      said.computeIfAbsent(new Said(finding.reason(), finding.wayOut()), key -> new ArrayList<>())
          .add(finding);
    }
    return said;
  }

  /** Where findings are: the beat of one alone, the measures of several. */
  public static String where(List<Finding> findings) {
    if (findings.size() == 1) {
      return findings.get(0).where();
    }
    StringBuilder named = new StringBuilder("m. ");
    String last = "";
    int count = 0;
    int number = 0;
    for (Finding finding : findings) {
      String measures = measures(finding);
      if (measures.equals(last)) {
        continue;
      }
      count++;
      if (count <= NAMED) {
        int next = number(finding.place().measure());
        named.append(count == 1 ? "" : next < number ? "; later m. " : ", ").append(measures);
        number = next;
      }
      last = measures;
    }
    return count <= NAMED
        ? named.toString()
        : named.append(" and ").append(count - NAMED).append(" more").toString();
  }

  /** The number by which a measure is counted, 0 for others; where it falls a movement begins. */
  private static int number(String measure) {
    return Optional.ofNullable(Ints.tryParse(measure)).orElse(0);
  }

  private static String measures(Finding finding) {
    String from = finding.place().measure();
    return finding.place().measureIndex() == finding.to().measureIndex()
        ? from
        : from + "–" + finding.to().measure();
  }
}
