package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import java.util.BitSet;

/**
 * Show something in one note at least: the fourth finger, an extension, a harmonic.
 *
 * @param what what to show
 */
public record ShowTechnique(Avoid.What what) implements Skill {
  @Override
  public Requirement in(Passage passage) {
    return BoundedCount.to(1, (m, before, now) -> has(now) ? 1 : 0);
  }

  private boolean has(Grip grip) {
    return grip.placements().stream().anyMatch(placement -> Avoid.has(placement, what));
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    BitSet moments = new BitSet();
    for (int m = 0; m < path.size(); m++) {
      moments.set(m, has(path.get(m)));
    }
    return moments;
  }

  @Override
  public int asked() {
    return 1;
  }

  @Override
  public int amountIn(Passage passage, ImmutableList<Grip> path) {
    return shownIn(passage, path).cardinality();
  }

  @Override
  public Skill asking(int amount) {
    if (amount != 1) {
      throw new FingeringException(
          what.words() + " cannot be asked for in " + amount + " notes; ask for one");
    }
    return this;
  }

  @Override
  public boolean addsUp() {
    return true;
  }

  @Override
  public String words() {
    return "show " + what.words() + " in one note at least";
  }
}
