package fingering.cli.option;

import picocli.CommandLine.Option;

/** Whether a plan keeps the printed fingerings. */
public final class PrintedOption {
  @Option(
      names = "--keep-printed",
      description = "Keep the fingers, strings and positions printed in the part.")
  public boolean keep;
}
