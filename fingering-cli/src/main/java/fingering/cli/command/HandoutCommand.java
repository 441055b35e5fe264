package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.lesson.LessonOption;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.LadderOptions;
import fingering.cli.option.PlanChoice;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.output.HandoutOutput;
import fingering.cli.practice.TakenHome;
import fingering.demand.MeasureSpan;
import fingering.lesson.LessonCircles;
import fingering.lesson.StoredLesson;
import fingering.page.HandoutPage;
import fingering.page.view.Ladder;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.practice.Journal;
import fingering.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes one side of paper for a student. */
@Command(
    name = "handout",
    description =
        "Makes one side of paper for a student: the music with fingers, a tempo ladder to tick, and"
            + " exercises.",
    footer = {
      "",
      "Without --from, --to and --by, or a journal, the ladder is left empty to fill in.",
      "",
      "Examples:",
      "  fingering handout docs/demo/demo.musicxml --choose partly \\",
      "    --from quarter=60 --to quarter=96 --by 2026-12-12 --output lanterns.html",
      "  fingering handout docs/demo/demo.musicxml --measures 1-8 --choose third \\",
      "    --keep-open --paper letter --output opening.html"
    })
final class HandoutCommand extends BaseCommand {
  /** What fits on one side: more measures are too small to read from a music stand. */
  private static final int MEASURES = 40;

  /** What a ladder needs: a goal, a day, and a clean tempo. */
  private static final int PARTS = 3;

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin LessonOption lesson = new LessonOption();

  @Mixin PlanChoice chosen = new PlanChoice();

  @Option(
      names = "--keep-open",
      description =
          "Also print the fingers of the plan that the chosen one is weighed against, below the"
              + " staff where it differs.")
  boolean keepOpen;

  @Mixin LadderOptions ladder = new LadderOptions();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin HandoutOutput output = new HandoutOutput();

  @Override
  public Integer call() {
    output.check();
    Optional<StoredLesson> stored = lesson.read();
    stored.ifPresent(this::take);
    chosen.check();
    PlanningContext planning = PlanningContext.read(score.read(), reading, player);
    Plan plan =
        chosen.plan(
            planning.comparer(player, demands, !chosen.isFree()),
            chosen.freeBrief(demands, planning.passage()));
    HandoutPage page =
        HandoutPage.of(
            TakenHome.of(
                output.paper(),
                plan,
                keepOpen ? rival(plan, planning) : Optional.empty(),
                planning,
                stored.map(one -> one.lesson().circles()).orElse(LessonCircles.ALL),
                ladder,
                ladder(plan, planning)));
    output.print(page.html(), spec);
    remark(plan.passage().measures().size(), page.sides());
    return ExitCode.DONE;
  }

  private void take(StoredLesson stored) {
    score.from(stored);
    reading.from(stored, score);
    player.from(stored);
    chosen.from(stored, demands);
    ladder.from(stored);
  }

  /** The plan of 'compare' to take, or if it is the chosen one, the next. */
  private Optional<Plan> rival(Plan plan, PlanningContext planning) {
    Comparison usual = planning.comparer(player, demands, true).comparePositions(false);
    Comparison others =
        new Comparison(
            usual.passage(),
            usual.plans().stream()
                .filter(other -> !other.sameFingering(plan))
                .collect(ImmutableList.toImmutableList()),
            ImmutableList.of());
    return others.plans().isEmpty()
        ? Optional.empty()
        : Optional.of(Verdict.of(others, planning.scoringContext().level()).plan());
  }

  /** The ladder; empty if a goal, a day or a clean tempo is missing. */
  private Optional<Ladder> ladder(Plan plan, PlanningContext planning) {
    Journal entries = ladder.entries();
    boolean fresh = entries.lastClean(MeasureSpan.WHOLE).isEmpty();
    List<String> missing = new ArrayList<>();
    if (ladder.goal().isEmpty()) {
      missing.add("--to MARK");
    }
    if (ladder.day().isEmpty()) {
      missing.add("--by DATE");
    }
    if (fresh && ladder.clean().isEmpty()) {
      missing.add("--from MARK");
    }
    if (!missing.isEmpty()) {
      if (missing.size() < PARTS) {
        note(
            "the ladder is left to fill in by hand; to plan it, give "
                + String.join(" and ", missing)
                + " too.");
      }
    }
    return TakenHome.ladder(plan, planning, ladder, entries);
  }

  private void remark(int measures, int sides) {
    if (measures > MEASURES && sides > 1) {
      note(
          "one side holds up to %d measures, and there are %d, so the handout has %d sides; choose fewer with --measures."
              .formatted(MEASURES, measures, sides));
    } else if (sides > 1) {
      note(
          "these %d measures have too many notes for one side, so the handout has %d; choose fewer with --measures."
              .formatted(measures, sides));
    }
  }

  private void note(String sentence) {
    spec.commandLine().getErr().println("Note: " + sentence);
  }
}
