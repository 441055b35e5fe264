package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import fingering.scoring.Weights;
import java.util.SplittableRandom;

/**
 * Small graphs of viola music with random costs, penalties, excluded grips and requirements, small
 * enough to visit every path.
 */
final class RandomGraph {
  private static final int MOST_GRIPS = 4;

  private RandomGraph() {}

  /** Half of them have the costs of common practice, half random costs, many of which are equal. */
  static LayeredGraph graph(int seed, int notes) {
    SplittableRandom random = new SplittableRandom(seed);
    RandomMusic music = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(music.tempo()).notes(music.line(notes, 48, 76)); // C3-E5
    LayeredGraph all =
        Thinned.graph(passage, 1 + random.nextInt(MOST_GRIPS), seed, Thinned.NO_PENALTY);
    Scoring scoring = random.nextBoolean() ? all.scoring() : scoring(seed);
    Penalty penalty = random.nextBoolean() ? Penalty.NONE : (m, grip) -> random(2, seed, m, grip);
    LayeredGraph graph = new LayeredGraph(all.moments(), all.grips(), scoring, penalty);
    return random.nextBoolean()
        ? graph
        : graph.excluding((m, grip) -> random(4, seed, m, grip) == 0);
  }

  /** A number from 0 up to a limit, the same for the same seed, number and grip. */
  private static int random(int below, long seed, int number, Grip grip) {
    return random(below, seed, number, grip.top().string() * 100 + grip.frame().index());
  }

  private static int random(int below, long seed, int number, int grip) {
    return new SplittableRandom((seed * 31 + number) * 1_009 + grip).nextInt(below);
  }

  private static Scoring scoring(int seed) {
    return Scoring.of(
        ImmutableList.of(new RandomForGrips(seed), new RandomForEdges(seed)),
        Weights.parse("random", "random-for-grips: 1\nrandom-for-edges: 1"));
  }

  /** Charges 0, 1 or 2 for a grip. */
  private record RandomForGrips(int seed) implements NoteRule {
    @Override
    public String id() {
      return "random-for-grips";
    }

    @Override
    public String name() {
      return id();
    }

    @Override
    public String explanation() {
      return id();
    }

    @Override
    public String unit() {
      return "point";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return random(3, seed, 0, grip);
    }
  }

  /** Charges 0, 1 or 2 for an edge. */
  private record RandomForEdges(int seed) implements TransitionRule {
    @Override
    public String id() {
      return "random-for-edges";
    }

    @Override
    public String name() {
      return id();
    }

    @Override
    public String explanation() {
      return id();
    }

    @Override
    public String unit() {
      return "point";
    }

    @Override
    public long amount(Transition transition, Grip before, Grip now) {
      return random(3, seed, 1 + random(100, seed, 0, before), now);
    }
  }

  /** A requirement of one to four states; every other one looks back. */
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
        int last = looksBack ? random(100, seed, moment, before) : moment;
        return random(5, seed, last, now);
      }

      @Override
      public int next(int state, long symbol) {
        return random(states, seed, state, (int) symbol);
      }

      @Override
      public boolean satisfied(int state) {
        return (satisfying & 1L << state) != 0;
      }
    };
  }
}
