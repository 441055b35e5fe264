package fingering.cli.command;

import fingering.cli.terminal.ExitCode;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the script by which a shell completes what is typed. */
@Command(
    name = "completion",
    description =
        "Prints a script by which the shell completes commands, options and files when you press Tab.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Put the script into a file, and have the shell read it at every start: add the",
      "line 'source ~/.fingering-completion' at the end of ~/.bashrc, or of ~/.zshrc.",
      "",
      "Examples:",
      "  fingering completion bash >~/.fingering-completion",
      "  fingering completion zsh >~/.fingering-completion"
    })
final class CompletionCommand implements Callable<Integer> {
  /** Shells that are known. */
  enum Shell {
    BASH,
    ZSH
  }

  /** Values that are offered; they are typed in small letters. */
  private static final Pattern OFFERED =
      Pattern.compile("(?m)^( *local \\w+_(?:option|pos_param)_args=)(\\(.*\\))");

  /**
   * What the script would change for the whole of a zsh: the completion of the player's other
   * aliases. It serves no purpose here, since an alias is completed as what it stands for.
   */
  private static final Pattern CHANGES =
      Pattern.compile("(?m)^ *# Make alias a distinct command.*\\R *setopt COMPLETE_ALIASES\\R");

  @Spec CommandSpec spec;

  @Parameters(paramLabel = "SHELL", description = "bash or zsh.")
  Shell shell = Shell.BASH;

  @Override
  public Integer call() {
    // It is one script for both: it asks by which shell it is read.
    String script =
        CHANGES.matcher(AutoComplete.bash("fingering", Commands.whole())).replaceFirst("");
    Matcher offered = OFFERED.matcher(script);
    spec.commandLine().getOut().print(offered.replaceAll(CompletionCommand::small));
    return ExitCode.DONE;
  }

  private static String small(MatchResult line) {
    return Matcher.quoteReplacement(line.group(1) + line.group(2).toLowerCase(Locale.ROOT));
  }
}
