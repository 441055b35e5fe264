package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import java.util.BitSet;

/**
 * Avoid something that a player does not want to use or has not learned.
 *
 * @param technique what to avoid
 * @param span where
 */
public record Avoid(Technique technique, MeasureSpan span) implements GripDemand {
  @Override
  public BitSet moments(Passage passage) {
    return span.moments(passage);
  }

  @Override
  public boolean allows(Moment moment, Grip grip) {
    return grip.placements().stream().noneMatch(technique::isIn);
  }

  /** True for open strings: the lowest note of an instrument has no other place. */
  @Override
  public boolean soft() {
    return technique == Technique.OPEN_STRINGS;
  }

  @Override
  public String text() {
    return "avoid " + technique.text() + (soft() ? " where possible" : "") + span.suffix();
  }
}
