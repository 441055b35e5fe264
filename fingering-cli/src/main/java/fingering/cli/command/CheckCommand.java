package fingering.cli.command;

import fingering.check.CheckJson;
import fingering.check.CheckReport;
import fingering.check.CheckSarif;
import fingering.check.CheckTally;
import fingering.check.CheckedFile;
import fingering.check.FileCheck;
import fingering.check.ParallelChecks;
import fingering.check.ReportOptions;
import fingering.check.ScoreFinder;
import fingering.cli.file.OutputStreamer;
import fingering.cli.help.ErrorMessage;
import fingering.cli.help.ProgramVersion;
import fingering.cli.lesson.LessonOption;
import fingering.cli.option.CheckOptions;
import fingering.cli.option.Converters;
import fingering.cli.option.LevelOption;
import fingering.cli.option.TuneOptions;
import fingering.cli.output.CheckOutput;
import fingering.cli.terminal.ProgressBar;
import fingering.cli.terminal.Screen;
import fingering.cli.text.CheckText;
import fingering.lesson.StoredLesson;
import fingering.musicxml.reading.ScoreReader;
import fingering.page.CheckPage;
import fingering.playability.CheckLevel;
import fingering.playability.Severity;
import fingering.playability.check.Checker;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds what is unplayable or risky in scores for string players. */
@Command(
    name = "check",
    description = "Lists what players at a level cannot play, and what is risky for them.",
    exitCodeList = "1:a finding is at least as severe as --fail-on",
    footer = {
      "",
      "Examples:",
      "  fingering check docs/examples/lanterns.musicxml --level intermediate",
      "  fingering check docs/examples/lanterns.musicxml --part Viola \\",
      "    --level beginner --fail-on unplayable",
      "  fingering check docs/examples --format html --output findings.html",
      "  fingering check --print-level intermediate --output our-level.yaml"
    })
final class CheckCommand extends BaseCommand {
  @Parameters(
      paramLabel = "SCORE",
      arity = "0..*",
      description =
          "Scores (MusicXML or ABC notation), folders (searched for .musicxml, .xml and .mxl), or patterns such as 'parts/*.mxl'.")
  List<String> scores = List.of();

  @Mixin LessonOption lesson = new LessonOption();

  @Mixin LevelOption level = new LevelOption();

  @Mixin CheckOptions checked = new CheckOptions();

  @Option(
      names = "--show",
      paramLabel = "SEVERITY",
      converter = Converters.SeverityConverter.class,
      description =
          "List findings of this severity or worse: unplayable, risky, worth-knowing (the default). The totals count all.")
  Severity show = Severity.WORTH_KNOWING;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      converter = Converters.SeverityConverter.class,
      description = "Exit with 1 if there is a finding of this severity or worse. Default: risky.")
  Severity failOn = Severity.RISKY;

  @Mixin CheckOutput output = new CheckOutput();

  @Option(
      names = "--all",
      description =
          "List every finding. By default, text lists only the first of many similar ones.")
  boolean all;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "Scores to check at the same time. Default: one for each processor core.")
  Optional<Integer> jobs = Optional.empty();

  @Mixin TuneOptions reading = new TuneOptions();

  @Override
  public Integer call() {
    lesson.read().filter(stored -> scores.isEmpty()).ifPresent(this::take);
    checkOptions();
    if (level.printed.isPresent()) {
      output.checkSettings();
      output.print(LevelOption.text(level.printed.get()), spec);
      return ExitCode.DONE;
    }
    output.check();
    int code = check(level.read(), spec.commandLine().getErr());
    output.report(spec);
    return code;
  }

  private void take(StoredLesson stored) {
    scores = List.of(stored.scoreFile().toString());
    checked.from(stored);
    reading.tune = reading.tune.or(stored.lesson()::tune);
  }

  private void checkOptions() {
    String fault =
        scores.isEmpty() && level.printed.isEmpty()
            ? "no score is given; name a file or a folder of scores, such as docs/examples"
            : jobs.filter(n -> n < 1).isPresent()
                ? "--jobs must be 1 or more"
                : checked.instrumentWithoutPart()
                    ? "--instrument applies to the parts given with --part; give --part too"
                    : "";
    if (!fault.isEmpty()) {
      throw usageError(fault);
    }
  }

  private int check(CheckLevel players, PrintWriter err) {
    ScoreFinder.Found found = ScoreFinder.find(scores);
    CheckTally.Builder totals = new CheckTally.Builder();
    found.problems().forEach(problem -> refuse(problem, totals, err));
    int files = found.files().size();
    ProgressBar bar =
        new ProgressBar(err, files, files > 1 && CommandLine.Help.Ansi.AUTO.enabled());
    FileCheck.Settings settings =
        new FileCheck.Settings(
            () -> Checker.of(players),
            reading::read,
            checked.request(),
            output.format() == CheckOutput.Format.SARIF,
            CheckCommand::sentence);
    PrintWriter out = spec.commandLine().getOut();
    try (OutputStreamer stream =
        OutputStreamer.begin(
            output.path(), output.format() == CheckOutput.Format.TEXT ? out : Screen.exact(out))) {
      CheckReport report = report(new ReportOptions(players, show, failOn), files, stream::print);
      bar.around(report::begin);
      ParallelChecks.check(
          found.files(),
          Math.max(1, Math.min(jobs.orElse(Runtime.getRuntime().availableProcessors()), files)),
          new FileCheck(settings),
          bar::step,
          file -> bar.around(() -> add(file, report, totals, err)));
      CheckTally tally = totals.build();
      report.end(tally);
      stream.finish();
      return tally.exitCode(failOn);
    } finally {
      bar.clear();
    }
  }

  private static String sentence(Throwable failure) {
    return failure instanceof OutOfMemoryError
        ? "it needs more memory than Java may use: check one score at a time with --jobs 1, or set"
            + " JAVA_TOOL_OPTIONS=-Xmx8g."
        : ErrorMessage.sentence(failure);
  }

  private static void refuse(String problem, CheckTally.Builder totals, PrintWriter err) {
    totals.refuse(problem);
    err.println(Screen.complaint(problem));
    err.flush();
  }

  private static void add(
      CheckedFile file, CheckReport report, CheckTally.Builder totals, PrintWriter err) {
    file.check()
        .ifPresentOrElse(
            check -> totals.add(CheckTally.Line.of(file, check)),
            () -> refuse(file.problem(), totals, err));
    report.add(file);
  }

  private CheckReport report(ReportOptions options, int files, Consumer<String> printer) {
    return switch (output.format()) {
      case TEXT -> new CheckText(options, all, Screen.columns(), output.style(), printer);
      case JSON -> new CheckJson(options, printer);
      case SARIF -> new CheckSarif(options, ProgramVersion.number(), printer);
      case HTML ->
          new CheckPage(
              options,
              new CheckPage.Checked(
                  file -> ScoreReader.read(reading.read(file)), checked.request(), files),
              printer);
    };
  }
}
