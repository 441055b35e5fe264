package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.BriefFile;
import fingering.cli.file.NewFiles;
import fingering.cli.json.PlanJson;
import fingering.cli.lesson.LessonOption;
import fingering.cli.lesson.SaveLessonOption;
import fingering.cli.option.Converters;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.DetailOptions;
import fingering.cli.option.PlanChoice;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.option.WriteOptions;
import fingering.cli.output.OutputOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.NextCommand;
import fingering.cli.terminal.Screen;
import fingering.cli.text.ChoicesText;
import fingering.cli.text.PageOutput;
import fingering.cli.text.PlansText;
import fingering.cli.text.WhyText;
import fingering.demand.MeasureSpan;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.music.MeasureBeat;
import fingering.music.Passage;
import fingering.plan.Alternative;
import fingering.plan.Brief;
import fingering.plan.Choice;
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

/** Makes a plan, explains it, and writes it into a copy of the score. */
@Command(
    name = "plan",
    description =
        "Finds the best fingering that meets your demands, explains it, and writes it into a copy of the score.",
    footer = {
      "",
      "Examples:",
      "  fingering plan docs/demo/demo.musicxml --allow 1,half",
      "  fingering plan docs/demo/demo.musicxml --why 17.1",
      "  fingering plan docs/demo/demo.musicxml --show 3=8 --avoid extensions",
      "  fingering plan docs/demo/demo.musicxml --choose third --write marked.musicxml"
    })
final class PlanCommand extends BaseCommand {
  /** The most plans shown side by side. */
  private static final int MAX_BEST = 20;

  /** Number of fingerings that --why compares, including that of the plan. */
  private static final int ALTERNATIVES = 4;

  /** Number of fingerings that --choices lists, including that of the plan. */
  private static final int CHOICES = 4;

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin LessonOption lessonOption = new LessonOption();

  @Mixin SaveLessonOption saving = new SaveLessonOption();

  @Mixin PlanChoice chosen = new PlanChoice();

  @Option(
      names = "--best",
      paramLabel = "N",
      description =
          "Show the N best plans side by side, 1 to 20. Each differs from the others in a string or position.")
  Optional<Integer> best = Optional.empty();

  @Option(
      names = "--why",
      paramLabel = "M.BEAT",
      converter = Converters.MeasureBeatConverter.class,
      description =
          "Explain the fingering of a note, compared with the next best: measure as printed and beat, such as 17.2, or 17.2.5 for beat 2.5.")
  Optional<MeasureBeat> why = Optional.empty();

  @Option(
      names = "--choices",
      paramLabel = "MEASURES",
      converter = Converters.MeasureSpanConverter.class,
      description =
          "List fingerings of these measures (17 or 17-18), best first, and what each changes before and after: 4, or as many as --best gives.")
  Optional<MeasureSpan> choices = Optional.empty();

  @Mixin WriteOptions writing = new WriteOptions();

