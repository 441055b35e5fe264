package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import fingering.scoring.Weights;
import java.util.SplittableRandom;

/**
 * Small layers of viola music with whatever costs, penalties, closed grips and requirements a seed
 * draws, so few that every path can be walked.
 */
final class Drawn {
  private static final int MOST_GRIPS = 4;

  private Drawn() {}

  /** Half of them with costs of common practice, half with drawn ones, many of which are equal. */
  static LayeredGraph layers(int seed, int notes) {
    SplittableRandom random = new SplittableRandom(seed);
    RandomMusic music = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(music.tempo()).notes(music.line(notes, 48, 76)); // C3-E5
    LayeredGraph all =
        Thinned.layers(passage, 1 + random.nextInt(MOST_GRIPS), seed, Thinned.NO_PENALTY);
    Scoring scoring = random.nextBoolean() ? all.scoring() : scoring(seed);
    Penalty penalty = random.nextBoolean() ? Penalty.NONE : (m, grip) -> drawn(2, seed, m, grip);
    LayeredGraph layers = new LayeredGraph(all.moments(), all.grips(), scoring, penalty);
    return random.nextBoolean()
        ? layers
        : layers.closing((m, grip) -> drawn(4, seed, m, grip) == 0);
  }

  /** A number from 0 to below that, the same for the same seed, number and grip. */
  private static int drawn(int below, long seed, int number, Grip grip) {
    return drawn(below, seed, number, grip.top().string() * 100 + grip.frame().index());
  }

  private static int drawn(int below, long seed, int number, int grip) {
    return new SplittableRandom((seed * 31 + number) * 1_009 + grip).nextInt(below);
  }

  private static Scoring scoring(int seed) {
    return Scoring.of(
        ImmutableList.of(new DrawnForGrips(seed), new DrawnForWays(seed)),
        Weights.parse("drawn", "drawn-for-grips: 1\ndrawn-for-ways: 1"));
  }

  /** Charges a grip nothing, one or two. */
  private record DrawnForGrips(int seed) implements NoteRule, Named {
    @Override
    public String id() {
      return "drawn-for-grips";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return drawn(3, seed, 0, grip);
    }
  }

  /** Charges a way nothing, one or two. */
  private record DrawnForWays(int seed) implements TransitionRule, Named {
    @Override
    public String id() {
      return "drawn-for-ways";
    }

    @Override
    public long amount(Transition transition, Grip before, Grip now) {
      return drawn(3, seed, 1 + drawn(100, seed, 0, before), now);
    }
  }

  /** A rule that tells nothing but its name. */
  private interface Named extends CostRule {
    @Override
    default String name() {
      return id();
    }

    @Override
    default String explanation() {
      return id();
    }

    @Override
    default String unit() {
      return "point";
    }
  }

  /** A requirement of one to four states, as likely as not one that looks back. */
  static Requirement requirement(long seed) {
    SplittableRandom random = new SplittableRandom(~seed);
    int states = 1 + random.nextInt(4);
    boolean looksBack = random.nextBoolean();
    long satisfying = random.nextInt(1 << states);
    return new Requirement() {
      @Override
      public int states() {
        return states;
      }

      @Override
      public boolean looksBack() {
        return looksBack;
      }

      @Override
      public long symbols() {
        return 5;
      }

      @Override
      public long symbol(int moment, Grip before, Grip now) {
        int last = looksBack ? drawn(100, seed, moment, before) : moment;
        return drawn(5, seed, last, now);
      }

      @Override
      public int next(int state, long symbol) {
        return drawn(states, seed, state, (int) symbol);
      }

      @Override
      public boolean satisfied(int state) {
        return (satisfying & 1L << state) != 0;
      }
    };
  }
}
