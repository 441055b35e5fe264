package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import java.util.BitSet;

/**
 * A skill of your own: the plan must show something at a number of moments, consecutive or not. The
 * search finds the cheapest plan that does, exactly.
 *
 * <pre>{@code
 * OwnSkill.of(
 *     "show the fourth finger on the lowest string",
 *     2,
 *     (moment, grip) ->
 *         grip.placements().stream().anyMatch(p -> p.string() == 4 && p.finger() == Finger.FOURTH));
 * }</pre>
 *
 * @param words what the plan must show, to follow 'the plan must', without the number: {@code show
 *     the fourth finger on the lowest string}
 * @param times the number of moments that must show it, 1 to {@value #MAX}
 * @param shown whether a grip shows it
 */
public record OwnSkill(String words, int times, GripTest shown) implements Skill {
  /** The most moments that can be required. */
  public static final int MAX = 100;

  /**
   * Checks the components.
   *
   * @throws FingeringException if there are no words, or the number is out of range
   */
  public OwnSkill {
    if (words.isBlank()) {
      throw new FingeringException("a skill needs words, such as 'show a harmonic'");
    }
    if (times < 1 || times > MAX) {
      throw new FingeringException(
          "'%s' cannot be required %d times; ask for 1 to %d".formatted(words, times, MAX));
    }
  }

  /**
   * A skill.
   *
   * @param words what the plan must show, to follow 'the plan must', without the number
   * @param times the number of moments that must show it, 1 to {@value #MAX}
   * @param shown whether a grip shows it
   * @throws FingeringException if there are no words, or the number is out of range
   */
  public static OwnSkill of(String words, int times, GripTest shown) {
    return new OwnSkill(words, times, shown);
  }

  @Override
  public Requirement requirement(Passage passage) {
    return BoundedCount.ofGrips(
        times, (m, before, now) -> shown.test(passage.moments().get(m), now) ? 1 : 0);
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    BitSet moments = new BitSet();
    for (int m = 0; m < path.size(); m++) {
      moments.set(m, shown.test(passage.moments().get(m), path.get(m)));
    }
    return moments;
  }

  @Override
  public int amount() {
    return times;
  }

  @Override
  public Skill withAmount(int amount) {
    return new OwnSkill(words, amount, shown);
  }

  @Override
  public String text() {
    return words + (times == 1 ? " at least once" : " at least " + times + " times");
  }
}