  @Option(
      names = "--brief",
      paramLabel = "FILE",
      description = "Demands from a file (YAML or JSON) with one brief.")
  Optional<Path> briefFile = Optional.empty();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin DetailOptions detail = new DetailOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    boolean replaced = chosen.given();
    Optional<StoredLesson> lesson = lessonOption.read();
    lesson.ifPresent(this::take);
    saving.check();
    chosen.check();
    if (choices.isPresent() && why.isPresent()) {
      throw usageError(
          "--why explains one note and --choices lists fingerings of measures; give only one");
    }
    if (output.format().drawn() && (choices.isPresent() || why.isPresent())) {
      throw usageError("--why and --choices print text or json only; leave out html and svg");
    }
    writing.check(reading);
    best.ifPresent(this::checkBest);
    output.check();
    PlanningContext planning = PlanningContext.read(score.read(), reading, player);
    PlanComparer comparer = planning.comparer(player, demands, !chosen.isFree());
    try (NewFiles files = new NewFiles()) {
      String text =
          best.isPresent() && choices.isEmpty()
              ? best(comparer, planning)
              : one(comparer, planning, files);
      output.print(text, files, spec);
    }
    if (saving.given()) {
      Lesson typed = saving.typed(lesson, score, reading, player);
      saving.save(
          saving.choosing(typed, chosen.forLesson(demands, lesson, replaced).stream().toList()),
          lesson,
          spec);
    }
    return ExitCode.DONE;
  }

  /** Takes from a lesson what is not typed. The best plans, and a brief, replace its plan. */
  private void take(StoredLesson lesson) {
    score.from(lesson);
    reading.from(lesson, score);
    player.from(lesson);
    if (briefFile.isEmpty() && (best.isEmpty() || choices.isPresent())) {
      chosen.from(lesson, demands);
    }
  }

  private void checkBest(int plans) {
    if (why.isPresent()) {
      throw usageError("--why explains one plan and --best shows several; give only one");
    }
    if (plans < 1 || plans > MAX_BEST) {
      throw usageError("--best " + plans + " is out of range; ask for 1 to " + MAX_BEST);
    }
    if (choices.isPresent()) {
      return;
    }
    if (!chosen.isFree()) {
      throw usageError("--best shows the cheapest plans; leave out --choose");
    }
    if (writing.wanted()) {
      throw usageError("--write writes one plan and --best shows several; give only one");
    }
  }

  private String why(MeasureBeat when, Plan plan, PlanComparer comparer, ScoringContext context) {
    ImmutableList<Alternative> alternatives =
        comparer.alternatives(plan.brief(), when.indexIn(plan.passage()), ALTERNATIVES);
    return output.format() == OutputOptions.Format.JSON
        ? PlanJson.of(plan, alternatives, comparer.withDemands(ImmutableList.of())::plan, context)
        : WhyText.of(alternatives, context, Screen.columns(), output.style());
  }

  private String choices(
      MeasureSpan span, Plan plan, PlanComparer comparer, ScoringContext context) {
    int number = best.orElse(CHOICES);
    ImmutableList<Choice> fingerings = comparer.choices(plan.brief(), span, number);
    return output.format() == OutputOptions.Format.JSON
        ? PlanJson.ofChoices(
            plan, fingerings, comparer.withDemands(ImmutableList.of())::plan, context)
        : ChoicesText.of(fingerings, span, number, context, Screen.columns(), output.style());
  }

  private String best(PlanComparer comparer, PlanningContext planning) {
    Comparison several = comparer.best(brief(planning.passage()), best.get());
    return switch (output.format()) {
      case TEXT -> text(several, comparer, planning, List.of());
      case JSON ->
          PlanJson.of(
              several, comparer.withDemands(ImmutableList.of())::plan, planning.scoringContext());
      case HTML, SVG -> PageOutput.of(output.format(), several, comparer, planning);
    };
  }

  private String one(PlanComparer comparer, PlanningContext planning, NewFiles files) {
    Passage passage = planning.passage();
    ScoringContext context = planning.scoringContext();
    Plan plan = chosen.plan(comparer, brief(passage));
    // Explain before writing: if there is no such note, no file is left behind.
    Optional<String> explanation =
        why.map(when -> why(when, plan, comparer, context))
            .or(() -> choices.map(span -> choices(span, plan, comparer, context)));
    writing.write(plan, planning, files);
    if (explanation.isPresent()) {
      return explanation.get();
    }
    Comparison alone = new Comparison(passage, ImmutableList.of(plan), ImmutableList.of());
    return switch (output.format()) {
      case TEXT -> text(alone, comparer, planning, next(passage));
      case JSON -> PlanJson.of(plan, comparer.withDemands(ImmutableList.of())::plan, context);
      case HTML, SVG -> PageOutput.of(output.format(), alone, comparer, planning);
    };
  }

  private String text(
      Comparison plans, PlanComparer comparer, PlanningContext planning, List<String> next) {
    return PlansText.of(
        plans,
        comparer,
        planning.scoringContext(),
        detail,
        plan -> next,
        Screen.columns(),
        output.style());
  }

  /** The command that writes the plan, or if it is being written, the one that practises it. */
  private List<String> next(Passage passage) {
    List<String> more = new ArrayList<>();
    if (!chosen.isFree() && saving.file().or(lessonOption::file).isEmpty()) {
      more.add("--choose " + chosen.name().word());
    }
    if (writing.wanted()) {
      more.add("--from MARK --to " + passage.tempo() + " --by DATE");
    } else {
      more.addAll(reading.excerpt() ? List.of("--only excerpt") : List.of());
      more.add("--write marked.musicxml");
    }
    return NextCommand.lines(
        spec,
        saving.file(),
        writing.wanted() ? "practice" : "plan",
        more,
        Screen.columns() - CompareCommand.INDENT);
  }

  private Brief brief(Passage passage) {
    return briefFile.isPresent()
        ? chosen.keepingPrinted(BriefFile.readOne(briefFile.get(), passage))
        : chosen.freeBrief(demands, passage);
  }
}
