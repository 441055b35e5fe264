package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.ImmutableDoubleArray;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.tables.Instrument.HandKind;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class HabitTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);

  private static ImmutableList<ImmutableList<Grip>> grips(Passage passage) {
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    return passage.moments().stream().map(finder::grips).collect(ImmutableList.toImmutableList());
  }

  private static ImmutableLongArray amounts(Habit habit, Passage passage, int moment) {
    Moment now = passage.moments().get(moment);
    return habit.amounts(NoteContext.of(now), grips(passage).get(moment));
  }

  private static Passage line(int seed, int which) {
    int lowest = LOWEST.get(which);
    RandomMusic random = new RandomMusic(seed);
    return Music.on(INSTRUMENTS.get(which))
        .tempo(random.tempo())
        .notes(random.withDoubleStops(10, lowest, lowest + 24));
  }

  @Property(tries = 100)
  void theBestPlacementCostsNothingAndNoneMoreThanTheBound(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int which) {
    Habit habit = EveryRule.habit(seed);
    Passage passage = line(seed, which);
    ImmutableList<ImmutableList<Grip>> grips = grips(passage);
    for (int m = 0; m < grips.size(); m++) {
      NoteContext context = NoteContext.of(passage.moments().get(m));
      ImmutableLongArray amounts = habit.amounts(context, grips.get(m));
      assertThat(amounts.length()).isEqualTo(grips.get(m).size());
      assertThat(amounts.stream().min()).hasValue(0);
      assertThat(amounts.stream()).allMatch(amount -> amount <= Habit.MAX_POINTS);
      assertThat(habit.amounts(context, grips.get(m))).isEqualTo(amounts);
    }
  }

  @Test
  void aStrongHabitReachesTheBound() {
    double[] numbers = EveryRule.habit(1).networks().get(HandKind.VIOLIN).toArray();
    HabitNetwork.scale(numbers, 1000);
    Habit strong =
        new Habit(ImmutableMap.of(HandKind.VIOLIN, ImmutableDoubleArray.copyOf(numbers)));
    assertThat(amounts(strong, Music.violin().notes("A4/1 B4/1 C5/1"), 1).stream().max())
        .hasValue(Habit.MAX_POINTS);
  }

  @Test
  void doubleStopsHarmonicsAndPluckedNotesHaveNoHabit() {
    Habit habit = EveryRule.habit(1);
    assertThat(amounts(habit, Music.violin().notes("E5/1"), 0).stream().sum()).isPositive();
    assertThat(amounts(habit, Music.violin().notes("C5+E5/1"), 0).stream().sum()).isZero();
    assertThat(amounts(habit, Music.violin().notes("C5*4+G5/1 E5/1"), 1).stream().sum()).isZero();
    assertThat(amounts(habit, Music.violin().notes("E5/1pz"), 0).stream().sum()).isZero();
  }

  @Test
  void aHandWithoutANetworkHasNoHabit() {
    Habit violin =
        new Habit(
            ImmutableMap.of(HandKind.VIOLIN, EveryRule.habit(1).networks().get(HandKind.VIOLIN)));
    assertThat(amounts(violin, Music.violin().notes("E4/1"), 0).stream().sum()).isPositive();
    assertThat(amounts(violin, Music.viola().notes("E4/1"), 0).stream().sum()).isPositive();
    assertThat(amounts(violin, Music.cello().notes("E3/1"), 0).stream().sum()).isZero();
    assertThat(amounts(Habit.NONE, Music.violin().notes("E4/1"), 0).stream().sum()).isZero();
    assertThat(Habit.NONE.idle()).isTrue();
    assertThat(violin.idle()).isFalse();
  }

  @Test
  void aMeasureThatReturnsIsJudgedAsBefore() {
    String measure = "A4/1 B4/0.5 ~C5/0.5 D5/0.5 E5/0.5 C5/1 ";
    Passage passage = Music.violin().notes(measure + "E5/2 G5/2 " + measure + "A5/4");
    Habit habit = EveryRule.habit(3);
    for (int m = 2; m < 4; m++) {
      assertThat(amounts(habit, passage, m + 8)).isEqualTo(amounts(habit, passage, m));
    }
  }

  @Test
  void theLineAroundANoteDecides() {
    Habit habit = EveryRule.habit(3);
    assertThat(amounts(habit, Music.violin().notes("A4/1 B4/1 C5/1"), 1))
        .isNotEqualTo(amounts(habit, Music.violin().notes("E5/1 B4/1 G4/1"), 1));
  }

  @Test
  void theHabitIsChargedInCostsAndExplained() {
    Passage passage = Music.violin().notes("A4/1 B4/1 C5/1");
    Scoring scoring =
        Scoring.of(
            ImmutableList.of(), new Weights(ImmutableMap.of("habit", 2L), EveryRule.habit(5)));
    ImmutableList<ImmutableList<Grip>> grips = grips(passage);
    ImmutableList<Grip> path =
        grips.stream().map(some -> some.get(3)).collect(ImmutableList.toImmutableList());
    for (int m = 0; m < 3; m++) {
      int here = m;
      long amount = amounts(EveryRule.habit(5), passage, m).get(3);
      assertThat(scoring.costs(NoteContext.of(passage.moments().get(m)), grips.get(m)).get(3))
          .isEqualTo(2 * amount);
      assertThat(
              scoring.explain(passage.moments(), grips, path).stream()
                  .filter(charge -> charge.moment() == here)
                  .mapToLong(Charge::cost)
                  .sum())
          .isEqualTo(2 * amount);
    }
  }

  @Test
  void aNetworkOfAnotherSizeIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Habit(ImmutableMap.of(HandKind.BASS, ImmutableDoubleArray.of(1, 2))))
        .withMessage("a network has " + HabitNetwork.SIZE + " numbers");
  }
}
