package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.BriefFile;
import fingering.cli.json.PlanJson;
import fingering.cli.lesson.LessonPassages;
import fingering.cli.lesson.LessonPlans;
import fingering.cli.lesson.LessonsOption;
import fingering.cli.lesson.SaveLessonOption;
import fingering.cli.option.Converters;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.DetailOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.output.OutputOptions;
import fingering.cli.terminal.NextCommand;
import fingering.cli.terminal.Screen;
import fingering.cli.text.LessonsText;
import fingering.cli.text.PageOutput;
import fingering.cli.text.PlansText;
import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.plan.Brief;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows plans side by side. */
@Command(
    name = "compare",
    description =
        "Compares a plan in first position with one that stays in a higher position: what each costs, and up to which tempo it is comfortable.",
    footer = {
      "",
      "The higher plan stays in 3rd position (cello: 4th), even if that costs more,",
      "and leaves it only for notes out of reach there. 'partly 3rd' is the cheapest",
      "plan with a stay there, if it differs.",
      "",
      "Examples:",
      "  fingering compare docs/demo/demo.musicxml",
      "  fingering compare docs/demo/demo.musicxml --measures 'A to B' --with-second",
      "  fingering compare docs/demo/demo.musicxml --plan 'low=allow 1,half' \\",
      "    --plan 'high=show 3=8'",
      "  fingering compare docs/demo/demo.musicxml --format html --output plans.html"
    })
final class CompareCommand extends BaseCommand {
  /** Columns to the left of the next command. */
  static final int INDENT = 2;

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin LessonsOption lessons = new LessonsOption();

  @Mixin SaveLessonOption saving = new SaveLessonOption();

  @Option(
      names = "--choose",
      paramLabel = "PLAN",
      description =
          "With --save-lesson: the plan that the lesson takes: first, third, partly, second, free, or the name of a plan of your own.")
  Optional<String> choose = Optional.empty();

  @Option(
      names = "--with-second",
      description = "Add the plan that shows 1st, 2nd and 3rd position.")
  boolean withSecond;

  @Option(
      names = "--plan",
      paramLabel = "NAME=DEMANDS",
      description =
          "Compare plans of your own instead. Give a name and demands, which are named like the options: 'up early=show 3=8; avoid open-strings'. Repeat for each plan.")
  List<String> plans = List.of();

  @Option(
      names = "--briefs",
      paramLabel = "FILE",
      description = "Compare the plans in a file of briefs (YAML or JSON).")
  Optional<Path> briefs = Optional.empty();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin DetailOptions detail = new DetailOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    ImmutableList<StoredLesson> read = lessons.read();
    saving.check();
    if (choose.isPresent() && !saving.given()) {
      throw usageError("--choose says which plan --save-lesson saves; give --save-lesson too");
    }
    if (read.size() > 1) {
      return sideBySide(read);
    }
    Optional<StoredLesson> lesson = read.stream().findFirst();
    lesson.ifPresent(this::take);
    ImmutableList<LessonPlan> toSave = plansToSave(lesson);
    int code = compare(score.read(), lesson);
    if (saving.given()) {
      saving.save(
          saving.choosing(saving.typed(lesson, score, reading, player), toSave), lesson, spec);
    }
    return code;
  }

  /** Read before the plans are made, so that a wrong name is reported at once. */
  private ImmutableList<LessonPlan> plansToSave(Optional<StoredLesson> lesson) {
    return saving.given()
        ? Converters.parsed(spec, () -> LessonPlans.chosen(choose, plans, demands, lesson))
        : ImmutableList.of();
  }

  /** Takes from a lesson what is not typed. */
  private void take(StoredLesson lesson) {
    score.from(lesson);
    reading.from(lesson, score);
    player.from(lesson);
  }

  private int sideBySide(ImmutableList<StoredLesson> all) {
    if (saving.given() || output.format() != OutputOptions.Format.TEXT) {
      throw usageError(
          "several lessons are printed side by side as text; leave out --save-lesson and --format");
    }
    output.check();
    output.print(LessonsText.of(LessonPassages.of(all), Screen.columns(), output.style()), spec);
    return ExitCode.DONE;
  }

  int compare(ScoreFile file, Optional<StoredLesson> lesson) {
    output.check();
    PlanningContext planning = PlanningContext.read(file, reading, player);
    ImmutableList<Brief> own = ownBriefs(planning.passage());
    PlanComparer comparer = planning.comparer(player, demands, true);
    Comparison comparison =
        own.isEmpty()
            ? withLesson(comparer.comparePositions(withSecond), lesson, planning)
            : comparer.compareBriefs(own);
    String text =
        switch (output.format()) {
          case TEXT ->
              PlansText.of(
                  comparison,
                  comparer,
                  planning.scoringContext(),
                  detail,
                  this::next,
                  Screen.columns(),
                  output.style());
          case JSON ->
              PlanJson.of(
                  comparison,
                  comparer.withDemands(ImmutableList.of())::plan,
                  planning.scoringContext());
          case HTML, SVG -> PageOutput.of(output.format(), comparison, comparer, planning);
        };
    output.print(text, spec);
    return ExitCode.DONE;
  }

  /** The command that writes a plan into a copy of the score; none for plans of the user's own. */
  private List<String> next(Plan plan) {
    if (!plans.isEmpty() || briefs.isPresent()) {
      return List.of();
    }
    if (spec.name().equals(DemoCommand.NAME)) {
      return List.of("fingering open", "fingering compare part.musicxml");
    }
    Optional<String> choice =
        plan.name().equals(PlanComparer.AS_PRINTED)
            ? Optional.of("--keep-printed")
            : PlanName.named(plan).map(name -> "--choose " + name.word());
    List<String> more = new ArrayList<>(choice.stream().toList());
    if (reading.excerpt()) {
      more.add("--only excerpt");
    }
    more.add("--write marked.musicxml");
    saving.file().or(lessons::single).ifPresent(file -> more.add("--save-lesson " + file));
    return NextCommand.lines(spec, saving.file(), "plan", more, Screen.columns() - INDENT);
  }

  /** The usual plans, and those of the lesson. */
  private Comparison withLesson(
      Comparison usual, Optional<StoredLesson> lesson, PlanningContext planning) {
    ImmutableList.Builder<Plan> all = ImmutableList.builder();
    all.addAll(usual.plans());
    lesson.ifPresent(
        stored ->
            LessonPlans.own(stored)
                .forEach(
                    plan -> all.add(LessonPlans.plan(stored, plan, planning, player, demands))));
    return new Comparison(usual.passage(), all.build(), usual.remarks(), usual.details());
  }

  /** The briefs to compare instead of the usual plans. */
  private ImmutableList<Brief> ownBriefs(Passage passage) {
    ImmutableList.Builder<Brief> all = ImmutableList.builder();
    briefs.ifPresent(file -> all.addAll(BriefFile.read(file, passage)));
    plans.forEach(text -> all.add(BriefFile.typed(text, passage)));
    return all.build();
  }
}
