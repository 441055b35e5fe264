package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.Position;
import java.util.BitSet;

/**
 * Keep the hand in one position through some measures, under open strings too.
 *
 * @param position the position
 * @param span where
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
