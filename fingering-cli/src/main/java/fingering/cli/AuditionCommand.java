package fingering.cli;

import com.google.common.collect.ImmutableList;
import fingering.audition.Audition;
import fingering.audition.AuditionPlanner;
import fingering.cli.SheetPieces.Problem;
import fingering.cli.SheetPieces.Ready;
import fingering.fingerboard.LeftHand;
import fingering.musicxml.ChoiceException;
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
    Charging charging = weights.charging(students);
    Sheet sheet = SheetFile.read(file);
    Instrument played = instrument(sheet, students);
    LeftHand left = students.hand(hand, played, built.size.isPresent());
    SheetPieces pieces =
        new SheetPieces(sheet, played, left, charging.scoring(), printed.kept, limit);
    if (pieces.ready().isEmpty()) {
      Problem first = pieces.problems().get(0);
      throw new ChoiceException(
          "%s, line %d: %s".formatted(sheet.file(), first.line(), first.says()));
    }
    Audition audition =
        AuditionPlanner.plan(
            pieces.ready().stream().map(Ready::piece).collect(ImmutableList.toImmutableList()),
            sheet.asked(),
            sheet.inOnePiece());
    AnsweredSheet answer =
        new AnsweredSheet(sheet, played, pieces.ready(), audition, pieces.problems(), write);
    try (NewFiles files = new NewFiles()) {
      write.ifPresent(folder -> MarkedFolder.write(folder, answer, files));
      output.print(text(answer, charging), files, spec);
    }
    return complain(answer);
  }

  private String text(AnsweredSheet answer, Charging charging) {
    return switch (output.format()) {
      case TEXT -> AuditionText.of(answer, charging, OutputOptions.columns(), output.style());
      case JSON -> AuditionJson.of(answer, charging);
      case HTML, SVG -> throw new IllegalStateException("no audition is drawn");
    };
  }

  private Instrument instrument(Sheet sheet, Students students) {
    Instrument named = sheet.instrument();
    students
        .instrument()
        .filter(own -> !own.id().equals(named.id()))
        .ifPresent(
            own -> {
              throw new ChoiceException(
                  "%s is for the %s, and the player of %s plays the %s: give another player file."
                      .formatted(sheet.file(), named.spoken(), students.files(), own.spoken()));
            });
    Instrument played =
        built.apply(named, built.size.isPresent() ? built.size : students.size(named));
    students.refuseOtherPatterns(played);
    return played;
  }

  /** Says what is left open; returns the exit code. */
  private int complain(AnsweredSheet answer) {
    ImmutableList<String> open = answer.open();
    if (open.isEmpty()) {
      return ExitCode.DONE;
    }
    spec.commandLine().getErr().println("fingering: " + String.join("; ", open) + ".");
    return ExitCode.LOOK;
  }
}
