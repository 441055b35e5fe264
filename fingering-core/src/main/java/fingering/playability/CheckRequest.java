package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.tables.Instrument;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What to check of a score. Start from {@link #WHOLE}.
 *
 * @param parts names, ids or numbers of the parts; empty for every string part that shows itself
 * @param instrument the instrument to read the named parts for; empty for the one each shows
 * @param tempo the tempo at the beginning; empty for the printed one
 * @param forces who plays from the parts; empty to go by their names and the score
 * @param built makes, of the instrument that a part shows, the one that is played
 */
public record CheckRequest(
    ImmutableList<String> parts,
    Optional<Instrument> instrument,
    Optional<Tempo> tempo,
    Optional<Forces> forces,
    UnaryOperator<Instrument> built) {

  /** Every string part, as printed. */
  public static final CheckRequest WHOLE =
      new CheckRequest(
          ImmutableList.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          UnaryOperator.identity());

  /** The same request for these parts only. */
  public CheckRequest withParts(Iterable<String> wanted) {
    return new CheckRequest(ImmutableList.copyOf(wanted), instrument, tempo, forces, built);
  }

  /** The same request for parts read for this instrument. */
  public CheckRequest withInstrument(Instrument wanted) {
    return new CheckRequest(parts, Optional.of(wanted), tempo, forces, built);
  }

  /** The same request at this tempo. */
  public CheckRequest withTempo(Tempo wanted) {
    return new CheckRequest(parts, instrument, Optional.of(wanted), forces, built);
  }

  /** The same request for parts from which so many play. */
  public CheckRequest withForces(Forces wanted) {
    return new CheckRequest(parts, instrument, tempo, Optional.of(wanted), built);
  }

  /** The same request for instruments strung or built otherwise. */
  public CheckRequest withBuilt(UnaryOperator<Instrument> wanted) {
    return new CheckRequest(parts, instrument, tempo, forces, wanted);
  }
}
