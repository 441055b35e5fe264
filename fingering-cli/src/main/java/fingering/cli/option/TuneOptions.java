package fingering.cli.option;

import com.google.common.base.Ascii;
import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.musicxml.SelectionException;
import fingering.musicxml.file.ScoreFile;
import fingering.userfile.SmallFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How the file of a score is read, be it MusicXML or ABC notation; shared by the commands. */
public class TuneOptions {
  /** A folder of tunes, thousands of them, takes less. */
  private static final int MAX_KIB = 4096;

  @Option(
      names = "--tune",
      paramLabel = "X",
      description = "Which tune of an ABC file: the number in its field X:.")
  public Optional<String> tune = Optional.empty();

  public @Mixin LimitOptions limit = new LimitOptions();

  /** Reads a file: ABC notation where its name ends in .abc, MusicXML otherwise. */
  public ScoreFile read(Path file) {
    if (Ascii.toLowerCase(file.toString()).endsWith(".abc")) {
      return read(file.toString(), SmallFile.text(file, "a file of tunes", MAX_KIB));
    }
    if (tune.isPresent()) {
      throw new SelectionException(
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
  public ScoreFile read(String source, String text) {
    TuneScore written = Tunebook.parse(source, text).choose(tune);
    return ScoreFile.of(written.musicXml(), written.remarks(), limit.limits);
  }
}
