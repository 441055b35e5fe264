package fingering.cli;

import com.google.common.collect.ImmutableMap;
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
      "Put the script into a file and read it at every start of the shell: a line in",
      "~/.bashrc, or in ~/.zshrc, does that: source ~/.fingering-completion",
      "",
      "Examples:",
      "  fingering completion bash",
      "  fingering completion zsh"
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

  private static final ImmutableMap<Shell, String> BEFORE =
      ImmutableMap.of(
          Shell.BASH,
          "",
          Shell.ZSH,
          "autoload -Uz compinit bashcompinit\ncompinit\nbashcompinit\n");

  @Spec CommandSpec spec;

  @Parameters(paramLabel = "SHELL", description = "bash or zsh.")
  Shell shell = Shell.BASH;

  @Override
  public Integer call() {
    String script = AutoComplete.bash("fingering", Main.whole());
    Matcher offered = OFFERED.matcher(script);
    spec.commandLine()
        .getOut()
        .print(BEFORE.get(shell) + offered.replaceAll(CompletionCommand::small));
    return ExitCode.DONE;
  }

  private static String small(MatchResult line) {
    return Matcher.quoteReplacement(line.group(1) + line.group(2).toLowerCase(Locale.ROOT));
  }
}
