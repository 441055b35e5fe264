package fingering.cli.command;

import com.google.common.base.Ascii;
import fingering.cli.help.ManPage;
import fingering.cli.terminal.ExitCode;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a manual page. */
@Command(
    name = "man",
    description = "Prints the manual page of a command, to be kept and read with 'man'.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Keep a page in a file and read it there: man ./fingering-plan.1",
      "",
      "Examples:",
      "  fingering man",
      "  fingering man plan"
    })
final class ManCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "[COMMAND]",
      arity = "0..1",
      description = "The command; the program as a whole otherwise.")
  Optional<String> name = Optional.empty();

  @Override
  public Integer call() {
    CommandLine whole = Commands.whole();
    CommandLine asked =
        name.map(
                word ->
                    Optional.ofNullable(whole.getSubcommands().get(Ascii.toLowerCase(word)))
                        .orElseThrow(() -> unknown(word, whole)))
            .orElse(whole);
    spec.commandLine().getOut().print(ManPage.of(asked.getCommandSpec()));
    return ExitCode.DONE;
  }

  private ParameterException unknown(String word, CommandLine whole) {
    return new ParameterException(
        spec.commandLine(),
        "there is no command '%s'; choose one of %s"
            .formatted(word, String.join(", ", whole.getSubcommands().keySet())));
  }
}
