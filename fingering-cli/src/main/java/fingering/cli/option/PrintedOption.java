package fingering.cli.option;

import picocli.CommandLine.Option;

/** Whether what is printed in a part is kept; shared by the commands. */
public final class PrintedOption {
  @Option(
      names = "--keep-printed",
      description = "Keep the fingers, strings and positions printed in the part.")
  public boolean kept;
}
