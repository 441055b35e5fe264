package fingering.cli;

import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.PassageRequest;
import fingering.musicxml.ScoreFile;
import fingering.musicxml.ScoreReader;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What to read of a score, and how; shared by the commands. */
final class ScoreOptions extends PartOptions {
  @Option(
      names = "--measures",
      paramLabel = "RANGE",
      description = "Measures as printed (9-24), or rehearsal marks ('B to D').")
  Optional<String> measures = Optional.empty();

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = TempoConverter.class,
      description =
          "Tempo at the beginning (half=84, dotted-quarter=63); later ones are scaled alike.")
  Optional<Tempo> tempo = Optional.empty();

  /** Reads the passage that the options ask for. */
  Passage read(ScoreFile file) {
    return ScoreReader.read(file)
        .passage(new PassageRequest(part, instrument, measures, tempo, voice), built::apply);
  }

  static final class TempoConverter implements ITypeConverter<Tempo> {
    @Override
    public Tempo convert(String text) {
      return converted(() -> Tempo.parse(text));
    }
  }

  static <T> T converted(java.util.function.Supplier<T> reading) {
    try {
      return reading.get();
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
