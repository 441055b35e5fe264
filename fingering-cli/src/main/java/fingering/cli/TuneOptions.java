package fingering.cli;

import com.google.common.base.Ascii;
import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.musicxml.ChoiceException;
import fingering.musicxml.ScoreFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How the file of a score is read, be it MusicXML or ABC notation; shared by the commands. */
class TuneOptions {
  /** A folder of tunes, thousands of them, takes less. */
  private static final int MAX_KIB = 4096;

  @Option(
      names = "--tune",
      paramLabel = "X",
      description = "Which tune of an ABC file: the number in its field X:.")
  Optional<String> tune = Optional.empty();

  @Mixin LimitOptions limit = new LimitOptions();

  /** Reads a file: ABC notation where its name ends in .abc, MusicXML otherwise. */
  ScoreFile read(Path file) {
    if (Ascii.toLowerCase(file.toString()).endsWith(".abc")) {
      return read(file.toString(), SmallFile.text(file, "tunes", MAX_KIB));
    }
    if (tune.isPresent()) {
      throw new ChoiceException(
          "--tune chooses among the tunes of a file in ABC notation, and %s is none: leave it out, or name a file that ends in .abc."
              .formatted(file));
    }
    return ScoreFile.read(file, limit.limits);
  }

  /**
   * Reads ABC notation.
   *
   * @param source how messages call it
   */
  ScoreFile read(String source, String text) {
    TuneScore written = Tunebook.parse(source, text).choose(tune);
    return ScoreFile.of(written.musicXml(), written.remarks(), limit.limits);
  }
}
