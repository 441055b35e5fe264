package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.player.ShiftKind;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Requires a number of shifts.
 *
 * @param direction the direction along the string; empty for either
 * @param kind the kind of shift; empty for any
 * @param times the number of shifts, 1 to {@value #MAX}
 */
public record ShowShift(Optional<Direction> direction, Optional<ShiftKind> kind, int times)
    implements Skill {
  /** The most shifts that can be required. */
  public static final int MAX = 50;

  /** The direction of a shift. */
  public enum Direction {
    /** Towards the bridge. */
    UP("upward"),
    /** Towards the nut. */
    DOWN("downward");

    private final String word;

    Direction(String word) {
      this.word = word;
    }
  }

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number of shifts is out of range
   */
  public ShowShift {
    if (times < 1 || times > MAX) {
      throw new FingeringException(times + " shifts cannot be required; ask for 1 to " + MAX);
    }
  }

  /** Whether a transition is a shift in this direction and of this kind. */
  private boolean matches(Transition transition, Grip before, Grip now) {
    Direction actual = now.frame().first() > before.frame().first() ? Direction.UP : Direction.DOWN;
    return HandMovement.shifts(transition, before, now)
        && direction.map(actual::equals).orElse(true)
        && kind.map(required -> required.matches(transition, before, now)).orElse(true);
  }

  private static List<Transition> transitions(Passage passage) {
    List<Transition> transitions = new ArrayList<>();
    for (int m = 1; m < passage.moments().size(); m++) {
      transitions.add(Transition.between(passage.moments().get(m - 1), passage.moments().get(m)));
    }
    return transitions;
  }

  @Override
  public Requirement requirement(Passage passage) {
    List<Transition> transitions = transitions(passage);
    return BoundedCount.ofTransitions(
        times, (m, before, now) -> m > 0 && matches(transitions.get(m - 1), before, now) ? 1 : 0);
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    List<Transition> transitions = transitions(passage);
    BitSet moments = new BitSet();
    for (int m = 1; m < path.size(); m++) {
      moments.set(m, matches(transitions.get(m - 1), path.get(m - 1), path.get(m)));
    }
    return moments;
  }

  @Override
  public int amount() {
    return times;
  }

  @Override
  public Skill withAmount(int amount) {
    return new ShowShift(direction, kind, amount);
  }

  @Override
  public String text() {
    return "show "
        + kind.map(ShiftKind::phrase).orElse("a shift")
        + direction.map(one -> " " + one.word).orElse("")
        + (times == 1 ? "" : ", " + times + " times");
  }
}
