package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.BriefFile;
import fingering.cli.file.NewFiles;
import fingering.cli.json.PlanJson;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.HandOptions;
import fingering.cli.option.OutputOptions;
import fingering.cli.option.PlanChoice;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.option.ScoringContext;
import fingering.cli.option.WeightsOptions;
import fingering.cli.terminal.ExitCode;
import fingering.cli.text.ChoicesText;
import fingering.cli.text.ComparisonText;
import fingering.cli.text.DemandsText;
import fingering.cli.text.PageOutput;
import fingering.cli.text.WhyText;
import fingering.demand.MeasureSpan;
import fingering.music.MeasureBeat;
import fingering.music.Passage;
import fingering.musicxml.marking.NoteMarks;
import fingering.musicxml.marking.ScoreMarker;
import fingering.plan.Alternative;
import fingering.plan.Brief;
import fingering.plan.Choice;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlanMarks;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Makes one plan, and writes it into a copy of the score. */
@Command(
    name = "plan",
    description =
        "Makes the best fingering that meets what you ask for, tells why, and writes it into a copy of the score.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    footer = {
      "",
      "Examples:",
      "  fingering plan docs/demo/demo.musicxml --allow 1,half",
      "  fingering plan docs/demo/demo.musicxml --why 17.1",
      "  fingering plan docs/demo/demo.musicxml --show 3=8 --avoid extensions",
      "  fingering plan docs/demo/demo.musicxml --choose third --write marked.musicxml"
    })
final class PlanCommand implements Callable<Integer> {
  /** The most plans that are shown side by side. */
  private static final int MOST = 20;

  /** How many ways to take a note are told, that of the plan among them. */
  private static final int WAYS = 4;

  /** How many ways to take some measures are told, that of the plan among them. */
  private static final int CHOICES = 4;

  @Spec CommandSpec spec;

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin PlanChoice chosen = new PlanChoice();

  @Option(
      names = "--best",
      paramLabel = "N",
      description =
          "Show the N best plans side by side, 1 to 20; each has another string or position somewhere than the others.")
  Optional<Integer> best = Optional.empty();

  @Option(
      names = "--why",
      paramLabel = "M.BEAT",
      converter = WhenConverter.class,
      description =
          "Tell why a note is taken so and not the next best way: measure as printed and beat as counted, such as 17.2, or 17.2.5 for beat 2.5.")
  Optional<MeasureBeat> why = Optional.empty();

  @Option(
      names = "--choices",
      paramLabel = "MEASURES",
      converter = SpanConverter.class,
      description =
          "The ways to take these measures, 17 or 17-18, best first, and what each forces before and after; 4, or as many as --best says.")
  Optional<MeasureSpan> choices = Optional.empty();

  @Option(
      names = "--write",
      paramLabel = "MARKED",
      description = "Write the plan into a new copy of the score (.musicxml, .xml or .mxl).")
  Optional<Path> write = Optional.empty();

  @Option(
      names = "--sparing",
      description =
          "With --write: mark only what a player needs who keeps the hand where it is: shifts, fourth fingers where the string is open too, stretches, slides, double stops. To keep the plan with --keep-printed, write it in full.")
  boolean sparing;

