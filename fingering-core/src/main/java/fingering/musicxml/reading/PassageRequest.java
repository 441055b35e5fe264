package fingering.musicxml.reading;

import fingering.music.Tempo;
import fingering.tables.Instrument;
import java.util.Optional;

/**
 * What to read from a score. Start from {@link #WHOLE} and add what is asked for.
 *
 * @param part number, id or name of the part; empty for the only part there is to choose
 * @param instrument the instrument to read it for; empty for the one that the part shows
 * @param measures measures as printed ({@code 9}, {@code 9-24}, {@code 9-}) or rehearsal marks
 *     ({@code B}, {@code B to D}); empty for the whole part
 * @param tempo the tempo at its beginning; empty for the printed one
 * @param voice the only voice to read, as numbered in the file; empty for all voices together
 * @param stringWords whether words that name a string to play on, {@code sul G}, are read
 */
public record PassageRequest(
    Optional<String> part,
    Optional<Instrument> instrument,
    Optional<String> measures,
    Optional<Tempo> tempo,
    Optional<String> voice,
    boolean stringWords) {

  /** The whole of the only part, as printed. */
  public static final PassageRequest WHOLE =
      new PassageRequest(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** A request that reads words that name a string. */
  public PassageRequest(
      Optional<String> part,
      Optional<Instrument> instrument,
      Optional<String> measures,
      Optional<Tempo> tempo,
      Optional<String> voice) {
    this(part, instrument, measures, tempo, voice, true);
  }

  /** The same request for the part of this number, id or name. */
  public PassageRequest withPart(String wanted) {
    return new PassageRequest(Optional.of(wanted), instrument, measures, tempo, voice, stringWords);
  }

  /** The same request for this instrument. */
  public PassageRequest withInstrument(Instrument wanted) {
    return new PassageRequest(part, Optional.of(wanted), measures, tempo, voice, stringWords);
  }

  /** The same request for these measures only. */
  public PassageRequest withMeasures(String wanted) {
    return new PassageRequest(part, instrument, Optional.of(wanted), tempo, voice, stringWords);
  }

  /** The same request at this tempo. */
  public PassageRequest withTempo(Tempo wanted) {
    return new PassageRequest(part, instrument, measures, Optional.of(wanted), voice, stringWords);
  }

  /** The same request for this voice only. */
  public PassageRequest withVoice(String wanted) {
    return new PassageRequest(part, instrument, measures, tempo, Optional.of(wanted), stringWords);
  }

  /** The same request without regard to words that name a string. */
  public PassageRequest ignoringStringWords() {
    return new PassageRequest(part, instrument, measures, tempo, voice, false);
  }
}
