package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.audition.AuditionHtml;
import fingering.cli.audition.AuditionJson;
import fingering.cli.audition.AuditionText;
import fingering.cli.audition.MarkedFolder;
import fingering.cli.audition.PlannedSheet;
import fingering.cli.audition.SheetPlanner;
import fingering.cli.file.NewFiles;
import fingering.cli.option.DetailOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.PrintedOption;
import fingering.cli.output.AuditionOutput;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.NextCommand;
import fingering.cli.terminal.Screen;
import fingering.sheet.AuditionSheetFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans the scales and excerpts of an audition. */
@Command(
    name = "audition",
    description =
        "Plans the scales and excerpts of an audition so that together they show the required skills.",
    exitCodeList = "1:something on the sheet cannot be planned or shown; the rest is printed",
    footer = {
      "",
      "Examples:",
      "  fingering audition docs/demo/hearing.yaml",
      "  fingering audition docs/demo/hearing.yaml --write hearing",
      "  fingering audition docs/demo/hearing.yaml --output hearing.html"
    })
final class AuditionCommand extends BaseCommand {

  @Parameters(
      paramLabel = "SHEET",
      description = "A file (YAML or JSON) with the requirements, the scales and the excerpts.")
  Path file = Path.of("");

  @Option(
      names = "--write",
      paramLabel = "FOLDER",
      description = "Write every piece with its fingering into a new folder.")
  Optional<Path> write = Optional.empty();

  @Mixin PrintedOption printed = new PrintedOption();

  @Mixin InstrumentOptions build = new InstrumentOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin LimitOptions limit = new LimitOptions();

  @Mixin DetailOptions detail = new DetailOptions();

  @Mixin AuditionOutput output = new AuditionOutput();

  @Override
  public Integer call() {
    output.check();
    write.ifPresent(MarkedFolder::check);
    SheetPlanner planner =
        SheetPlanner.of(AuditionSheetFile.read(file), player, build, printed.keep, limit);
    ScoringContext context = planner.scoring();
    PlannedSheet planned = planner.plan(write);
    try (NewFiles files = new NewFiles()) {
      write.ifPresent(folder -> MarkedFolder.write(folder, planned, files));
      output.print(text(planned, context), files, spec);
    }
    return report(planned);
  }

  private String text(PlannedSheet planned, ScoringContext context) {
    return switch (output.format()) {
      case TEXT ->
          AuditionText.of(
              planned, context, detail, next(planned), Screen.columns(), output.style());
      case JSON -> AuditionJson.of(planned, context);
      case HTML -> AuditionHtml.of(planned, context);
    };
  }

  /** The command that writes the pieces; if they are written, the one that practises the first. */
  private List<String> next(PlannedSheet planned) {
    return planned
        .firstWritten()
        .map(
            score ->
                List.of(
                    "fingering practice " + score + " --keep-printed \\",
                    "  --from 60 --to 80 --by DATE"))
        .orElseGet(
            () ->
                NextCommand.lines(
                    spec,
                    Optional.empty(),
                    "audition",
                    List.of("--write " + folderName()),
                    Screen.columns() - CompareCommand.INDENT));
  }

  /** The name of the sheet without its ending. */
  private String folderName() {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name + "-pieces";
  }

  /** Reports the requirements that are not met; returns the exit code. */
  private int report(PlannedSheet planned) {
    ImmutableList<String> open = planned.open();
    if (open.isEmpty()) {
      return ExitCode.DONE;
    }
    spec.commandLine().getErr().println(Screen.complaint(String.join("; ", open) + "."));
    return ExitCode.FINDINGS;
  }
}
