package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import java.util.BitSet;

/**
 * Requires a technique on at least one note: the fourth finger, an extension, a harmonic.
 *
 * @param technique what to show
 */
public record ShowTechnique(Technique technique) implements Skill {
  @Override
  public Requirement requirement(Passage passage) {
    return BoundedCount.ofGrips(1, (m, before, now) -> shownBy(now) ? 1 : 0);
  }

  private boolean shownBy(Grip grip) {
    return grip.placements().stream().anyMatch(technique::isIn);
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    BitSet moments = new BitSet();
    for (int m = 0; m < path.size(); m++) {
      moments.set(m, shownBy(path.get(m)));
    }
    return moments;
  }

  @Override
  public int amount() {
    return 1;
  }

  @Override
  public Skill withAmount(int amount) {
    if (amount != 1) {
      throw new FingeringException(
          technique.text() + " can be required on 1 note only, not on " + amount);
    }
    return this;
  }

  @Override
  public String text() {
    return "show " + technique.text() + " on at least one note";
  }
}
