package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.reading.PartSigns.Kind;
import fingering.tables.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Decides by its neighbours what a part with a shared name is. A Bass beside strings is a double
 * bass, beside a tenor a singer, beside drums or a guitar a bass guitar, beside a tuba another tuba
 * (common practice, no source).
 */
final class PartNeighbours {

  /**
   * The decision.
   *
   * @param string whether the part is for a bowed string
   * @param reason why, a few words
   */
  record Decision(boolean string, String reason) {}

  private final ImmutableList<PartSigns> parts;

  PartNeighbours(ImmutableList<PartSigns> parts) {
    this.parts = parts;
  }

  /**
   * Decides about a part. The nearest part that is sure counts, the one above before the one below:
   * scores print families together, from high to low. A keyboard counts only if no other part is
   * sure.
   *
   * @param index its index in the score
   * @param instrument the bowed string with that name
   */
  Decision decide(int index, Instrument instrument) {
    Optional<PartSigns> rival =
        parts.stream()
            .filter(part -> part.kind() == Kind.STRING)
            .filter(
                part -> part.instrument().map(Instrument::id).equals(Optional.of(instrument.id())))
            .findFirst();
    if (rival.isPresent()) {
      return new Decision(false, "beside the part '%s'".formatted(rival.get().name()));
    }
    List<PartSigns> nearest = new ArrayList<>();
    for (int distance = 1; distance < parts.size(); distance++) {
      for (int near : new int[] {index - distance, index + distance}) {
        if (near >= 0 && near < parts.size()) {
          nearest.add(parts.get(near));
        }
      }
    }
    Optional<PartSigns> sure =
        nearest.stream()
            .filter(part -> part.kind() == Kind.STRING || part.kind() == Kind.OTHER)
            .findFirst()
            .or(() -> nearest.stream().filter(part -> part.kind() == Kind.KEYBOARD).findFirst());
    if (sure.isPresent() && sure.get().kind() != Kind.STRING) {
      return new Decision(false, "beside '%s'".formatted(sure.get().name()));
    }
    if (sure.isPresent()) {
      return new Decision(true, neighbours(nearest));
    }
    return parts.get(index).kind() == Kind.INITIAL
        ? new Decision(false, "no instrument named")
        : new Decision(true, "no other part shows another instrument");
  }

  private static String neighbours(List<PartSigns> nearest) {
    List<String> names =
        nearest.stream()
            .filter(part -> part.kind() == Kind.STRING)
            .map(part -> "'" + part.name() + "'")
            .distinct()
            .limit(2)
            .collect(Collectors.toList());
    return names.size() == 1
        ? "its neighbour is " + names.get(0)
        : "its neighbours are " + String.join(" and ", names);
  }
}
