package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.Charge;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import fingering.scoring.rules.StandardRules;
import fingering.search.BruteForce;
import fingering.search.RequiredStays;
import fingering.search.VisibleFingering;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Properties of every plan, on random music. */
class PlanPropertyTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);
  private static final ImmutableSet<Position> LOW = ImmutableSet.of(Position.HALF, Position.FIRST);

  /** So slow that no note is close in time to another. */
  private static final String SLOW = "quarter=2";

  private final Scoring scoring = StandardRules.commonPractice();

  private static Passage passage(int seed, int which, int notes) {
    RandomMusic random = new RandomMusic(seed);
    Music music = Music.on(INSTRUMENTS.get(which)).tempo(random.tempo());
    int lowest = LOWEST.get(which);
    return music.notes(
        which < 2
            ? random.withDoubleStops(notes, lowest, lowest + 28)
            : random.line(notes, lowest, lowest + 26));
  }

  private static long walked(Scoring scoring, Plan plan) {
    ImmutableList<ImmutableList<Grip>> all = Planner.of(plan.passage(), scoring).grips();
    List<Moment> moments = plan.passage().moments();
    long sum = 0;
    for (int m = 0; m < moments.size(); m++) {
      ImmutableList<Grip> grips = all.get(m);
      sum +=
          scoring
              .costs(NoteContext.of(moments.get(m)), grips)
              .get(grips.indexOf(plan.grips().get(m)));
      if (m > 0) {
        TimedTransition transition = TimedTransition.between(moments.get(m - 1), moments.get(m));
        sum += scoring.cost(transition, plan.grips().get(m - 1), plan.grips().get(m));
      }
    }
    return sum;
  }

  @Property(tries = 80)
  void rulesChargesAndPathCostsAddUpToTheTotal(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 20) int notes) {
    Planner planner = Planner.of(passage(seed, which, notes), scoring);
    for (Brief brief : List.of(Brief.free("free"), Brief.preferring("low", LOW))) {
      Plan plan = planner.plan(brief);
      assertThat(plan.rules().stream().mapToLong(RuleCost::cost).sum()).isEqualTo(plan.total());
      assertThat(plan.charges().stream().mapToLong(Charge::cost).sum()).isEqualTo(plan.total());
      assertThat(walked(scoring, plan)).isEqualTo(plan.total());
      assertThat(plan.hardestMeasures(1000).stream().mapToLong(Plan.MeasureCost::cost).sum())
          .isEqualTo(plan.total());
    }
  }

  @Property(tries = 60)
  void everyNoteIsPlannedOnceInScoreOrderAtItsPitch(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 20) int notes) {
    Passage passage = passage(seed, which, notes);
    Plan plan = Planner.of(passage, scoring).plan(Brief.free("free"));
    assertThat(plan.notes().stream().map(PlannedNote::note).toList()).isEqualTo(passage.notes());
    for (PlannedNote note : plan.notes()) {
      int open = passage.instrument().string(note.placement().string()).pitch().midi();
      assertThat(open + note.placement().semitones()).isEqualTo(note.note().midi());
    }
  }

  @Property(tries = 60)
  void aConstrainedPlanIsNeverCheaperThanTheFreeOne(
      @ForAll int seed, @ForAll @IntRange(min = 3, max = 12) int notes) {
    Passage passage = passage(seed, 1, notes);
    Planner planner = Planner.of(passage, scoring);
    long free = planner.plan(Brief.free("free")).total();
    assertThat(planner.plan(Brief.preferring("low", LOW)).total()).isGreaterThanOrEqualTo(free);
  }

  /** The fewest notes outside the preferred positions, over every path of a few notes. */
  private static int fewest(Passage passage, boolean stay) {
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    List<ImmutableList<Grip>> grips = passage.moments().stream().map(finder::grips).toList();
    return fewest(grips, new ArrayList<>(), stay, Integer.MAX_VALUE);
  }

  private static int fewest(
      List<ImmutableList<Grip>> grips, List<Grip> path, boolean stay, int best) {
    if (path.size() == grips.size()) {
      boolean shown = !stay || BruteForce.stays(path, Position.THIRD, 2);
      return shown ? Math.min(best, outside(path)) : best;
    }
    int least = best;
    for (Grip grip : grips.get(path.size())) {
      path.add(grip);
      if (outside(path) < least) {
        least = fewest(grips, path, stay, least);
      }
      path.remove(path.size() - 1);
    }
    return least;
  }

  private static int outside(List<Grip> path) {
    int outside = 0;
    for (Grip grip : path) {
      for (Placement placement : grip.placements()) {
        outside += placement.open() || LOW.contains(placement.frame().position()) ? 0 : 1;
      }
    }
    return outside;
  }

  @Property(tries = 60)
  void theFewestPossibleNotesAreOutsideThePreferredPositions(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(SLOW).notes(random.line(notes, 48, 86));
    Plan plan = Planner.of(passage, scoring).plan(Brief.preferring("low", LOW));
    assertThat(plan.notesOutside()).isEqualTo(fewest(passage, false));
    for (PlannedNote note : plan.notes()) {
      assertThat(note.outside())
          .isEqualTo(
              !note.placement().open() && !LOW.contains(note.placement().frame().position()));
    }
  }

  @Property(tries = 30)
  void theFewestPossibleNotesAreOutsideWithAStayInThird(@ForAll int seed) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage =
        Music.viola().tempo(SLOW).notes(random.line(3, 62, 74)); // D4 to D5: there is a 3rd
    Brief brief = Brief.preferring("low", LOW).withRequirement(RequiredStays.in(Position.THIRD, 2));
    int fewest = fewest(passage, true);
    if (fewest < Integer.MAX_VALUE) {
      Plan plan = Planner.of(passage, scoring).plan(brief);
      assertThat(plan.notesOutside()).isEqualTo(fewest);
    }
  }

  @Property(tries = 40)
  void twoPlansOfOneBriefAreEqual(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 15) int notes) {
    Passage passage = passage(seed, which, notes);
    Brief brief = Brief.free("free");
    assertThat(Planner.of(passage, scoring).plan(brief))
        .isEqualTo(Planner.of(passage, StandardRules.commonPractice()).plan(brief));
  }

  @Property(tries = 40)
  void severalPlansAddUpAndAreSortedByCost(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 15) int notes) {
    List<Plan> plans =
        Planner.of(passage(seed, which, notes), scoring).plans(Brief.free("free"), 8);
    assertThat(plans).extracting(Plan::total).isSorted();
    assertThat(plans).allSatisfy(plan -> assertThat(walked(scoring, plan)).isEqualTo(plan.total()));
  }

  @Property(tries = 40)
  void noTwoOfSeveralPlansHaveTheSameStringsFingersAndPositions(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 15) int notes) {
    Planner planner = Planner.of(passage(seed, which, notes), scoring);
    assertThat(planner.plans(Brief.preferring("low", LOW), 8))
        .extracting(plan -> plan.grips().stream().map(VisibleFingering::of).toList())
        .doesNotHaveDuplicates();
  }
}
