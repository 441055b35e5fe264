package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.tables.Instrument;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The parts of a score to check, and how. Start from {@link #WHOLE} and change what differs; the
 * order of the changes does not matter.
 *
 * @param parts names, ids or numbers of the parts; empty for every recognised string part
 * @param instrument the instrument of the named parts; empty to recognise it from each part, and
 *     always empty if no parts are named
 * @param tempo the tempo at the beginning; empty for the printed one
 * @param forces who plays from the parts; empty to decide by part names and the score
 * @param setup changes the standard instrument of a part to the one played, such as another tuning
 * @param slurs the slurs that are changed in the only part to check; they change nothing if there
 *     are several
 */
public record CheckRequest(
    ImmutableList<String> parts,
    Optional<Instrument> instrument,
    Optional<Tempo> tempo,
    Optional<Forces> forces,
    UnaryOperator<Instrument> setup,
    SlurChanges slurs) {

  /** Every recognised string part, as printed. */
  public static final CheckRequest WHOLE =
      new CheckRequest(
          ImmutableList.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          UnaryOperator.identity(),
          SlurChanges.NONE);

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if an instrument is given but no part
   */
  public CheckRequest {
    if (instrument.isPresent() && parts.isEmpty()) {
      throw new IllegalArgumentException("an instrument is given, but no part that it is for");
    }
  }

  /** Creates a request for the slurs as printed. */
  public CheckRequest(
      ImmutableList<String> parts,
      Optional<Instrument> instrument,
      Optional<Tempo> tempo,
      Optional<Forces> forces,
      UnaryOperator<Instrument> setup) {
    this(parts, instrument, tempo, forces, setup, SlurChanges.NONE);
  }

  /** Returns the request for these parts only, each for the instrument recognised from it. */
  public CheckRequest withParts(Iterable<String> newParts) {
    return new CheckRequest(
        ImmutableList.copyOf(newParts), Optional.empty(), tempo, forces, setup, slurs);
  }

  /**
   * Returns the request for these parts only, read for this instrument.
   *
   * @throws IllegalArgumentException if there are no parts
   */
  public CheckRequest withParts(Iterable<String> newParts, Instrument newInstrument) {
    return new CheckRequest(
        ImmutableList.copyOf(newParts), Optional.of(newInstrument), tempo, forces, setup, slurs);
  }

  /** Returns the request with another tempo at the beginning. */
  public CheckRequest withTempo(Tempo newTempo) {
    return new CheckRequest(parts, instrument, Optional.of(newTempo), forces, setup, slurs);
  }

  /** Returns the request for parts played by one player or by a section. */
  public CheckRequest withForces(Forces newForces) {
    return new CheckRequest(parts, instrument, tempo, Optional.of(newForces), setup, slurs);
  }

  /** Returns the request for instruments of another tuning or size. */
  public CheckRequest withSetup(UnaryOperator<Instrument> newSetup) {
    return new CheckRequest(parts, instrument, tempo, forces, newSetup, slurs);
  }

  /** Returns the request for a part whose slurs are changed. */
  public CheckRequest withSlurs(SlurChanges newSlurs) {
    return new CheckRequest(parts, instrument, tempo, forces, setup, newSlurs);
  }

  /** Returns the request for the music of one of these parts, for {@link Score#passage}. */
  public PassageRequest passage(Score score) {
    int count = parts.isEmpty() ? score.parts().size() : parts.size();
    return new PassageRequest(
            Optional.empty(), instrument, Optional.empty(), tempo, Optional.empty())
        .withSlurs(count == 1 ? slurs : SlurChanges.NONE);
  }
}
