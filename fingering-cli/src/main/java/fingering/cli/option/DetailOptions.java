package fingering.cli.option;

import picocli.CommandLine.Option;

/** What to print below the verdict. */
public final class DetailOptions {
  /** Whether to print every note. */
  @Option(names = "--notes", description = "Also print every note of every plan.")
  public boolean notes;

  /** Whether to print the costs. */
  @Option(
      names = "--costs",
      description =
          "Also print the points by rule, what each rule means, and the hardest measures.")
  public boolean costs;
}
