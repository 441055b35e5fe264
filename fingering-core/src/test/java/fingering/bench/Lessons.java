package fingering.bench;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.demand.DemandParser;
import fingering.fingerboard.LeftHand;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonPlanner;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Alternative;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.scoring.rules.StandardRules;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What a teacher changes in the plan of a long viola part, by a planner that is warm. */
@State(Scope.Benchmark)
public class Lessons {
  /** Four measures of 40 notes. */
  private static final String FOUR =
      """
      (G/A/B/c/) d/e/d/c/ B2 A2|f>e d/c/B/A/ G/F/E/D/ C2|(e/f/g/a/) g/f/e/d/ c>B A2|A,/D/F/A/ d/A/F/D/ [DA]2 d2|
      """;

  private static final int MEASURES = 4;

  /** Measures of the part, a multiple of four. */
  @Param({"140"})
  public int measures;

  private LessonPlanner planner = planner(1);
  private Plan free = planner.plan(free());
  private int turn;

  /** Writes the part, and plans it once. */
  @Setup
  public void write() {
    planner = planner(measures / MEASURES);
    free = planner.plan(free());
  }

  private static LessonPlanner planner(int times) {
    String abc = "X:1\nM:4/4\nL:1/8\nK:F clef=alto\n" + FOUR.repeat(times);
    TuneScore tune = Tunebook.parse("part", abc).choose(Optional.empty());
    Passage passage =
        ScoreReader.read(ScoreFile.of(tune.musicXml(), tune.remarks()))
            .passage(PassageRequest.WHOLE);
    return new LessonPlanner(
        PlanComparer.of(
            passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of()),
        DemandParser.of(passage.instrument()));
  }

  private static LessonPlan free() {
    return new LessonPlan("free", Optional.of("free"), ImmutableListMultimap.of());
  }

  private static LessonPlan plan(ImmutableListMultimap<String, String> demands) {
    return new LessonPlan("mine", Optional.empty(), demands);
  }

  private int next(int size) {
    turn = (turn + 37) % size;
    return turn;
  }

  /** The plan after one note was fixed, each time another one. */
  @Benchmark
  public Plan planAfterAFix() {
    ImmutableList<Moment> moments = planner.comparer().passage().moments();
    Moment moment = moments.get(next(moments.size()));
    return planner.plan(
        plan(
            ImmutableListMultimap.of(
                "fix", moment.place().measure() + "." + moment.place().beatText() + "=/1")));
  }

  /** The plan after ten measures were to do without open strings, each time others. */
  @Benchmark
  public Plan planAfterADemand() {
    int first = 1 + next(measures - 10);
    return planner.plan(
        plan(ImmutableListMultimap.of("avoid", "open-strings@" + first + "-" + (first + 9))));
  }

  /** Six ways to play a note, each time another one. */
  @Benchmark
  public ImmutableList<Alternative> choicesAtANote() {
    return planner.alternatives(free, next(free.passage().moments().size()), 6);
  }
}
