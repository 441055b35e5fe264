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
 * Show shifts, of one kind or of any.
 *
 * @param direction up or down the string; empty for either
 * @param kind the kind; empty for any
 * @param times how often, 1 to {@value #MOST}
 */
public record ShowShift(Optional<Direction> direction, Optional<ShiftKind> kind, int times)
    implements Skill {
  /** The most shifts that can be asked for. */
  public static final int MOST = 50;

  /** Where the hand goes. */
  public enum Direction {
    /** Towards the bridge. */
    UP("up"),
    /** Towards the nut. */
    DOWN("down");

    private final String word;

    Direction(String word) {
      this.word = word;
    }
  }

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number of shifts lies out of its range
   */
  public ShowShift {
    if (times < 1 || times > MOST) {
      throw new FingeringException(times + " shifts cannot be asked for; ask for 1 to " + MOST);
    }
  }

  /** Whether the hand shifts so on the way to a moment. */
  private boolean shifts(Transition transition, Grip before, Grip now) {
    return HandMovement.shifts(transition, before, now)
        && direction
            .map(way -> (now.frame().first() > before.frame().first()) == (way == Direction.UP))
            .orElse(true)
        && kind.map(wanted -> wanted.is(transition, before, now)).orElse(true);
  }

  private static List<Transition> transitions(Passage passage) {
    List<Transition> transitions = new ArrayList<>();
    for (int m = 1; m < passage.moments().size(); m++) {
      transitions.add(Transition.between(passage.moments().get(m - 1), passage.moments().get(m)));
    }
    return transitions;
  }

  @Override
  public Requirement in(Passage passage) {
    List<Transition> transitions = transitions(passage);
    return BoundedCount.ways(
        times, (m, before, now) -> m > 0 && shifts(transitions.get(m - 1), before, now) ? 1 : 0);
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    List<Transition> transitions = transitions(passage);
    BitSet moments = new BitSet();
    for (int m = 1; m < path.size(); m++) {
      moments.set(m, shifts(transitions.get(m - 1), path.get(m - 1), path.get(m)));
    }
    return moments;
  }

  @Override
  public int asked() {
    return times;
  }

  @Override
  public int amountIn(Passage passage, ImmutableList<Grip> path) {
    return shownIn(passage, path).cardinality();
  }

  @Override
  public Skill asking(int amount) {
    return new ShowShift(direction, kind, amount);
  }

  @Override
  public boolean addsUp() {
    return true;
  }

  @Override
  public String words() {
    return "show "
        + (times == 1 ? "" : times + " times ")
        + kind.map(ShiftKind::phrase).orElse("a shift")
        + direction.map(way -> " " + way.word).orElse("");
  }
}
