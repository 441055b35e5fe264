package fingering.demand;

import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.stream.Collectors;

/**
 * Restricts a plan to some positions.
 *
 * @param positions the positions allowed, at least one
 * @param span the measures in which it applies
 */
public record AllowPositions(ImmutableSet<Position> positions, MeasureSpan span)
    implements GripDemand {
  /**
   * Checks the components.
   *
   * @throws FingeringException if there is no position
   */
  public AllowPositions {
    if (positions.isEmpty()) {
      throw new FingeringException("no position is allowed; allow at least one");
    }
  }

  @Override
  public BitSet moments(Passage passage) {
    return span.moments(passage);
  }

  /** Whether the hand and every stopped note are in the positions. */
  @Override
  public boolean allows(Moment moment, Grip grip) {
    if (!positions.contains(grip.frame().position())) {
      return false;
    }
    for (Placement placement : grip.placements()) {
      if (!placement.open() && !positions.contains(placement.frame().position())) {
        return false;
      }
    }
    return true;
  }

  @Override
  public String text() {
    return "stay in "
        + positions.stream().sorted().map(Position::display).collect(Collectors.joining(", "))
        + " position"
        + span.suffix();
  }
}
