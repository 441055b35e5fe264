package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.audition.Audition;
import fingering.audition.AuditionPlanner;
import fingering.cli.audition.AuditionJson;
import fingering.cli.audition.AuditionSheet;
import fingering.cli.audition.AuditionSheetFile;
import fingering.cli.audition.AuditionText;
import fingering.cli.audition.MarkedFolder;
import fingering.cli.audition.PlannedSheet;
import fingering.cli.audition.SheetPieces;
import fingering.cli.audition.SheetPieces.Problem;
import fingering.cli.audition.SheetPieces.Ready;
import fingering.cli.file.NewFiles;
import fingering.cli.option.HandOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.OutputOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.PrintedOption;
import fingering.cli.option.ScoringContext;
import fingering.cli.option.Students;
import fingering.cli.option.WeightsOptions;
import fingering.cli.terminal.ExitCode;
import fingering.fingerboard.LeftHand;
import fingering.musicxml.SelectionException;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans all that an audition asks for. */
@Command(
    name = "audition",
    description =
        "Plans the scales and excerpts of an audition, so that together they show what it asks for.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    exitCodeList = "1:something asked for cannot be planned or shown; the rest is printed",
    footer = {
      "",
      "It is printed as text or json. Draw a piece of it with 'plan' or 'scale'.",
      "",
      "Examples:",
      "  fingering audition docs/demo/hearing.yaml",
      "  fingering audition docs/demo/hearing.yaml --write hearing"
    })
final class AuditionCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "SHEET",
      description = "A file (YAML or JSON) with what is asked for, the scales and the excerpts.")
  Path file = Path.of("");

  @Option(
      names = "--write",
      paramLabel = "FOLDER",
      description = "Write every piece with its fingering into a new folder.")
  Optional<Path> write = Optional.empty();

  @Mixin PrintedOption printed = new PrintedOption();

  @Mixin InstrumentOptions built = new InstrumentOptions();

  @Mixin HandOptions hand = new HandOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin LimitOptions limit = new LimitOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    output.check();
    if (output.format().drawn()) {
      throw new ParameterException(
          spec.commandLine(),
          "an audition is printed as text or json; draw its pieces one by one with 'plan'");
    }
    write.ifPresent(MarkedFolder::check);
    Students students = player.students();
    ScoringContext charging = weights.charging(students);
    AuditionSheet sheet = AuditionSheetFile.read(file);
    Instrument played = instrument(sheet, students);
    LeftHand left = students.hand(hand, played, built.size.isPresent());
    SheetPieces pieces =
        new SheetPieces(sheet, played, left, charging.scoring(), printed.kept, limit);
    if (pieces.ready().isEmpty()) {
      Problem first = pieces.problems().get(0);
      throw new SelectionException(
          "%s, line %d: %s".formatted(sheet.file(), first.line(), first.says()));
    }
    Audition audition =
        AuditionPlanner.plan(
            pieces.ready().stream().map(Ready::piece).collect(ImmutableList.toImmutableList()),
            sheet.asked(),
            sheet.inOnePiece());
    PlannedSheet answer =
        new PlannedSheet(sheet, played, pieces.ready(), audition, pieces.problems(), write);
    try (NewFiles files = new NewFiles()) {
      write.ifPresent(folder -> MarkedFolder.write(folder, answer, files));
      output.print(text(answer, charging), files, spec);
    }
    return complain(answer);
  }

  private String text(PlannedSheet answer, ScoringContext charging) {
    return switch (output.format()) {
      case TEXT -> AuditionText.of(answer, charging, OutputOptions.columns(), output.style());
      case JSON -> AuditionJson.of(answer, charging);
      case HTML, SVG -> throw new IllegalStateException("no audition is drawn");
    };
  }

  private Instrument instrument(AuditionSheet sheet, Students students) {
    Instrument named = sheet.instrument();
    students
        .instrument()
        .filter(own -> !own.id().equals(named.id()))
        .ifPresent(
            own -> {
              throw new SelectionException(
                  "%s is for the %s, and the player of %s plays the %s: give another player file."
                      .formatted(sheet.file(), named.spoken(), students.files(), own.spoken()));
            });
    Instrument played =
        built.apply(named, built.size.isPresent() ? built.size : students.size(named));
    students.refuseOtherPatterns(played);
    return played;
  }

  /** Says what is left open; returns the exit code. */
  private int complain(PlannedSheet answer) {
    ImmutableList<String> open = answer.open();
    if (open.isEmpty()) {
      return ExitCode.DONE;
    }
    spec.commandLine().getErr().println("fingering: " + String.join("; ", open) + ".");
    return ExitCode.LOOK;
  }
}
