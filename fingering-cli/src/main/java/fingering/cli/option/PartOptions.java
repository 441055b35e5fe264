package fingering.cli.option;

import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.Instrument;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which part of a score to read, and for which instrument. */
public class PartOptions {
  @Option(
      names = "--part",
      paramLabel = "PART",
      description = "The part: its number, id or name. Required if there are several.")
  Optional<String> part = Optional.empty();

  @Option(
      names = "--voice",
      paramLabel = "VOICE",
      description = "Only this voice of the part. Default: all voices.")
  Optional<String> voice = Optional.empty();

  @Option(
      names = "--instrument",
      paramLabel = "INSTRUMENT",
      converter = Converters.InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description = "violin, viola, cello or bass. Default: from the part.")
  Optional<Instrument> instrument = Optional.empty();

  public @Mixin InstrumentOptions build = new InstrumentOptions();

  /** Reads the whole part, at its printed tempo. */
  public final Passage readWhole(ScoreFile file) {
    return ScoreReader.read(file)
        .passage(
            new PassageRequest(part, instrument, Optional.empty(), Optional.empty(), voice),
            build::apply);
  }
}
