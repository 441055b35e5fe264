package fingering.cli.option;

import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which part of a score to read, and for which instrument; shared by the commands. */
public class PartOptions {
  @Option(
      names = "--part",
      paramLabel = "PART",
      description = "Part to read: its number, id or name; needed where there are several.")
  Optional<String> part = Optional.empty();

  @Option(
      names = "--voice",
      paramLabel = "VOICE",
      description = "The only voice of the part to read; all of them otherwise.")
  Optional<String> voice = Optional.empty();

  @Option(
      names = "--instrument",
      paramLabel = "INSTRUMENT",
      converter = InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description = "violin, viola, cello or bass; told by the part otherwise.")
  Optional<Instrument> instrument = Optional.empty();

  public @Mixin InstrumentOptions built = new InstrumentOptions();

  /** Reads the whole part that the options ask for, at the printed tempo. */
  public Passage readWhole(ScoreFile file) {
    return ScoreReader.read(file)
        .passage(
            new PassageRequest(part, instrument, Optional.empty(), Optional.empty(), voice),
            built::apply);
  }

  public static final class InstrumentConverter implements ITypeConverter<Instrument> {
    @Override
    public Instrument convert(String text) {
      return ScoreOptions.converted(() -> Instruments.standard().named(text));
    }
  }
}
