package fingering.musicxml.reading;

import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.tables.Instrument;
import java.util.Optional;

/**
 * A request for a passage of a score. Start from {@link #WHOLE} and refine it with the other
 * methods; they cannot be confused as the parameters of the constructors can. Immutable.
 *
 * @param part number, id or name of the part; empty for the only possible part
 * @param instrument the instrument to read the part for; empty for the instrument of the part
 * @param measures measures as printed ({@code 9}, {@code 9-24}, {@code 9-}) or rehearsal marks
 *     ({@code B}, {@code B to D}); empty for the whole part
 * @param tempo the tempo at the beginning; later tempi change in proportion; empty for the printed
 *     tempi
 * @param voice the only voice to read, as numbered in the file; empty for all voices
 * @param words whether words for a string or a position, {@code sul G}, are read
 * @param slurs the slurs that are changed, in the part; the score itself stays as it is
 */
public record PassageRequest(
    Optional<String> part,
    Optional<Instrument> instrument,
    Optional<String> measures,
    Optional<Tempo> tempo,
    Optional<String> voice,
    boolean words,
    SlurChanges slurs) {

  /** The whole of the only part, as printed. */
  public static final PassageRequest WHOLE =
      new PassageRequest(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Creates a request that reads words for a string or a position. */
  public PassageRequest(
      Optional<String> part,
      Optional<Instrument> instrument,
      Optional<String> measures,
      Optional<Tempo> tempo,
      Optional<String> voice) {
    this(part, instrument, measures, tempo, voice, true);
  }

  /** Creates a request for the slurs as printed. */
  public PassageRequest(
      Optional<String> part,
      Optional<Instrument> instrument,
      Optional<String> measures,
      Optional<Tempo> tempo,
      Optional<String> voice,
      boolean words) {
    this(part, instrument, measures, tempo, voice, words, SlurChanges.NONE);
  }

  /** Returns the same request for the part with this number, id or name. */
  public PassageRequest withPart(String wanted) {
    return new PassageRequest(
        Optional.of(wanted), instrument, measures, tempo, voice, words, slurs);
  }

  /** Returns the same request for another instrument. */
  public PassageRequest withInstrument(Instrument wanted) {
    return new PassageRequest(part, Optional.of(wanted), measures, tempo, voice, words, slurs);
  }

  /** Returns the same request for these measures only. */
  public PassageRequest withMeasures(String wanted) {
    return new PassageRequest(part, instrument, Optional.of(wanted), tempo, voice, words, slurs);
  }

  /** Returns the same request at this tempo. */
  public PassageRequest withTempo(Tempo wanted) {
    return new PassageRequest(part, instrument, measures, Optional.of(wanted), voice, words, slurs);
  }

  /** Returns the same request for this voice only. */
  public PassageRequest withVoice(String wanted) {
    return new PassageRequest(part, instrument, measures, tempo, Optional.of(wanted), words, slurs);
  }

  /** Returns the same request without words for a string or a position. */
  public PassageRequest ignoringWords() {
    return new PassageRequest(part, instrument, measures, tempo, voice, false, slurs);
  }

  /** Returns the same request with slurs changed. */
  public PassageRequest withSlurs(SlurChanges wanted) {
    return new PassageRequest(part, instrument, measures, tempo, voice, words, wanted);
  }

  /** Returns the same request for the whole part. */
  PassageRequest wholePart() {
    return new PassageRequest(part, instrument, Optional.empty(), tempo, voice, words, slurs);
  }
}
