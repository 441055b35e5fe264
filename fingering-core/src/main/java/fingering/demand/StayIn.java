package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.Position;
import java.util.BitSet;

/**
 * Keeps the hand in one position for some measures, even during open strings.
 *
 * @param position the position
 * @param span the measures in which it applies
 */
public record StayIn(Position position, MeasureSpan span) implements GripDemand {
  @Override
  public BitSet moments(Passage passage) {
    return span.moments(passage);
  }

  @Override
  public boolean allows(Moment moment, Grip grip) {
    return grip.frame().position().equals(position)
        && grip.placements().stream()
            .allMatch(p -> p.open() || p.frame().position().equals(position));
  }

  @Override
  public String text() {
    return "keep the hand in " + position.display() + " position" + span.suffix();
  }
}
