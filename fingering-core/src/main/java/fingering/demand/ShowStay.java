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
 * Show a stay: so many whole measures, one after another, in which the hand does not leave the
 * position and stops at least one note.
 *
 * @param position the position
 * @param measures whole measures, 1 to {@value #MOST}
 */
public record ShowStay(Position position, int measures) implements Skill {
  /** The most measures that can be asked for. */
  public static final int MOST = 64;

  /**
   * Checks the components.
   *
   * @throws FingeringException if the number of measures lies out of its range
   */
  public ShowStay {
    if (measures < 1 || measures > MOST) {
      throw new FingeringException(
          "a stay of " + measures + " measures cannot be asked for; ask for 1 to " + MOST);
    }
  }

  @Override
  public Requirement in(Passage passage) {
    return new Staying(passage, stay());
  }

  @Override
  public BitSet shownIn(Passage passage, ImmutableList<Grip> path) {
    BitSet moments = new BitSet();
    runs(
        passage,
        path,
        (run, whole) -> {
          if (whole >= measures) {
            moments.or(run);
          }
        });
    return moments;
  }

  private interface Runs {
    /** Takes the moments of whole measures so far, one after another, and how many they are. */
    void run(BitSet moments, int whole);
  }

  private void runs(Passage passage, ImmutableList<Grip> path, Runs runs) {
    BitSet run = new BitSet();
    int whole = 0;
    for (int from = 0; from < path.size(); ) {
      int to = from;
      boolean stayed = true;
      boolean stopped = false;
      int measure = passage.moments().get(from).place().measureIndex();
      while (to < path.size() && passage.moments().get(to).place().measureIndex() == measure) {
        stayed &= stay().keeps(passage.moments().get(to), path.get(to));
        stopped |= stops(path.get(to));
        to++;
      }
      if (stayed && stopped) {
        run.set(from, to);
        whole++;
      } else {
        run.clear();
        whole = 0;
      }
      runs.run(run, whole);
      from = to;
    }
  }

  @Override
  public int asked() {
    return measures;
  }

  @Override
  public int amountIn(Passage passage, ImmutableList<Grip> path) {
    AtomicInteger longest = new AtomicInteger();
    runs(passage, path, (run, whole) -> longest.accumulateAndGet(whole, Math::max));
    return longest.get();
  }

  @Override
  public Skill asking(int amount) {
    return new ShowStay(position, amount);
  }

  @Override
  public boolean addsUp() {
    return false;
  }

  private StayIn stay() {
    return new StayIn(position, MeasureSpan.WHOLE);
  }

  private static boolean stops(Grip grip) {
    return grip.placements().stream().anyMatch(Placement::stopped);
  }

  @Override
  public String words() {
    return "stay in "
        + position.display()
        + " position for "
        + (measures == 1 ? "a whole measure" : measures + " whole measures");
  }

  /** Three times the measures behind, and of the one in hand: left, nothing stopped, stopped. */
  private final class Staying implements Requirement {
    private static final int LEFT = 0;
    private static final int IDLE = 1;
    private static final int STOPPED = 2;
    private static final int KINDS = 3;

    // What a symbol says: of the measure, that it begins or ends; of the hand, that it stays,
    // stops.
    private static final int BEGINS = 1;
    private static final int ENDS = 2;
    private static final int KEEPS = 4;
    private static final int STOPS = 8;
    private static final int SYMBOLS = 16;

    private final Passage passage;
    private final StayIn stay;

    Staying(Passage passage, StayIn stay) {
      this.passage = passage;
      this.stay = stay;
    }

    private int done() {
      return measures * KINDS;
    }

    @Override
    public int states() {
      return done() + 1;
    }

    @Override
    public long symbols() {
      return SYMBOLS;
    }

    @Override
    public long symbol(int moment, Grip before, Grip now) {
      return (begins(moment) ? BEGINS : 0)
          | (ends(moment) ? ENDS : 0)
          | (stay.keeps(passage.moments().get(moment), now) ? KEEPS : 0)
          | (stops(now) ? STOPS : 0);
    }

    @Override
    public int next(int state, long symbol) {
      if (state == done()) {
        return state;
      }
      int behind = state / KINDS;
      int kind = state % KINDS;
      if ((symbol & BEGINS) != 0) {
        // A measure is over: it counts where the hand stayed and stopped something.
        behind = kind == STOPPED ? behind : 0;
        kind = IDLE;
      }
      if (kind == LEFT || (symbol & KEEPS) == 0) {
        return LEFT;
      }
      int so = kind == STOPPED || (symbol & STOPS) != 0 ? STOPPED : IDLE;
      if ((symbol & ENDS) == 0 || so != STOPPED) {
        return behind * KINDS + so;
      }
      // The measure that ends counts at once, so that the last one of the passage does too.
      return behind + 1 >= measures ? done() : (behind + 1) * KINDS + STOPPED;
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
      return state == done();
    }
  }
}
