package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.cli.file.NewFiles;
import fingering.cli.file.OutputFile;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.HandOptions;
import fingering.cli.option.PlanChoice;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.PracticeOutput;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.option.WeightsOptions;
import fingering.cli.practice.JournalText;
import fingering.cli.practice.PracticeCalendar;
import fingering.cli.practice.PracticeText;
import fingering.cli.practice.PracticeWords;
import fingering.cli.practice.ProgressSvg;
import fingering.cli.practice.SpotsText;
import fingering.cli.terminal.Dates;
import fingering.cli.terminal.ExitCode;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.page.PracticeContent;
import fingering.page.PracticePage;
import fingering.plan.Plan;
import fingering.practice.Circle;
import fingering.practice.CircleFinder;
import fingering.practice.Journal;
import fingering.practice.JournalFile;
import fingering.practice.MetronomeScale;
import fingering.practice.PracticePlan;
import fingering.practice.PracticeSpot;
import fingering.practice.PracticeSpots;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Sets the practice of a plan until the day it is played. */
@Command(
    name = "practice",
    description = "Sets what to practise each day until the day on which the piece is played.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    footer = {
      "",
      "Examples:",
      "  fingering practice docs/demo/demo.musicxml --from quarter=60 \\",
      "    --to quarter=96 --by 2026-12-12",
      "  fingering practice docs/demo/demo.musicxml --from half=36 \\",
      "    --to half=48 --by 2026-12-12 --rest-days sat,sun",
      "  fingering journal add --clean quarter=63 --journal my.journal",
      "  fingering practice docs/demo/demo.musicxml --to quarter=96 \\",
      "    --by 2026-12-12 --journal my.journal --output week.html --format html"
    })
final class PracticeCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin ScoreArgument score = new ScoreArgument();

  @Option(
      names = "--from",
      paramLabel = "MARK",
      converter = ScoreOptions.TempoConverter.class,
      description =
          "The tempo that is clean now, such as quarter=72; what the journal tells counts before it.")
  Optional<Tempo> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "MARK",
      required = true,
      converter = ScoreOptions.TempoConverter.class,
      description = "The tempo at the beginning, on the day itself.")
  Tempo to;

  @Option(
      names = "--by",
      paramLabel = "DATE",
      required = true,
      converter = Dates.DateConverter.class,
      description = "The day on which it is played: 2026-12-12.")
  LocalDate by;

  @Option(
      names = "--today",
      paramLabel = "DATE",
      converter = Dates.DateConverter.class,
      description = "The day to plan from; the date of the computer otherwise.")
  Optional<LocalDate> today = Optional.empty();

  @Option(
      names = "--rest-days",
      paramLabel = "DAYS",
      split = ",",
      converter = Dates.WeekdayConverter.class,
      description = "Days of the week without practice: sun, or sat,sun.")
  List<DayOfWeek> rest = List.of();

  @Option(
      names = "--metronome",
      paramLabel = "KIND",
      description =
          "exact (the default): every whole number; traditional: the marks of a pendulum metronome.")
  MetronomeScale metronome = MetronomeScale.EXACT;

  @Option(
      names = "--journal",
      paramLabel = "FILE",
      description = "The journal that tells what was clean; see 'journal'.")
  Optional<Path> journal = Optional.empty();

  @Option(
      names = "--calendar",
      paramLabel = "FILE",
      description = "Write the days into this new calendar file too (.ics, iCalendar).")
  Optional<Path> calendar = Optional.empty();

  @Option(
      names = "--exercises",
      paramLabel = "FOLDER",
      description = "Write an exercise for each practice spot into this folder (MusicXML).")
  Optional<Path> exercises = Optional.empty();

  @Mixin PlanChoice chosen = new PlanChoice();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin HandOptions hand = new HandOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin PracticeOutput output = new PracticeOutput();

  private final Clock clock;

  PracticeCommand() {
    this(Clock.system(ZoneId.systemDefault()));
  }

  PracticeCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() {
    output.check();
    chosen.check();
    calendar.ifPresent(path -> OutputFile.refuse(path, "--calendar"));
    PlanningContext set = PlanningContext.read(score.read(), reading, player, weights);
    Plan plan =
        chosen.plan(
            set.comparer(hand, demands, !chosen.free()), chosen.brief(demands, set.passage()));
    Journal known = journal.map(path -> new JournalFile(path).read()).orElse(Journal.EMPTY);
    PracticePlan practice =
        PracticePlan.of(
            plan,
            set.charging().level(),
            new PracticePlan.Request(
                from,
                to,
                today.orElseGet(() -> LocalDate.now(clock)),
                by,
                ImmutableSet.copyOf(rest),
                metronome),
            known);
    PracticeWords words = new PracticeWords(practice, known.lastClean(MeasureSpan.WHOLE).isEmpty());
    ImmutableList<PracticeSpot> spots = PracticeSpots.of(plan, set.charging().level());
    Optional<SpotsText.Exercises> written =
        exercises.map(folder -> new SpotsText.Exercises(folder, spots));
    String text =
        switch (output.format()) {
          case TEXT -> {
            List<String> told = SpotsText.of(spots, written, OutputFile.columns(), output.style());
            yield PracticeText.of(words, known, told, OutputFile.columns(), output.style());
          }
          case HTML ->
              page(
                  words,
                  known,
                  SpotsText.paragraphs(spots, written),
                  CircleFinder.of(set.passage(), set.printed()));
        };
    try (NewFiles files = new NewFiles()) {
      written.ifPresent(all -> all.write(files));
      calendar.ifPresent(
          path -> files.text(PracticeCalendar.of(practice, clock.instant()), path, "--calendar"));
      output.print(text, files, spec);
    }
    return ExitCode.DONE;
  }

  private String page(
      PracticeWords words,
      Journal known,
      ImmutableList<String> spots,
      ImmutableList<Circle> circles) {
    return PracticePage.of(
        new PracticeContent(
            words.title(),
            words.about(),
            words.day(),
            words.today(),
            words.practised() ? spots : ImmutableList.of(),
            words.columns(),
            words.rows(),
            words.figures(),
            circles,
            ProgressSvg.drawn(known, Optional.of(to), ProgressSvg.Size.PAGE),
            journalTold(known),
            PracticeText.CARE));
  }

  /** What is wrong with the journal, or that it has nothing to draw. */
  private ImmutableList<String> journalTold(Journal known) {
    boolean nothing = journal.isPresent() && !ProgressSvg.drawable(known);
    return nothing
        ? ImmutableList.<String>builder()
            .addAll(JournalText.problems(known))
            .add("No clean tempo is in the journal yet.")
            .build()
        : ImmutableList.copyOf(JournalText.problems(known));
  }
}
