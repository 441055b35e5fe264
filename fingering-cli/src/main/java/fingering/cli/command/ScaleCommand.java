package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.NewFiles;
import fingering.cli.json.PlanJson;
import fingering.cli.option.CompletionCandidates;
import fingering.cli.option.Converters;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.NoteNamesOption;
import fingering.cli.option.PlayerOptions;
import fingering.cli.output.OutputOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Students;
import fingering.cli.terminal.Screen;
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
import fingering.plan.marks.PlanMarks;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a scale or an arpeggio and writes it as a new score. */
@Command(
    name = "scale",
    description = "Plans a scale or an arpeggio and writes it as a new score.",
    footer = {
      "",
      "Kinds: major; natural, harmonic or melodic minor (default: melodic); chromatic;",
      "major arpeggio, minor arpeggio, dominant seventh, diminished seventh.",
      "",
      "Examples:",
      "  fingering scale D major --instrument viola --octaves 1 --allow 3",
      "  fingering scale 'G# harmonic minor' --instrument violin --octaves 3 --slur 4",
      "  fingering scale H-Dur --instrument cello",
      "  fingering scale Bb major --instrument violin --write b-flat.musicxml"
    })
final class ScaleCommand extends BaseCommand {

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
      converter = Converters.InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description = "violin, viola, cello or bass. Default: from the player file.")
  Optional<Instrument> instrument = Optional.empty();

  @Mixin NoteNamesOption notes = new NoteNamesOption();

  @Mixin InstrumentOptions build = new InstrumentOptions();

  @Option(
      names = "--octaves",
      paramLabel = "N",
      description = "Octaves up and down, 1 to 5. Default: 2.")
  int octaves = 2;

  @Option(
      names = "--from",
      paramLabel = "START",
      description =
          "The tonic to start on, as written: its octave (4) or pitch (D4). Default: the lowest from which the scale can be planned.")
  Optional<String> from = Optional.empty();

  @Option(
      names = "--pattern",
      paramLabel = "PATTERN",
      converter = Converters.ScalePatternConverter.class,
      description = "steps (the default), thirds (broken) or double-thirds (as double stops).")
  ScalePattern pattern = ScalePattern.STEPS;

  @Option(
      names = "--slur",
      paramLabel = "N",
      description = "Eighth notes to a bow: 2, 4, 8 and so on. Default: separate bows.")
  Optional<Integer> slur = Optional.empty();

  @Option(
      names = "--even",
      description =
          "Give all notes the same length. By default, a scale of seven notes holds its tonics.")
  boolean even;

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = Converters.TempoConverter.class,
      description = "The tempo, such as quarter=100. Default: a usual tempo for scales.")
  Optional<Tempo> tempo = Optional.empty();

  @Option(
      names = "--write",
      paramLabel = "SCORE",
      description = "Write the scale with its fingering to a new score (.musicxml, .xml or .mxl).")
  Optional<Path> write = Optional.empty();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    ScaleRequest request = Converters.parsed(spec, this::request);
    Optional<Pitch> start =
        Converters.parsed(
            spec, () -> from.map(text -> request.scale().start(notes.pitch(text, scale()))));
    output.check();
    Students students = player.students();
    ScoringContext context = player.weights.scoring(students);
    Instrument played = instrument(students);
    LeftHand left = player.hand(students, played, build);
    PlannedScale planned =
        ScalePlanner.plan(
            request, played, left, start, passage -> plan(comparer(passage, context, left)));
    try (NewFiles files = new NewFiles()) {
      write.ifPresent(file -> write(planned, file, files));
      output.print(text(planned, context, left), files, spec);
    }
    return ExitCode.DONE;
  }

  private String scale() {
    return String.join(" ", words);
  }

  private ScaleRequest request() {
    return new ScaleRequest(notes.scale(scale()), octaves, pattern, even, slur.orElse(0), tempo);
  }

  private Instrument instrument(Students students) {
    Instrument named =
        instrument
            .or(students::instrument)
            .orElseThrow(
                () ->
                    usageError(
                        "a scale needs an instrument; name it with --instrument, such as violin"));
    Instrument played = build.apply(named, students);
    students.requirePatterns(played);
    return played;
  }

  private PlanComparer comparer(Passage passage, ScoringContext context, LeftHand left) {
    return PlanComparer.of(passage, context.scoring(), left, demands.allowedPositions())
        .withDemands(demands.of(passage));
  }

  private Plan plan(PlanComparer comparer) {
    return comparer.plan(demands.freeBrief());
  }

  private static void write(PlannedScale planned, Path target, NewFiles files) {
    ScoreFile file = planned.exercise().file();
    files.score(file, ScoreMarker.mark(file.text(), PlanMarks.of(planned.plan())), target);
  }

  private String text(PlannedScale planned, ScoringContext context, LeftHand left) {
    Plan plan = planned.plan();
    Comparison alone = new Comparison(plan.passage(), ImmutableList.of(plan), ImmutableList.of());
    return switch (output.format()) {
      case TEXT ->
          ScaleText.of(alone, context, Screen.columns(), output.style())
              + DemandsText.of(
                  plan,
                  comparer(plan.passage(), context, left),
                  false,
                  Screen.columns(),
                  output.style());
      case JSON ->
          PlanJson.of(
              plan,
              comparer(plan.passage(), context, left).withDemands(ImmutableList.of())::plan,
              context);
      case HTML, SVG ->
          PageOutput.of(
              output.format(),
              alone,
              comparer(plan.passage(), context, left),
              context,
              planned.score().printed(plan.passage(), Optional.empty()));
    };
  }
}
