package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.MeasureSpan;
import fingering.demand.ShowPosition;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.Scoring;
import fingering.scoring.rules.StandardRules;
import fingering.search.Cancellation;
import fingering.tables.Position;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A search that is cancelled stops, and leaves nothing behind that changes later plans. */
class CancellationTest {
  private static final Scoring SCORING = StandardRules.commonPractice();
  private static final Passage PASSAGE =
      Music.viola().notes(new RandomMusic(7).line(60, 48, 76)); // C3 to E5

  private static final Brief SKILLS =
      Brief.builder("skills")
          .addDemand(new ShowPosition(Position.FIRST, 8))
          .addDemand(new ShowPosition(Position.SECOND, 4))
          .addDemand(new ShowPosition(Position.THIRD, 8))
          .build();

  private static final List<Function<Planner, Object>> SEARCHES =
      List.of(
          planner -> planner.plan(Brief.free("free")),
          planner -> planner.plan(SKILLS),
          planner -> planner.plans(SKILLS, 3),
          planner -> planner.alternatives(SKILLS, 5, 2),
          planner -> Choice.best(planner, SKILLS, MeasureSpan.of("1", "1"), 2));

  /** Asks to give up at the given question, counted from 0. */
  private static Cancellation atQuestion(int number) {
    AtomicInteger asked = new AtomicInteger();
    return () -> asked.getAndIncrement() == number;
  }

  private static int questions(Function<Planner, Object> search) {
    AtomicInteger asked = new AtomicInteger();
    Object unused =
        search.apply(
            Planner.of(PASSAGE, SCORING)
                .withCancellation(
                    () -> {
                      asked.incrementAndGet();
                      return false;
                    }));
    return asked.get();
  }

  @Test
  void aSearchCancelledAnywhereLeavesThePlannerAsItWas() {
    for (Function<Planner, Object> search : SEARCHES) {
      Object expected = search.apply(Planner.of(PASSAGE, SCORING));
      int questions = questions(search);
      for (int at = 0; at < questions; at += 1 + questions / 12) {
        Planner planner = Planner.of(PASSAGE, SCORING);
        Planner cancelled = planner.withCancellation(atQuestion(at));
        assertThatExceptionOfType(CancellationException.class)
            .isThrownBy(() -> search.apply(cancelled));
        assertThat(search.apply(cancelled)).isEqualTo(expected);
        assertThat(search.apply(planner)).isEqualTo(expected);
      }
    }
  }

  @Test
  void aLongSearchIsAskedManyTimes() {
    assertThat(questions(planner -> planner.plans(SKILLS, 3))).isGreaterThan(10);
  }

  @Test
  void aComparisonIsCancelledTooAndComparesTheSameAfterwards() {
    PlanComparer comparer = PlanComparer.of(PASSAGE, SCORING, LeftHand.MEDIUM, ImmutableSet.of());
    ImmutableList<Plan> expected = comparer.comparePositions(true).plans();
    PlanComparer cancelled = comparer.withCancellation(atQuestion(3));
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(() -> cancelled.comparePositions(true));
    assertThat(cancelled.comparePositions(true).plans()).isEqualTo(expected);
    assertThat(comparer.comparePositions(true).plans()).isEqualTo(expected);
  }
}
