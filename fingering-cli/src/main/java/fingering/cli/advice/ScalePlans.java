package fingering.cli.advice;

import com.google.common.base.Splitter;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Students;
import fingering.cli.text.PlanLine;
import fingering.demand.DemandParser;
import fingering.exercise.PlannedScale;
import fingering.exercise.ScalePlanner;
import fingering.exercise.ScaleRequest;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.page.audition.ScaleResult;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.plan.PlannerFactory;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans of scales for one student and instrument. */
final class ScalePlans {
  private static final Splitter DEMAND = Splitter.on('=').limit(2);

  private final Students students;
  private final ScoringContext scoring;
  private final Instrument played;
  private final LeftHand hand;
  private final Optional<Pitch> from;
  private final PlannerFactory planners;

  /** The planners of passages, since the same notes are planned for one position after another. */
  private final Map<Passage, Planner> known = new HashMap<>();

  /**
   * Prepares the plans.
   *
   * @param named the instrument, with its usual strings and size
   * @param from the first note; empty for the lowest possible
   * @throws FingeringException if the student cannot play the instrument
   */
  ScalePlans(
      Students students,
      ScoringContext scoring,
      PlayerOptions player,
      Instrument named,
      Optional<Pitch> from) {
    this.students = students;
    this.scoring = scoring;
    this.from = from;
    InstrumentOptions build = new InstrumentOptions();
    played = build.apply(named, students);
    students.requirePatterns(played);
    hand = player.hand(students, played, build);
    planners = new PlannerFactory(scoring.scoring(), hand);
  }

  /**
   * The easiest fingering.
   *
   * @throws FingeringException if there is none; the message is one sentence
   */
  ScaleResult.Way easiest(ScaleRequest request) {
    return way(
        "",
        "",
        false,
        ScalePlanner.plan(request, played, hand, from, passage -> plan(passage, "")));
  }

  /** The fingering in a position, or that begins there for an octave; empty if there is none. */
  Optional<ScaleResult.Way> in(ScaleRequest request, Position position) {
    String all = "allow=" + position;
    String first = "stay=" + position + "@1";
    return plan(request, all)
        .map(planned -> way(all, position.display(), true, planned))
        .or(
            () ->
                plan(request, first)
                    .map(planned -> way(first, position.display(), false, planned)));
  }

  private ScaleResult.Way way(
      String demand, String position, boolean throughout, PlannedScale planned) {
    return new ScaleResult.Way(
        demand,
        position,
        throughout,
        PlanLine.of(planned.plan(), scoring.level()),
        PlanLine.remarks(planned.plan(), students),
        planned);
  }

  /** A plan that meets a demand; empty if there is none. */
  Optional<PlannedScale> plan(ScaleRequest request, String demand) {
    return ScalePlanner.tryPlan(request, played, hand, from, passage -> plan(passage, demand));
  }

  private Plan plan(Passage passage, String demand) {
    Brief.Builder brief = Brief.builder("free choice");
    if (!demand.isEmpty()) {
      List<String> parts = DEMAND.splitToList(demand);
      DemandParser.of(played).read(parts.get(0), parts.get(1)).forEach(brief::addDemand);
    }
    return known.computeIfAbsent(passage, planners::of).plan(brief.build());
  }
}
