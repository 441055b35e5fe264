package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.rules.StandardRules;
import fingering.search.RequiredStays;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** A planner used by many threads makes the same plans as one used by a single thread. */
class ConcurrentPlansTest {
  private static final int THREADS = 8;
  private static final int ROUNDS = 4;

  // Repeated figures, so that threads compute the same costs.
  private static final Passage PASSAGE =
      Music.viola()
          .notes(
              ("C3/0.5 D3/0.5 E3/0.5 F3/0.5 G3/0.5 C4/0.5 E4/0.5 G4/0.5 C5/0.5 B4/0.5 A4/0.5"
                      + " F4/0.5 D4/0.5 B3/0.5 G3/0.5 F#4/0.25 G4/0.25 A4/0.25 D5/0.25 ")
                  .repeat(6)
                  .strip());

  private static final ImmutableList<Brief> BRIEFS =
      ImmutableList.of(
          Brief.free("free"),
          Brief.preferring("low", ImmutableSet.of(Position.HALF, Position.FIRST)),
          Brief.free("third").withRequirement(RequiredStays.in(Position.THIRD, 8)),
          Brief.free("second").withRequirement(RequiredStays.in(Position.SECOND, 4)));

  private static ImmutableList<Plan> plans(Planner planner, int first) {
    ImmutableList.Builder<Plan> plans = ImmutableList.builder();
    for (int i = 0; i < BRIEFS.size(); i++) {
      Brief brief = BRIEFS.get((first + i) % BRIEFS.size());
      plans.add(planner.plan(brief));
      plans.addAll(planner.plans(brief, 3));
      planner.alternatives(brief, 7, 2).forEach(alternative -> plans.add(alternative.plan()));
    }
    return plans.build();
  }

  @Test
  void plansAreTheSameInManyThreadsAsInOne() throws Exception {
    List<ImmutableList<Plan>> serial = new ArrayList<>();
    for (int first = 0; first < BRIEFS.size(); first++) {
      serial.add(plans(Planner.of(PASSAGE, StandardRules.commonPractice()), first));
    }
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      for (int round = 0; round < ROUNDS; round++) {
        // No cost is cached when the threads start.
        Planner shared =
            new PlannerFactory(StandardRules.commonPractice(), LeftHand.MEDIUM).of(PASSAGE);
        CyclicBarrier start = new CyclicBarrier(THREADS);
        List<Callable<ImmutableList<Plan>>> asked = new ArrayList<>();
        for (int thread = 0; thread < THREADS; thread++) {
          int first = thread % BRIEFS.size();
          asked.add(
              () -> {
                start.await();
                return plans(shared, first);
              });
        }
        int thread = 0;
        for (Future<ImmutableList<Plan>> answer : pool.invokeAll(asked)) {
          assertThat(answer.get()).isEqualTo(serial.get(thread++ % BRIEFS.size()));
        }
      }
    } finally {
      pool.shutdownNow();
    }
  }
}
