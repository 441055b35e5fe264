package fingering.cli.command;

import fingering.cli.help.ProgramVersion;
import fingering.tables.FingeringException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What all commands share: the options --help and --version, and errors in what was typed. */
@Command(mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
abstract class BaseCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  /** An error in what was typed; the message points to the help of this command. */
  final ParameterException mistake(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  /** An error in what was typed, found by a parser. */
  final ParameterException mistake(String sentence, FingeringException cause) {
    return new ParameterException(spec.commandLine(), sentence, cause);
  }
}
