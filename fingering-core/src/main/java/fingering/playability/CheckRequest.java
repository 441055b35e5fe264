package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
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
 */
public record CheckRequest(
    ImmutableList<String> parts,
    Optional<Instrument> instrument,
    Optional<Tempo> tempo,
    Optional<Forces> forces,
    UnaryOperator<Instrument> setup) {

  /** Every recognised string part, as printed. */
  public static final CheckRequest WHOLE =
      new CheckRequest(
          ImmutableList.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          UnaryOperator.identity());

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

  /** Returns the request for these parts only, each for the instrument recognised from it. */
  public CheckRequest withParts(Iterable<String> newParts) {
    return new CheckRequest(ImmutableList.copyOf(newParts), Optional.empty(), tempo, forces, setup);
  }

  /**
   * Returns the request for these parts only, read for this instrument.
   *
   * @throws IllegalArgumentException if there are no parts
   */
  public CheckRequest withParts(Iterable<String> newParts, Instrument newInstrument) {
    return new CheckRequest(
        ImmutableList.copyOf(newParts), Optional.of(newInstrument), tempo, forces, setup);
  }

  /** Returns the request with another tempo at the beginning. */
  public CheckRequest withTempo(Tempo newTempo) {
    return new CheckRequest(parts, instrument, Optional.of(newTempo), forces, setup);
  }

  /** Returns the request for parts played by one player or by a section. */
  public CheckRequest withForces(Forces newForces) {
    return new CheckRequest(parts, instrument, tempo, Optional.of(newForces), setup);
  }

  /** Returns the request for instruments of another tuning or size. */
  public CheckRequest withSetup(UnaryOperator<Instrument> newSetup) {
    return new CheckRequest(parts, instrument, tempo, forces, newSetup);
  }
}
