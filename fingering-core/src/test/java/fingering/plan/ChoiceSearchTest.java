package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.ImmutableLongArray;
import fingering.demand.DemandParser;
import fingering.demand.MeasureSpan;
import fingering.demand.ShowPosition;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import fingering.scoring.rules.StandardRules;
import fingering.search.RequiredStays;
import fingering.search.VisibleFingering;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ChoiceSearchTest {
  private static final Scoring SCORING = StandardRules.commonPractice();

  /** Walks every path and keeps the least cost of each fingering of some moments. */
  private static final class Walk {
    private final Passage passage;
    private final List<ImmutableList<Grip>> grips = new ArrayList<>();
    private final Predicate<List<Grip>> wanted;
    private final int from;
    private final int to;
    private final Map<String, Long> least = new TreeMap<>();
    private final List<Grip> path = new ArrayList<>();

    Walk(Planner planner, Predicate<Grip> kept, Predicate<List<Grip>> wanted, int from, int to) {
      passage = planner.passage();
      planner
          .grips()
          .forEach(
              all -> grips.add(all.stream().filter(kept).collect(ImmutableList.toImmutableList())));
      this.wanted = wanted;
      this.from = from;
      this.to = to;
      step(0);
    }

    private void step(long cost) {
      int m = path.size();
      if (m == grips.size()) {
        if (wanted.test(path)) {
          least.merge(fingering(), cost, Math::min);
        }
        return;
      }
      Moment moment = passage.moments().get(m);
      ImmutableLongArray own = SCORING.costs(NoteContext.of(moment), grips.get(m));
      for (int j = 0; j < grips.get(m).size(); j++) {
        Grip grip = grips.get(m).get(j);
        long transition =
            m == 0
                ? 0
                : SCORING.cost(
                    TimedTransition.between(passage.moments().get(m - 1), moment),
                    path.get(m - 1),
                    grip);
        path.add(grip);
        step(cost + transition + own.get(j));
        path.remove(m);
      }
    }

    private String fingering() {
      StringBuilder text = new StringBuilder();
      for (int m = from; m <= to; m++) {
        for (Placement p : path.get(m).placements()) {
          text.append(p.string()).append(p.finger() == Finger.OPEN ? "o" : "p");
          text.append(p.finger() == Finger.OPEN ? "" : p.frame().position()).append(' ');
        }
      }
      return text.toString().strip();
    }
  }

  private static String fingering(Choice choice) {
    List<String> notes = new ArrayList<>();
    for (PlannedNote note : choice.notes()) {
      notes.add(note.placement().string() + (note.open() ? "o" : "p" + note.position()));
    }
    return String.join(" ", notes);
  }

  private static void assertSame(ImmutableList<Choice> choices, Map<String, Long> least) {
    Map<String, Long> actual = new TreeMap<>();
    choices.forEach(choice -> actual.put(fingering(choice), choice.plan().total()));
    assertThat(actual).hasSize(choices.size()).isEqualTo(least);
    assertThat(choices).extracting(choice -> choice.plan().total()).isSorted();
  }

  private static boolean low(Grip grip) {
    return grip.frame().position().compareTo(Position.SECOND) <= 0;
  }

  private static Brief low() {
    return Brief.within("low", ImmutableSet.of(Position.HALF, Position.FIRST, Position.of(2)));
  }

  /** Five quarter notes in 2/4: the middle measure has two. */
  @Property(tries = 40)
  void eachChoiceHasTheCheapestOfAllPaths(@ForAll int seed) {
    RandomMusic random = new RandomMusic(seed);
    StringBuilder notes = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      notes.append(random.pitch(50, 66)).append("/1 ");
    }
    Planner planner = Planner.of(Music.viola().meter(2, 4).notes(notes.toString()), SCORING);
    Walk walk = new Walk(planner, ChoiceSearchTest::low, path -> true, 2, 3);
    assertSame(Choice.best(planner, low(), MeasureSpan.parse("2"), 999), walk.least);
    Walk two = new Walk(planner, ChoiceSearchTest::low, path -> true, 2, 4);
    assertSame(Choice.best(planner, low(), MeasureSpan.parse("2-3"), 9999), two.least);
  }

  @Property(tries = 30)
  void everyChoiceShowsWhatThePlanMustShow(@ForAll int seed) {
    RandomMusic random = new RandomMusic(seed);
    StringBuilder notes = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      notes.append(random.pitch(50, 66)).append("/1 ");
    }
    Planner planner = Planner.of(Music.viola().meter(2, 4).notes(notes.toString()), SCORING);
    Brief brief = low().toBuilder().addDemand(new ShowPosition(Position.SECOND, 2)).build();
    Predicate<List<Grip>> shown =
        path ->
            path.stream()
                    .flatMap(grip -> grip.placements().stream())
                    .filter(p -> p.finger() != Finger.OPEN)
                    .filter(p -> p.frame().position().equals(Position.SECOND))
                    .count()
                >= 2;
    Walk walk = new Walk(planner, ChoiceSearchTest::low, shown, 0, 1);
    if (!walk.least.isEmpty()) {
      assertSame(Choice.best(planner, brief, MeasureSpan.parse("1"), 999), walk.least);
    }
  }

  /** The plans of all measures are those of 'plan --best'. */
  @Property(tries = 20)
  void theChoicesForAllMeasuresAreTheBestPlans(@ForAll int seed) {
    Passage passage = Music.viola().notes(new RandomMusic(seed).line(7, 50, 74));
    Planner planner = Planner.of(passage, SCORING);
    Brief brief = Brief.free("free").withRequirement(RequiredStays.in(Position.FIRST, 1));
    assertThat(Choice.best(planner, brief, MeasureSpan.WHOLE, 8))
        .extracting(choice -> choice.plan().total())
        .isEqualTo(
            planner.plans(brief, 8, VisibleFingering.Grain.PLACES).stream()
                .map(Plan::total)
                .toList());
  }

  // Common practice, no source: a scale of two octaves may shift on any of its strings.
  private static final Passage SCALE =
      Music.violin()
          .notes("A4/.5 B4/.5 C5/.5 D5/.5 E5/.5 F5/.5 G5/.5 A5/.5 B5/.5 A5/.5 G5/.5 F5/.5 E5/2");

  @Test
  void theFirstChoiceIsTheBestPlanAndTheOthersListTheirChanges() {
    Planner planner = Planner.of(SCALE, SCORING);
    ImmutableList<Choice> choices =
        Choice.best(planner, Brief.free("free"), MeasureSpan.parse("2"), 4);
    assertThat(choices).hasSize(4);
    assertThat(choices.get(0).plan()).isEqualTo(planner.plan(Brief.free("free")));
    assertThat(choices.get(0).changesBefore(choices.get(0))).isEmpty();
    for (Choice choice : choices.subList(1, 4)) {
      choice
          .changesBefore(choices.get(0))
          .forEach(change -> assertThat(change.other().moment()).isLessThan(choice.firstMoment()));
      choice
          .changesAfter(choices.get(0))
          .forEach(
              change -> assertThat(change.other().moment()).isGreaterThan(choice.lastMoment()));
      assertThat(choice.comparedWith(choices.get(0)).extraCost())
          .isEqualTo(choice.plan().total() - choices.get(0).plan().total());
      List<Position> positions = choice.plan().notes().stream().map(PlannedNote::position).toList();
      assertThat(choice.positionAfter()).isEmpty();
      assertThat(positions).contains(choice.positionBefore().orElseThrow());
    }
  }

  @Test
  void aFixedMeasureHasOneChoice() {
    Planner planner = Planner.of(Music.viola().notes("C3/4 D3/4"), SCORING);
    DemandParser text = DemandParser.of(Music.viola().notes("C3/1").instrument());
    Brief brief = Brief.builder("one").addDemand(text.fix("2.1=IV/1@1")).build();
    assertThat(Choice.best(planner, brief, MeasureSpan.parse("2"), 5)).hasSize(1);
  }

  @Test
  void measuresThatThePassageDoesNotHaveAreRefused() {
    Planner planner = Planner.of(SCALE, SCORING);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Choice.best(planner, Brief.free("free"), MeasureSpan.parse("9"), 4))
        .withMessageContaining("no measure 9 in Violin");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Choice.best(planner, Brief.free("free"), MeasureSpan.parse("1"), 0))
        .withMessageContaining("ask for 1 or more");
    Choice one = Choice.best(planner, Brief.free("free"), MeasureSpan.parse("1"), 1).get(0);
    Choice two = Choice.best(planner, Brief.free("free"), MeasureSpan.parse("2"), 1).get(0);
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> one.changesBefore(two));
  }

  @Test
  void measuresOfRestsHaveNoChoices() {
    Passage rests = Music.viola().notes("C3/4 r/4 D3/4");
    Planner planner = Planner.of(rests, SCORING);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Choice.best(planner, Brief.free("free"), MeasureSpan.parse("2"), 4))
        .withMessage("No note begins in measure 2; choose other measures.");
  }
}
