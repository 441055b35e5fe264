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
 * Findings of one kind and one severity in a part.
 *
 * @param severity their severity
 * @param kind their kind
 * @param findings the findings, in the order of the part
 */
public record FindingGroup(Severity severity, FindingKind kind, ImmutableList<Finding> findings) {

  /** Measures beyond this number are only counted. */
  private static final int NAMED = 20;

  private record Key(Severity severity, FindingKind kind) {}

  private record Message(String reason, Optional<String> suggestion) {}

  /**
   * Findings that share one message.
   *
   * @param where where they are: {@code m. 12, beat 2.5} or {@code m. 12, 14, 16}
   * @param reason what is wrong, one sentence
   * @param suggestion what could be written instead
   */
  public record Sentence(String where, String reason, Optional<String> suggestion) {}

  /**
   * The findings of a part in groups: the most severe first, otherwise in the order of the part.
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
   * The messages of the group, each once.
   *
   * @param most the number of sentences; a single sentence beyond that is included too
   */
  public ImmutableList<Sentence> sentences(int most) {
    Map<Message, List<Finding>> messages = byMessage();
    return messages.entrySet().stream()
        .limit(messages.size() == most + 1 ? most + 1 : most)
        .map(
            one ->
                new Sentence(
                    where(one.getValue()), one.getKey().reason(), one.getKey().suggestion()))
        .collect(ImmutableList.toImmutableList());
  }

  /** The findings that {@link #sentences sentences} leaves out, in the order of the part. */
  public ImmutableList<Finding> unlisted(int most) {
    Map<Message, List<Finding>> messages = byMessage();
    return messages.values().stream()
        .skip(messages.size() == most + 1 ? most + 1 : most)
        .flatMap(List::stream)
        .sorted(Finding.BY_PLACE)
        .collect(ImmutableList.toImmutableList());
  }

  private Map<Message, List<Finding>> byMessage() {
    Map<Message, List<Finding>> messages = new LinkedHashMap<>();
    for (Finding finding : findings) {
      messages
          .computeIfAbsent(
              new Message(finding.reason(), finding.suggestion()), key -> new ArrayList<>())
          .add(finding);
    }
    return messages;
  }

  /** The places of findings: the beat of a single one, the measures of several. */
  public static String where(List<Finding> findings) {
    if (findings.size() == 1) {
      return findings.get(0).where();
    }
    StringBuilder text = new StringBuilder("m. ");
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
        text.append(count == 1 ? "" : next < number ? "; later m. " : ", ").append(measures);
        number = next;
      }
      last = measures;
    }
    return count <= NAMED
        ? text.toString()
        : text.append(" and ").append(count - NAMED).append(" more").toString();
  }

  /** The number of a measure, or 0 if it has none; a lower one begins a new movement. */
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
