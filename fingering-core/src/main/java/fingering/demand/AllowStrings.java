package fingering.demand;

import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import fingering.tables.RomanNumeral;
import java.util.BitSet;
import java.util.stream.Collectors;

/**
 * Restricts a plan to some strings. A single string corresponds to sul G or sul C in a part.
 *
 * @param strings numbers of the strings allowed, 1 for the highest; at least one
 * @param span the measures in which it applies
 */
public record AllowStrings(ImmutableSet<Integer> strings, MeasureSpan span) implements GripDemand {
  /**
   * Checks the components.
   *
   * @throws FingeringException if there is no string
   */
  public AllowStrings {
    if (strings.isEmpty()) {
      throw new FingeringException("no string is allowed; allow at least one");
    }
  }

  @Override
  public BitSet moments(Passage passage) {
    return span.moments(passage);
  }

  @Override
  public boolean allows(Moment moment, Grip grip) {
    return grip.placements().stream().allMatch(p -> strings.contains(p.string()));
  }

  @Override
  public String text() {
    return (strings.size() == 1 ? "play on string " : "play on strings ")
        + strings.stream().sorted().map(RomanNumeral::of).collect(Collectors.joining(", "))
        + span.suffix();
  }
}
