package fingering.cli.command;

import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the completion script for a shell. */
@Command(
    name = "completion",
    description =
        "Prints a script that lets the shell complete commands, options and file names when you press Tab.",
    footer = {
      "",
      "Write the script to a file, and load it whenever a shell starts: add the line",
      "'source ~/.fingering-completion' to the end of ~/.bashrc or ~/.zshrc.",
      "",
      "Examples:",
      "  fingering completion bash >~/.fingering-completion",
      "  fingering completion zsh >~/.fingering-completion"
    })
final class CompletionCommand extends BaseCommand {
  /** The supported shells. */
  enum Shell {
    BASH,
    ZSH
  }

  /** The values that the script offers; users type them in lower case. */
  private static final Pattern VALUES =
      Pattern.compile("(?m)^( *local \\w+_(?:option|pos_param)_args=)(\\(.*\\))");

  /**
   * A setting that would change how zsh completes the user's other aliases. It is not needed: zsh
   * completes an alias like the command that it stands for.
   */
  private static final Pattern GLOBAL_SETTING =
      Pattern.compile("(?m)^ *# Make alias a distinct command.*\\R *setopt COMPLETE_ALIASES\\R");

  @Parameters(paramLabel = "SHELL", description = "bash or zsh.")
  Shell shell = Shell.BASH;

  @Override
  public Integer call() {
    // One script for both shells: it finds out which shell reads it.
    String script =
        GLOBAL_SETTING.matcher(AutoComplete.bash("fingering", Commands.all())).replaceFirst("");
    Matcher values = VALUES.matcher(script);
    spec.commandLine().getOut().print(values.replaceAll(CompletionCommand::lowerCase));
    return ExitCode.DONE;
  }

  private static String lowerCase(MatchResult line) {
    return Matcher.quoteReplacement(line.group(1) + line.group(2).toLowerCase(Locale.ROOT));
  }
}
