package fingering.check;

import com.google.common.collect.ImmutableList;
import fingering.music.Movements;
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
 * @param movements the movements of the part
 */
public record FindingGroup(
    Severity severity, FindingKind kind, ImmutableList<Finding> findings, Movements movements) {

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
   * @param first the first of them
   */
  public record Sentence(String where, String reason, Optional<String> suggestion, Finding first) {}

  /**
   * The findings of a part in groups: the most severe first, otherwise in the order of the part.
   */
  public static ImmutableList<FindingGroup> of(List<Finding> findings, Movements movements) {
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
                    ImmutableList.copyOf(group.getValue()),
                    movements))
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
                    where(one.getValue()),
                    one.getKey().reason(),
                    one.getKey().suggestion(),
                    one.getValue().get(0)))
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

  /**
   * The places of findings: the beat of a single one, the measures of several. Measures of a later
   * movement are named with it, because their numbers occur in the first too.
   */
  public String where(List<Finding> places) {
    if (places.size() == 1) {
      Finding only = places.get(0);
      return only.where() + movements.phrase(only.place().measureIndex());
    }
    StringBuilder text = new StringBuilder();
    String last = "";
    String movement = "";
    int count = 0;
    for (Finding finding : places) {
      String phrase = movements.phrase(finding.place().measureIndex());
      String measures = finding.measures();
      if ((measures + phrase).equals(last)) {
        continue;
      }
      count++;
      if (count <= NAMED) {
        boolean same = phrase.equals(movement) && count > 1;
        text.append(same ? ", " : (count > 1 ? movement + "; m. " : "m. ")).append(measures);
        movement = phrase;
      }
      last = measures + phrase;
    }
    text.append(movement);
    return count <= NAMED
        ? text.toString()
        : text.append(" and ").append(count - NAMED).append(" more").toString();
  }
}
