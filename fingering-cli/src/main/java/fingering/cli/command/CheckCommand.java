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
import fingering.cli.file.OutputFile;
import fingering.cli.file.OutputStreamer;
import fingering.cli.help.ErrorMessage;
import fingering.cli.help.ProgramVersion;
import fingering.cli.option.CheckOptions;
import fingering.cli.option.LevelOption;
import fingering.cli.option.ScoreOptions;
import fingering.cli.option.TuneOptions;
import fingering.cli.terminal.ExitCode;
import fingering.cli.terminal.ProgressBar;
import fingering.cli.terminal.Screen;
import fingering.cli.text.CheckText;
import fingering.page.CheckPage;
import fingering.playability.CheckLevel;
import fingering.playability.Severity;
import fingering.playability.check.Checker;
import fingering.tables.FingeringException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks what scores ask of their string players. */
@Command(
    name = "check",
    description =
        "Tells an arranger what a score asks of its string players that they cannot, or should not, be asked.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    exitCodeList = "1:something as grave as --fail-on, or graver, was found",
    footer = {
      "",
      "Examples:",
      "  fingering check docs/examples/lanterns.musicxml --level intermediate",
      "  fingering check docs/examples/lanterns.musicxml --part Viola \\",
      "    --level beginner --fail-on unplayable",
      "  fingering check docs/examples --format html --output findings.html",
      "  fingering check --print-level intermediate --output our.level"
    })
final class CheckCommand implements Callable<Integer> {
  /** Forms in which findings are printed. */
  public enum Format {
    TEXT,
    JSON,
    SARIF,
    HTML
  }

  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "SCORE",
      arity = "0..*",
      description =
          "Scores in MusicXML or ABC notation; folders, searched for .musicxml, .xml and .mxl; patterns such as 'parts/*.mxl'.")
  List<String> scores = List.of();

  @Mixin LevelOption level = new LevelOption();

  @Mixin CheckOptions checked = new CheckOptions();

  @Option(
      names = "--show",
      paramLabel = "SEVERITY",
      converter = SeverityConverter.class,
      description =
          "Tell findings of this severity and graver ones: unplayable, risky, worth-knowing (the default). All are counted.")
  Severity show = Severity.WORTH_KNOWING;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      converter = SeverityConverter.class,
      description =
          "Exit with 1 where something of this severity or graver is found: risky otherwise.")
  Severity failOn = Severity.RISKY;

  @Option(
      names = "--format",
      paramLabel = "FORM",
      description =
          "text (the default), json, sarif (for editors and build servers), html (a page).")
  Format format = Format.TEXT;

  @Mixin OutputFile output = new OutputFile();

  @Option(
      names = "--all",
      description = "Tell every finding in the text, where it names only the first of many alike.")
  boolean all;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "Scores checked at once: as many as the computer has cores otherwise.")
  Optional<Integer> jobs = Optional.empty();

  @Mixin TuneOptions reading = new TuneOptions();

  @Override
  public Integer call() {
    refuseMistyped();
    PrintWriter err = spec.commandLine().getErr();
    try {
      output.check();
      if (level.printed.isPresent()) {
        output.print(LevelOption.text(level.printed.get()), spec);
        return ExitCode.DONE;
      }
      int code = check(level.read(), err);
      output.told(spec);
      return code;
    } catch (FingeringException e) {
      err.println("fingering: " + ErrorMessage.sentence(e));
      return ExitCode.REFUSED;
    }
  }

  private void refuseMistyped() {
    String fault =
        scores.isEmpty() && level.printed.isEmpty()
            ? "no score is given; name a file or a folder of scores, such as docs/examples"
            : jobs.filter(n -> n < 1).isPresent()
                ? "--jobs is to be 1 or more"
                : checked.instrumentAlone()
                    ? "--instrument is for parts that are named; name them with --part"
                    : "";
    if (!fault.isEmpty()) {
      throw new ParameterException(spec.commandLine(), fault);
    }
  }

  private int check(CheckLevel wanted, PrintWriter err) {
    ScoreFinder.Found found = ScoreFinder.find(scores);
    CheckTally.Counting counting = new CheckTally.Counting();
    found.problems().forEach(problem -> refuse(problem, counting, err));
    int files = found.files().size();
    ProgressBar bar =
        new ProgressBar(err, files, files > 1 && CommandLine.Help.Ansi.AUTO.enabled());
    FileCheck.Settings settings =
        new FileCheck.Settings(
            () -> Checker.of(wanted),
            reading::read,
            checked.request(),
            format == Format.SARIF,
            CheckCommand::sentence);
    PrintWriter out = spec.commandLine().getOut();
    try (OutputStreamer printout =
        OutputStreamer.begin(output, format == Format.TEXT ? out : Screen.exact(out))) {
      CheckReport report = report(new ReportOptions(wanted, show, failOn), printout::print);
      bar.around(report::begin);
      ParallelChecks.check(
          found.files(),
          Math.max(1, Math.min(jobs.orElse(Runtime.getRuntime().availableProcessors()), files)),
          new FileCheck(settings),
          bar::step,
          file -> bar.around(() -> tell(file, report, counting, err)));
      CheckTally tally = counting.tally();
      report.end(tally);
      printout.finish();
      return tally.exitCode(failOn);
    } finally {
      bar.clear();
    }
  }

  private static String sentence(Throwable failure) {
    return failure instanceof OutOfMemoryError
        ? "it takes more memory than Java may use here: check fewer at once with --jobs 1, or set"
            + " JAVA_TOOL_OPTIONS=-Xmx8g."
        : ErrorMessage.sentence(failure);
  }

  private static void refuse(String problem, CheckTally.Counting counting, PrintWriter err) {
    counting.refuse(problem);
    err.println("fingering: " + problem);
    err.flush();
  }

  private static void tell(
      CheckedFile file, CheckReport report, CheckTally.Counting counting, PrintWriter err) {
    file.check()
        .ifPresentOrElse(
            check -> counting.add(CheckTally.Line.of(file, check)),
            () -> refuse(file.problem(), counting, err));
    report.add(file);
  }

  private CheckReport report(ReportOptions asked, Consumer<String> printing) {
    return switch (format) {
      case TEXT -> new CheckText(asked, all, OutputFile.columns(), output.style(), printing);
      case JSON -> new CheckJson(asked, printing);
      case SARIF -> new CheckSarif(asked, ProgramVersion.number(), printing);
      case HTML -> new CheckPage(asked, printing);
    };
  }

  static final class SeverityConverter implements ITypeConverter<Severity> {
    @Override
    public Severity convert(String text) {
      return ScoreOptions.converted(
          () ->
              Stream.of(Severity.values())
                  .filter(severity -> severity.id().equalsIgnoreCase(text.strip()))
                  .findFirst()
                  .orElseThrow(
                      () ->
                          new FingeringException(
                              "'" + text + "' is none of unplayable, risky, worth-knowing")));
    }
  }
}
