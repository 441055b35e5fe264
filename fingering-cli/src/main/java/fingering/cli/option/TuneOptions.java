package fingering.cli.option;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.musicxml.SelectionException;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.file.ScoreLimit;
import fingering.userfile.SmallFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
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
      SmallFile.Encoded text = SmallFile.textInAnyEncoding(file, "a file of tunes", MAX_KIB);
      return read(file.toString(), text.content(), encodingRemark(text.encoding()));
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
    return read(source, text, ImmutableList.of());
  }

  private static ImmutableList<String> encodingRemark(Charset encoding) {
    return encoding.equals(StandardCharsets.ISO_8859_1)
        ? ImmutableList.of("the file is not in UTF-8; it was read as Latin-1")
        : ImmutableList.of();
  }

  private ScoreFile read(String source, String text, ImmutableList<String> remarks) {
    TuneScore chosen =
        Tunebook.parse(source, text)
            .choose(tune, limit.limits.of(ScoreLimit.MEASURES), limit.limits.of(ScoreLimit.NOTES));
    return ScoreFile.of(
        chosen.musicXml(),
        ImmutableList.<String>builder().addAll(remarks).addAll(chosen.remarks()).build(),
        limit.limits);
  }
}
