package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.scoring.EveryRule;
import fingering.scoring.Scoring;
import fingering.scoring.rules.StandardRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToLongFunction;

/** The graph of a passage with all grips, or with a random choice of them. */
final class Thinned {
  static final ToLongFunction<Grip> NO_PENALTY = grip -> 0;

  private Thinned() {}

  /** With the scoring of common practice. */
  static LayeredGraph all(Passage passage) {
    return all(passage, StandardRules.commonPractice());
  }

  static LayeredGraph all(Passage passage, Scoring scoring) {
    return graph(passage, Integer.MAX_VALUE, 0, NO_PENALTY, scoring);
  }

  /** With every rule, a habit, and points for each hand. */
  static LayeredGraph graph(Passage passage, int most, long seed, ToLongFunction<Grip> penalty) {
    return graph(passage, most, seed, penalty, EveryRule.scoring());
  }

  private static LayeredGraph graph(
      Passage passage, int most, long seed, ToLongFunction<Grip> penalty, Scoring scoring) {
    Random random = new Random(seed);
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    ImmutableList.Builder<ImmutableList<Grip>> grips = ImmutableList.builder();
    for (Moment moment : passage.moments()) {
      List<Grip> some = new ArrayList<>(finder.grips(moment));
      while (some.size() > most) {
        some.remove(random.nextInt(some.size()));
      }
      if (most < Integer.MAX_VALUE) {
        Collections.shuffle(some, random);
      }
      grips.add(ImmutableList.copyOf(some));
    }
    return new LayeredGraph(
        passage.moments(),
        grips.build(),
        scoring,
        penalty == NO_PENALTY ? Penalty.NONE : (moment, grip) -> penalty.applyAsLong(grip));
  }
}
