package fingering.cli.option;

import fingering.musicxml.SelectionException;
import fingering.playability.CheckLevel;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;
import fingering.userfile.SmallFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The level of the players for whom a score is checked. */
public final class LevelOption {
  @Option(
      names = "--level",
      paramLabel = "NAME|FILE",
      description =
          "The level of the players: advanced, common-practice (the default), intermediate, beginner, or a file of your own.")
  String level = "common-practice";

  @Option(
      names = "--print-level",
      paramLabel = "NAME",
      description =
          "Print the file of a level, to change it for your own players, and check nothing.")
  public Optional<String> printed = Optional.empty();

  /**
   * The level.
   *
   * @throws FingeringException if there is no level of that name and no such file, or the file
   *     cannot be read; the message is one sentence
   */
  public CheckLevel read() {
    Optional<String> preset = CheckLevel.presetName(level);
    if (preset.isPresent()) {
      return CheckLevel.preset(preset.get());
    }
    Path file =
        OptionFiles.existing(level)
            .orElseThrow(
                () ->
                    new SelectionException(
                        "There is no level and no file '%s'; %s"
                            .formatted(
                                level,
                                NearWord.to(level, CheckLevel.presets())
                                    .map("did you mean '%s'?"::formatted)
                                    .orElse(
                                        "choose one of %s, or name a file of your own."
                                            .formatted(String.join(", ", CheckLevel.presets()))))));
    return CheckLevel.parse(level, SmallFile.text(file, "a level file"));
  }

  /** The file of the level to print. */
  public static String text(String name) {
    return CheckLevel.text(name);
  }
}
