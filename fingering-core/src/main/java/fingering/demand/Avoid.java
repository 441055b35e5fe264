package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import java.util.BitSet;

/**
 * Keeps a technique out of a plan, because the player does not want to use it or has not learned
 * it.
 *
 * @param technique what to avoid
 * @param span the measures in which it applies
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

  /** True for open strings: the lowest note of an instrument cannot be played anywhere else. */
  @Override
  public boolean soft() {
    return technique == Technique.OPEN_STRINGS;
  }

  @Override
  public String text() {
    return "avoid " + technique.text() + (soft() ? " where possible" : "") + span.suffix();
  }
}
