package fingering.cli.command;

import fingering.cli.help.ProgramVersion;
import fingering.tables.FingeringException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The base class of all commands, with the options --help and --version and usage errors. */
@Command(mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
abstract class BaseCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  /** Returns a usage error; its message refers to the help of this command. */
  final ParameterException usageError(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  /** Returns a usage error that a parser found. */
  final ParameterException usageError(String sentence, FingeringException cause) {
    return new ParameterException(spec.commandLine(), sentence, cause);
  }
}
