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

/** How to read the file of a score: MusicXML or ABC notation. */
public class TuneOptions {
  /** Enough for thousands of tunes. */
  private static final int MAX_KIB = 4096;

  @Option(
      names = "--tune",
      paramLabel = "X",
      description = "Which tune of an ABC file: its number in the field X:.")
  public Optional<String> tune = Optional.empty();

  public @Mixin LimitOptions limit = new LimitOptions();

  /** Reads a file: ABC notation if its name ends in .abc, MusicXML otherwise. */
  public final ScoreFile read(Path file) {
    if (Ascii.toLowerCase(file.toString()).endsWith(".abc")) {
      return read(file.toString(), SmallFile.text(file, "a file of tunes", MAX_KIB));
    }
    if (tune.isPresent()) {
      throw new SelectionException(
          "--tune chooses a tune of an ABC file, and %s is not one: leave it out, or name a file that ends in .abc."
              .formatted(file));
    }
    return ScoreFile.read(file, limit.limits);
  }

  /**
   * Reads ABC notation.
   *
   * @param source the name of the text in messages
   */
  public final ScoreFile read(String source, String text) {
    TuneScore chosen = Tunebook.parse(source, text).choose(tune);
    return ScoreFile.of(chosen.musicXml(), chosen.remarks(), limit.limits);
  }
}
