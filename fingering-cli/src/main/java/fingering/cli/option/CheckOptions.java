package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import fingering.lesson.StoredLesson;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.playability.CheckRequest;
import fingering.playability.Forces;
import fingering.tables.Instrument;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which parts of a score to check, and who plays them. */
public final class CheckOptions {
  @Option(
      names = "--part",
      paramLabel = "PART",
      description =
          "Check only this part: its number, id or name. Repeat for more. Default: all string parts.")
  List<String> parts = List.of();

  @Option(
      names = "--instrument",
      paramLabel = "INSTRUMENT",
      converter = Converters.InstrumentConverter.class,
      completionCandidates = CompletionCandidates.OfInstruments.class,
      description =
          "Instrument of the parts given with --part: violin, viola, cello or bass. Default: from each part.")
  Optional<Instrument> instrument = Optional.empty();

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = Converters.TempoConverter.class,
      description = ScoreOptions.TEMPO)
  Optional<Tempo> tempo = Optional.empty();

  @Option(
      names = "--played-by",
      paramLabel = "FORCES",
      converter = Converters.ForcesConverter.class,
      description = "section (can divide) or one-player. Default: from the names of the parts.")
  Optional<Forces> forces = Optional.empty();

  @Mixin InstrumentOptions build = new InstrumentOptions();

  private SlurChanges slurs = SlurChanges.NONE;

  /** The request that the options make. */
  public CheckRequest request() {
    return new CheckRequest(
        ImmutableList.copyOf(parts), instrument, tempo, forces, build::apply, slurs);
  }

  /** Takes the part, its bowings and the tempo of a lesson, where nothing else is typed. */
  public void from(StoredLesson lesson) {
    if (parts.isEmpty()) {
      slurs = lesson.lesson().slurs();
      parts = lesson.lesson().part().stream().toList();
      instrument = parts.isEmpty() ? Optional.empty() : instrument.or(lesson.lesson()::instrument);
    }
    tempo = tempo.or(lesson.lesson()::tempo);
  }

  /** Whether an instrument is given, but no part that it applies to. */
  public boolean instrumentWithoutPart() {
    return instrument.isPresent() && parts.isEmpty();
  }
}