  @Option(
      names = "--brief",
      paramLabel = "FILE",
      description = "What the plan must meet, from a file (YAML or JSON) with one brief.")
  Optional<Path> briefFile = Optional.empty();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin HandOptions hand = new HandOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    chosen.check();
    if (choices.isPresent() && why.isPresent()) {
      throw new ParameterException(
          spec.commandLine(), "--why asks about one note and --choices about measures; give one");
    }
    if (output.format().drawn() && (choices.isPresent() || why.isPresent())) {
      throw new ParameterException(
          spec.commandLine(),
          "--why and --choices are told as text or json; leave --format html or svg out");
    }
    if (sparing && write.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "--sparing says how --write marks the copy; give --write too");
    }
    best.ifPresent(this::checkBest);
    output.check();
    PlanningContext set = PlanningContext.read(score.read(), reading, player, weights);
    PlanComparer comparer = set.comparer(hand, demands, !chosen.free());
    try (NewFiles files = new NewFiles()) {
      String text =
          best.isPresent() && choices.isEmpty() ? best(comparer, set) : one(comparer, set, files);
      output.print(text, files, spec);
    }
    return ExitCode.DONE;
  }

  private void checkBest(int plans) {
    if (why.isPresent()) {
      throw new ParameterException(
          spec.commandLine(), "--why asks about one plan and --best shows several; give one");
    }
    if (plans < 1 || plans > MOST) {
      throw new ParameterException(
          spec.commandLine(), "--best " + plans + " is out of range; ask for 1 to " + MOST);
    }
    if (choices.isPresent()) {
      return;
    }
    if (!chosen.free()) {
      throw new ParameterException(
          spec.commandLine(), "--best shows plans of free choice; leave out --choose");
    }
    if (write.isPresent()) {
      throw new ParameterException(
          spec.commandLine(), "--write writes one plan and --best shows several; give one");
    }
  }

  private String why(MeasureBeat when, Plan plan, PlanComparer comparer, ScoringContext charging) {
    ImmutableList<Alternative> ways =
        comparer.alternatives(plan.brief(), when.in(plan.passage()), WAYS);
    return output.format() == OutputOptions.Format.JSON
        ? PlanJson.of(plan, ways, charging)
        : WhyText.of(ways, charging, OutputOptions.columns(), output.style());
  }

  private String choices(
      MeasureSpan span, Plan plan, PlanComparer comparer, ScoringContext charging) {
    int wanted = best.orElse(CHOICES);
    ImmutableList<Choice> ways = comparer.choices(plan.brief(), span, wanted);
    return output.format() == OutputOptions.Format.JSON
        ? PlanJson.ofChoices(plan, ways, charging)
        : ChoicesText.of(ways, span, wanted, charging, OutputOptions.columns(), output.style());
  }

  private String best(PlanComparer comparer, PlanningContext set) {
    Comparison several = comparer.best(free(set.passage()), best.get());
    return switch (output.format()) {
      case TEXT ->
          ComparisonText.of(several, set.charging(), OutputOptions.columns(), output.style());
      case JSON -> PlanJson.of(several, set.charging());
      case HTML, SVG -> PageOutput.of(output.format(), several, comparer, set);
    };
  }

  private String one(PlanComparer comparer, PlanningContext set, NewFiles files) {
    Passage passage = set.passage();
    ScoringContext charging = set.charging();
    Plan plan = chosen.plan(comparer, free(passage));
    // Before anything is written, so that a moment that is not there leaves no file behind.
    Optional<String> told =
        why.map(when -> why(when, plan, comparer, charging))
            .or(() -> choices.map(span -> choices(span, plan, comparer, charging)));
    if (write.isPresent()) {
      files.score(
          set.file().stage(ScoreMarker.mark(set.file().text(), marks(plan)), write.get()),
          write.get());
    }
    if (told.isPresent()) {
      return told.get();
    }
    Comparison alone = new Comparison(passage, ImmutableList.of(plan), ImmutableList.of());
    return switch (output.format()) {
      case TEXT ->
          ComparisonText.of(alone, charging, OutputOptions.columns(), output.style())
              + DemandsText.of(alone, comparer, OutputOptions.columns());
      case JSON -> PlanJson.of(plan, charging);
      case HTML, SVG -> PageOutput.of(output.format(), alone, comparer, set);
    };
  }

  private ImmutableList<NoteMarks> marks(Plan plan) {
    return sparing ? PlanMarks.sparing(plan) : PlanMarks.of(plan);
  }

  private Brief free(Passage passage) {
    return briefFile.isPresent()
        ? chosen.kept(BriefFile.readOne(briefFile.get(), passage))
        : chosen.brief(demands, passage);
  }

  static final class SpanConverter implements ITypeConverter<MeasureSpan> {
    @Override
    public MeasureSpan convert(String text) {
      return ScoreOptions.converted(() -> MeasureSpan.parse(text));
    }
  }

  static final class WhenConverter implements ITypeConverter<MeasureBeat> {
    @Override
    public MeasureBeat convert(String text) {
      return ScoreOptions.converted(() -> MeasureBeat.parse(text));
    }
  }
}
