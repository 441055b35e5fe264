package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.NewFiles;
import fingering.cli.file.OutputPaths;
import fingering.cli.lesson.LessonOption;
import fingering.cli.lesson.SaveLessonOption;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.LadderOptions;
import fingering.cli.option.MidiOptions;
import fingering.cli.option.PlanChoice;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.output.PracticeOutput;
import fingering.cli.practice.JournalText;
import fingering.cli.practice.PracticeCalendar;
import fingering.cli.practice.PracticeMidi;
import fingering.cli.practice.PracticeText;
import fingering.cli.practice.PracticeWords;
import fingering.cli.practice.ProgressSvg;
import fingering.cli.practice.SpotsText;
import fingering.cli.terminal.Screen;
import fingering.demand.MeasureSpan;
import fingering.lesson.Hearing;
import fingering.lesson.Lesson;
import fingering.lesson.LessonCircles;
import fingering.lesson.StoredLesson;
import fingering.page.PracticePage;
import fingering.page.view.PracticeContent;
import fingering.page.view.PractisedSpot;
import fingering.plan.Plan;
import fingering.practice.Circle;
import fingering.practice.CircleFinder;
import fingering.practice.Journal;
import fingering.practice.PracticePlan;
import fingering.practice.PracticeSpot;
import fingering.practice.PracticeSpots;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans the practice of a piece until the day of the performance. */
@Command(
    name = "practice",
    description = "Plans what to practise each day until the performance.",
    footer = {
      "",
      "Examples:",
      "  fingering practice docs/demo/demo.musicxml --from quarter=60 \\",
      "    --to quarter=96 --by 2026-12-12",
      "  fingering practice docs/demo/demo.musicxml --from quarter=72 \\",
      "    --to quarter=96 --by 2026-12-12 --rest-days sat,sun",
      "  fingering journal add --clean quarter=63 --journal my.journal",
      "  fingering practice docs/demo/demo.musicxml --to quarter=96 \\",
      "    --by 2026-12-12 --journal my.journal --output week.html --format html"
    })
final class PracticeCommand extends BaseCommand {

  @Mixin ScoreArgument score = new ScoreArgument();

  @Mixin LadderOptions ladder = new LadderOptions();

  @Option(
      names = "--calendar",
      paramLabel = "FILE",
      description = "Also write the days to a new calendar file (.ics, iCalendar).")
  Optional<Path> calendar = Optional.empty();

  @Option(
      names = "--exercises",
      paramLabel = "FOLDER",
      description = "Write an exercise for each practice spot into this folder (MusicXML).")
  Optional<Path> exercises = Optional.empty();

  @Mixin MidiOptions midi = new MidiOptions();

  @Mixin PlanChoice chosen = new PlanChoice();

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Mixin DemandOptions demands = new DemandOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin LessonOption lessonOption = new LessonOption();

  @Mixin SaveLessonOption saving = new SaveLessonOption();

  @Mixin PracticeOutput output = new PracticeOutput();

  private final Clock clock = Clock.system(ZoneId.systemDefault());

  @Override
  public Integer call() {
    boolean replaced = chosen.given();
    Optional<StoredLesson> lesson = lessonOption.read();
    lesson.ifPresent(this::take);
    requireGoal();
    output.check();
    saving.check();
    chosen.check();
    calendar.ifPresent(path -> OutputPaths.requireNew(path, "--calendar"));
    midi.check();
    PlanningContext planning = PlanningContext.read(score.read(), reading, player);
    Plan plan =
        chosen.plan(
            planning.comparer(player, demands, !chosen.isFree()),
            chosen.freeBrief(demands, planning.passage()));
    Journal entries = ladder.entries();
    PracticePlan practice =
        PracticePlan.of(plan, planning.scoringContext().level(), ladder.request(), entries);
    PracticeWords words =
        new PracticeWords(practice, entries.lastClean(MeasureSpan.WHOLE).isEmpty());
    ImmutableList<PracticeSpot> spots = PracticeSpots.of(plan, planning.scoringContext().level());
    Optional<SpotsText.Exercises> written =
        exercises.map(folder -> new SpotsText.Exercises(folder, spots));
    String text =
        switch (output.format()) {
          case TEXT -> {
            List<String> spotsText = SpotsText.of(spots, written, Screen.columns(), output.style());
            yield PracticeText.of(words, entries, spotsText, Screen.columns(), output.style());
          }
          case HTML ->
              page(
                  words,
                  entries,
                  SpotsText.onPage(spots, written),
                  lesson
                      .map(one -> one.lesson().circles())
                      .orElse(LessonCircles.ALL)
                      .of(CircleFinder.of(plan, planning.printed())));
        };
    try (NewFiles files = new NewFiles()) {
      written.ifPresent(all -> all.write(files));
      calendar.ifPresent(
          path ->
              files.text(
                  PracticeCalendar.of(practice, score.fileName(), clock.instant()),
                  path,
                  "--calendar"));
      midi.file()
          .ifPresent(
              path ->
                  files.bytes(
                      PracticeMidi.of(plan.passage(), planning.printed(), midi.tempo(practice)),
                      path,
                      "--midi"));
      output.print(text, files, spec);
    }
    if (saving.given()) {
      Lesson typed =
          saving.choosing(
              saving.typed(lesson, score, reading, player),
              chosen.forLesson(demands, lesson, replaced).stream().toList());
      saving.save(
          saving.with(
              typed,
              new Hearing(ladder.day(), ladder.goal()),
              ladder.habits(),
              ladder.journalFile()),
          lesson,
          spec);
    }
    return ExitCode.DONE;
  }

  /** Takes from a lesson what is not typed. */
  private void take(StoredLesson lesson) {
    score.from(lesson);
    reading.from(lesson, score);
    player.from(lesson);
    chosen.from(lesson, demands);
    ladder.from(lesson);
  }

  private void requireGoal() {
    List<String> names = new ArrayList<>();
    List<String> examples = new ArrayList<>();
    if (ladder.goal().isEmpty()) {
      names.add("--to MARK");
      examples.add("--to quarter=96");
    }
    if (ladder.day().isEmpty()) {
      names.add("--by DATE");
      examples.add("--by 2026-12-12");
    }
    if (!names.isEmpty()) {
      throw usageError(
          "give %s too, such as %s"
              .formatted(String.join(" and ", names), String.join(" ", examples)));
    }
  }

  private String page(
      PracticeWords words,
      Journal entries,
      ImmutableList<PractisedSpot> spots,
      ImmutableList<Circle> circles) {
    return PracticePage.of(
        new PracticeContent(
            words.title(),
            words.about(),
            words.day(),
            words.today(),
            words.practised() ? spots : ImmutableList.of(),
            words.ladder(),
            circles,
            ProgressSvg.drawn(entries, ladder.goal(), ProgressSvg.Size.PAGE),
            JournalText.remarks(entries, ladder.journalFile().isPresent()),
            PracticeText.CARE));
  }
}
