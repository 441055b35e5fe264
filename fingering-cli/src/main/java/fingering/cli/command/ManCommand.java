package fingering.cli.command;

import com.google.common.base.Ascii;
import fingering.cli.help.ManPage;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.UnmatchedArgumentException;

/** Prints a manual page. */
@Command(
    name = "man",
    description = "Prints the manual page of a command, to save and read with 'man'.",
    footer = {
      "",
      "Save a page to a file, then read it: man ./fingering-plan.1",
      "",
      "Examples:",
      "  fingering man",
      "  fingering man plan"
    })
final class ManCommand extends BaseCommand {

  @Parameters(
      paramLabel = "[COMMAND]",
      arity = "0..1",
      description = "The command. Default: the whole program.")
  Optional<String> name = Optional.empty();

  @Override
  public Integer call() {
    CommandLine all = Commands.all();
    CommandLine command =
        name.map(
                word ->
                    Optional.ofNullable(all.getSubcommands().get(Ascii.toLowerCase(word)))
                        .orElseThrow(() -> unknown(word, all)))
            .orElse(all);
    spec.commandLine().getOut().print(ManPage.of(command.getCommandSpec()));
    return ExitCode.DONE;
  }

  private ParameterException unknown(String word, CommandLine all) {
    all.setErr(spec.commandLine().getErr());
    return new UnmatchedArgumentException(all, List.of(word));
  }
}
