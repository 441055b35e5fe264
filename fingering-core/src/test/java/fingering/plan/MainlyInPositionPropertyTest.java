package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.Scoring;
import fingering.scoring.rules.StandardRules;
import fingering.search.BruteForce;
import fingering.search.LayeredGraph;
import fingering.search.Path;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * A plan mainly in one position is the best of all paths: first by the notes outside that are worth
 * a shift, then by cost. The rule is written here again, for quarter notes of one second.
 */
class MainlyInPositionPropertyTest {
  private static final ImmutableList<String> NOTES =
      ImmutableList.of("C3", "D3", "E3", "F3", "G3", "A3", "Bb3", "C4", "G5", "B5");

  private final Scoring scoring = StandardRules.commonPractice();

  private static String music(int seed) {
    Random random = new Random(seed);
    StringBuilder events = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      events.append(i > 0 && random.nextInt(6) == 0 ? "r/1 " : "");
      events.append(NOTES.get(random.nextInt(NOTES.size()))).append("/1 ");
    }
    return events.toString();
  }

  private static boolean outside(Grip grip) {
    return grip.placements().stream()
        .anyMatch(p -> !p.open() && !p.frame().position().equals(Position.THIRD));
  }

  /** Whether a grip is in third position, with each finger on a letter of its own. */
  private static boolean comfortable(Grip grip) {
    return !outside(grip) && grip.placements().stream().noneMatch(Placement::respelled);
  }

  /** The notes that have to be in third position. */
  private static BitSet required(Passage passage, List<ImmutableList<Grip>> grips) {
    int last = grips.size() - 1;
    Predicate<Integer> far =
        m -> grips.get(m).stream().allMatch(MainlyInPositionPropertyTest::outside);
    Predicate<Integer> rest = m -> passage.moments().get(m).restMicros() > 0;
    BitSet required = new BitSet();
    for (int m = 0; m <= last; m++) {
      if (far.test(m)) {
        continue;
      }
      int from = m;
      while (from > 0 && !rest.test(from) && !far.test(from - 1)) {
        from--;
      }
      int to = m;
      while (to < last && !rest.test(to + 1) && !far.test(to + 1)) {
        to++;
      }
      boolean alone = (from == 0 || rest.test(from)) && (to == last || rest.test(to + 1));
      long stopped =
          grips.subList(from, to + 1).stream()
              .filter(
                  some ->
                      some.stream()
                          .anyMatch(
                              grip ->
                                  comfortable(grip)
                                      && grip.placements().stream().anyMatch(Placement::stopped)))
              .count();
      required.set(
          m,
          (alone || stopped >= 3)
              && grips.get(m).stream().anyMatch(MainlyInPositionPropertyTest::comfortable));
    }
    return required;
  }

  @Property(tries = 60)
  void itIsTheBestOfAllPaths(@ForAll int seed) {
    Passage passage = Music.viola().tempo("quarter=60").notes(music(seed));
    Planner planner = Planner.of(passage, scoring);
    BitSet required = required(passage, planner.grips());
    LayeredGraph graph =
        new LayeredGraph(
            passage.moments(),
            planner.grips(),
            scoring,
            (m, grip) -> required.get(m) && outside(grip) ? 1 : 0);
    Path best = BruteForce.best(graph, path -> true).orElseThrow();
    Plan plan = planner.plan(Brief.mainlyIn("third", Position.THIRD));
    long outside =
        plan.notes().stream().filter(note -> note.outside() && required.get(note.moment())).count();
    assertThat(outside).isEqualTo(best.penalty());
    assertThat(best.penalty()).isZero();
    assertThat(plan.total()).isEqualTo(best.cost());
  }
}
