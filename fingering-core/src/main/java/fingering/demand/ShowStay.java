package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Passage;
import fingering.search.Requirement;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Requires a stay: a number of consecutive whole measures in which the hand does not leave the
 * position, with at least one stopped note in each measure.
 *
 * @param position the position
 * @param measures the number of whole measures, 1 to {@value #MAX}
 */
public record ShowStay(Position position, int measures) implements Skill {
  /** The most measures that can be required. */
  public static final int MAX = 64;

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number of measures is out of range
   */
  public ShowStay {
    if (measures < 1 || measures > MAX) {
      throw new FingeringException(
          "a stay of " + measures + " measures cannot be required; ask for 1 to " + MAX);
    }
  }

  @Override
  public Requirement requirement(Passage passage) {
    return new StayAutomaton(passage, stayIn());
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    BitSet moments = new BitSet();
    forEachMeasure(
        passage,
        path,
        (stay, length) -> {
          if (length >= measures) {
            moments.or(stay);
          }
        });
    return moments;
  }

  private interface StayConsumer {
    /**
     * Receives the stay that ends with a measure.
     *
     * @param stay its moments; empty if the measure does not belong to a stay
     * @param length its number of whole measures
     */
    void accept(BitSet stay, int length);
  }

  private void forEachMeasure(Passage passage, ImmutableList<Grip> path, StayConsumer consumer) {
    BitSet stay = new BitSet();
    int length = 0;
    for (int from = 0; from < path.size(); ) {
      int to = from;
      boolean stayed = true;
      boolean stopped = false;
      int measure = passage.moments().get(from).place().measureIndex();
      while (to < path.size() && passage.moments().get(to).place().measureIndex() == measure) {
        stayed &= stayIn().allows(passage.moments().get(to), path.get(to));
        stopped |= hasStoppedNote(path.get(to));
        to++;
      }
      if (stayed && stopped) {
        stay.set(from, to);
        length++;
      } else {
        stay.clear();
        length = 0;
      }
      consumer.accept(stay, length);
      from = to;
    }
  }

  @Override
  public int amount() {
    return measures;
  }

  @Override
  public int amountShown(Passage passage, ImmutableList<Grip> path) {
    AtomicInteger longest = new AtomicInteger();
    forEachMeasure(passage, path, (stay, length) -> longest.accumulateAndGet(length, Math::max));
    return longest.get();
  }

  @Override
  public Skill withAmount(int amount) {
    return new ShowStay(position, amount);
  }

  @Override
  public boolean additive() {
    return false;
  }

  private StayIn stayIn() {
    return new StayIn(position, MeasureSpan.WHOLE);
  }

  private static boolean hasStoppedNote(Grip grip) {
    return grip.placements().stream().anyMatch(Placement::stopped);
  }

  @Override
  public String text() {
    return "stay in "
        + position.display()
        + " position for "
        + (measures == 1 ? "a whole measure" : measures + " whole measures");
  }

  /**
   * Counts the consecutive whole measures of a stay. A state is three times the number of complete
   * measures, plus the phase of the current measure; the last state is final.
   */
  private final class StayAutomaton implements Requirement {
    // Phases of the current measure: the hand has left the position; it is in the position, without
    // or with a stopped note so far.
    private static final int LEFT = 0;
    private static final int NOTHING_STOPPED = 1;
    private static final int STOPPED = 2;
    private static final int PHASES = 3;

    // Bits of a symbol: the moment begins a measure, ends one; the grip is in the position, has a
    // stopped note.
    private static final int BEGINS = 1;
    private static final int ENDS = 2;
    private static final int IN_POSITION = 4;
    private static final int STOPS = 8;
    private static final int SYMBOLS = 16;

    private final Passage passage;
    private final StayIn stayIn;

    StayAutomaton(Passage passage, StayIn stayIn) {
      this.passage = passage;
      this.stayIn = stayIn;
    }

    private int finalState() {
      return measures * PHASES;
    }

    @Override
    public int states() {
      return finalState() + 1;
    }

    @Override
    public long symbols() {
      return SYMBOLS;
    }

    @Override
    public long symbol(int moment, Grip before, Grip now) {
      return (begins(moment) ? BEGINS : 0)
          | (ends(moment) ? ENDS : 0)
          | (stayIn.allows(passage.moments().get(moment), now) ? IN_POSITION : 0)
          | (hasStoppedNote(now) ? STOPS : 0);
    }

    @Override
    public int next(int state, long symbol) {
      if (state == finalState()) {
        return state;
      }
      int complete = state / PHASES;
      int phase = state % PHASES;
      if ((symbol & BEGINS) != 0) {
        // The stay continues only if the previous measure belongs to it.
        complete = phase == STOPPED ? complete : 0;
        phase = NOTHING_STOPPED;
      }
      if (phase == LEFT || (symbol & IN_POSITION) == 0) {
        return LEFT;
      }
      int newPhase = phase == STOPPED || (symbol & STOPS) != 0 ? STOPPED : NOTHING_STOPPED;
      if ((symbol & ENDS) == 0 || newPhase != STOPPED) {
        return complete * PHASES + newPhase;
      }
      // A measure counts at its last moment, because the last measure of the passage has no next.
      return complete + 1 >= measures ? finalState() : (complete + 1) * PHASES + STOPPED;
    }

    private int measureOf(int moment) {
      return passage.moments().get(moment).place().measureIndex();
    }

    private boolean begins(int moment) {
      return moment == 0 || measureOf(moment) != measureOf(moment - 1);
    }

    private boolean ends(int moment) {
      return moment + 1 == passage.moments().size() || measureOf(moment) != measureOf(moment + 1);
    }

    @Override
    public boolean satisfied(int state) {
      return state == finalState();
    }
  }
}
