package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.NewFiles;
import fingering.cli.json.PlanJson;
import fingering.cli.option.CompletionCandidates;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.HandOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.NoteNamesOption;
import fingering.cli.option.OutputOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreOptions;
import fingering.cli.option.ScoringContext;
import fingering.cli.option.Students;
import fingering.cli.option.WeightsOptions;
import fingering.cli.terminal.ExitCode;
import fingering.cli.text.DemandsText;
import fingering.cli.text.PageOutput;
import fingering.cli.text.ScaleText;
import fingering.exercise.PlannedScale;
import fingering.exercise.ScalePattern;
import fingering.exercise.ScalePlanner;
import fingering.exercise.ScaleRequest;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.ScoreMarker;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlanMarks;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a scale or an arpeggio, and writes it as a new score. */
@Command(
    name = "scale",
    description = "Plans a scale or an arpeggio, and writes it as a new score.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    footer = {
      "",
      "Kinds: major; natural, harmonic and melodic minor (melodic where none is said);",
      "chromatic; major arpeggio, minor arpeggio, dominant seventh, diminished seventh.",
      "",
      "Examples:",
      "  fingering scale D major --instrument viola --octaves 1 --allow 3",
      "  fingering scale 'G# harmonic minor' --instrument violin --octaves 3 --slur 4",
      "  fingering scale H-Dur --instrument cello",
      "  fingering scale Bb major --instrument violin --write b-flat.musicxml"
    })
final class ScaleCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "SCALE",
      arity = "1..*",
      description =
          "Tonic and kind: 'D major', 'G# harmonic minor', 'Bb major arpeggio', 'chromatic on C',"
              + " 'dominant seventh on A'.")
  List<String> words = List.of();

  @Option(
      names = "--instrument",
      paramLabel = "INSTRUMENT",
      converter = ScoreOptions.InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description = "violin, viola, cello or bass; that of the player file otherwise.")
  Optional<Instrument> instrument = Optional.empty();

  @Mixin NoteNamesOption notes = new NoteNamesOption();

  @Mixin InstrumentOptions built = new InstrumentOptions();

  @Option(
      names = "--octaves",
      paramLabel = "N",
      description = "How many octaves up and down: 1 to 5, 2 where not said.")
  int octaves = 2;

  @Option(
      names = "--from",
      paramLabel = "START",
      description =
          "The tonic to begin with, as written: its octave, 4, or the pitch, D4; the lowest from"
              + " which the scale can be planned otherwise.")
  Optional<String> from = Optional.empty();

  @Option(
      names = "--pattern",
      paramLabel = "PATTERN",
      converter = PatternConverter.class,
      description = "steps (the default), thirds (broken) or double-thirds (as double stops).")
  ScalePattern pattern = ScalePattern.STEPS;

  @Option(
      names = "--slur",
      paramLabel = "N",
      description = "Eighths to a bow: 2, 4, 8 and so on; separate bows otherwise.")
  Optional<Integer> slur = Optional.empty();

  @Option(
      names = "--even",
      description = "All notes alike; a scale of seven notes holds its tonics otherwise.")
  boolean even;

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = ScoreOptions.TempoConverter.class,
      description = "Tempo, such as quarter=100; a usual one otherwise.")
  Optional<Tempo> tempo = Optional.empty();

  @Option(
      names = "--write",
      paramLabel = "SCORE",
      description = "Write the scale with its fingering as a new score (.musicxml, .xml or .mxl).")
  Optional<Path> write = Optional.empty();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin HandOptions hand = new HandOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    ScaleRequest request = typed(this::request);
    Optional<Pitch> start =
        typed(() -> from.map(typed -> request.scale().start(notes.pitch(typed, scale()))));
    output.check();
    Students students = player.students();
    ScoringContext charging = weights.charging(students);
    Instrument played = instrument(students);
    LeftHand left = students.hand(hand, played, built.size.isPresent());
    PlannedScale planned =
        ScalePlanner.plan(
            request, played, left, start, passage -> plan(comparer(passage, charging, left)));
    try (NewFiles files = new NewFiles()) {
      write.ifPresent(file -> write(planned, file, files));
      output.print(text(planned, charging, left), files, spec);
    }
    return ExitCode.DONE;
  }

  private String scale() {
    return String.join(" ", words);
  }

  private ScaleRequest request() {
    return new ScaleRequest(notes.scale(scale()), octaves, pattern, even, slur.orElse(0), tempo);
  }

  /** What is read of the command line; what is mistyped there is told as such. */
  private <T> T typed(Supplier<T> reading) {
    try {
      return reading.get();
    } catch (FingeringException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  private Instrument instrument(Students students) {
    Instrument named =
        instrument
            .or(students::instrument)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "a scale needs an instrument; name it with --instrument, say violin"));
    Instrument played =
        built.apply(named, built.size.isPresent() ? built.size : students.size(named));
    students.refuseOtherPatterns(played);
    return played;
  }

  private PlanComparer comparer(Passage passage, ScoringContext charging, LeftHand left) {
    return PlanComparer.of(passage, charging.scoring(), left, demands.allowed())
        .withDemands(demands.of(passage));
  }

  private Plan plan(PlanComparer comparer) {
    return comparer.plan(demands.free());
  }

  private static void write(PlannedScale planned, Path target, NewFiles files) {
    ScoreFile file = planned.exercise().file();
    files.score(
        file.stage(ScoreMarker.mark(file.text(), PlanMarks.of(planned.plan())), target), target);
  }

  private String text(PlannedScale planned, ScoringContext charging, LeftHand left) {
    Plan plan = planned.plan();
    Comparison alone = new Comparison(plan.passage(), ImmutableList.of(plan), ImmutableList.of());
    return switch (output.format()) {
      case TEXT ->
          ScaleText.of(alone, charging, OutputOptions.columns(), output.style())
              + DemandsText.of(
                  alone, comparer(plan.passage(), charging, left), OutputOptions.columns());
      case JSON -> PlanJson.of(plan, charging);
      case HTML, SVG ->
          PageOutput.of(
              output.format(),
              alone,
              comparer(plan.passage(), charging, left),
              charging,
              planned.score().printed(plan.passage(), Optional.empty()));
    };
  }

  static final class PatternConverter implements ITypeConverter<ScalePattern> {
    @Override
    public ScalePattern convert(String text) {
      return ScoreOptions.converted(() -> ScalePattern.named(text));
    }
  }
}
