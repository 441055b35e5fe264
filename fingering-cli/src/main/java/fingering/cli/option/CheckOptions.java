package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.playability.CheckRequest;
import fingering.playability.Forces;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What of a score is checked, and for whom. */
public final class CheckOptions {
  @Option(
      names = "--part",
      paramLabel = "PART",
      description =
          "A part to check: its number, id or name; several times for several. Otherwise all that show a string instrument.")
  List<String> parts = List.of();

  @Option(
      names = "--instrument",
      paramLabel = "INSTRUMENT",
      converter = PartOptions.InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description = "violin, viola, cello or bass for the parts named; told by each otherwise.")
  Optional<Instrument> instrument = Optional.empty();

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = ScoreOptions.TempoConverter.class,
      description =
          "Tempo at the beginning (half=84, dotted-quarter=63); later ones are scaled alike.")
  Optional<Tempo> tempo = Optional.empty();

  @Option(
      names = "--played-by",
      paramLabel = "FORCES",
      converter = ForcesConverter.class,
      description =
          "section (it can divide) or one-player; told by the names of the parts otherwise.")
  Optional<Forces> forces = Optional.empty();

  @Mixin InstrumentOptions built = new InstrumentOptions();

  /** The request. */
  public CheckRequest request() {
    return new CheckRequest(ImmutableList.copyOf(parts), instrument, tempo, forces, built::apply);
  }

  /** Whether they name an instrument and no part that it could be of. */
  public boolean instrumentAlone() {
    return instrument.isPresent() && parts.isEmpty();
  }

  static final class ForcesConverter implements ITypeConverter<Forces> {
    @Override
    public Forces convert(String text) {
      return ScoreOptions.converted(
          () ->
              Stream.of(Forces.values())
                  .filter(forces -> forces.id().equalsIgnoreCase(text.strip()))
                  .findFirst()
                  .orElseThrow(
                      () ->
                          new FingeringException(
                              "'" + text + "' is neither section nor one-player")));
    }
  }
}
