package fingering.music;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The music of one part, or some measures of it, ready to be planned.
 *
 * @param title title of the score, empty where it has none
 * @param partId the part's id in the score
 * @param partName the part's name as printed
 * @param instrument the instrument it is read for
 * @param tempi the tempi, in order of time; the first holds from its beginning, as asked for,
 *     printed or assumed, and the later ones are scaled with it
 * @param measures the measures, in order
 * @param moments the moments, in order of time
 * @param remarks what was assumed in reading, a sentence each
 * @param oneString where words ask for one string, in order of time
 * @param positions where words name the position of the hand, in order of time
 */
public record Passage(
    String title,
    String partId,
    String partName,
    Instrument instrument,
    ImmutableList<TempoChange> tempi,
    ImmutableList<Measure> measures,
    ImmutableList<Moment> moments,
    ImmutableList<String> remarks,
    ImmutableList<PrintedString> oneString,
    ImmutableList<PrintedPosition> positions) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if there is no tempo
   */
  public Passage {
    if (tempi.isEmpty()) {
      throw new IllegalArgumentException("a passage without a tempo");
    }
  }

  /** A passage without words that name a position. */
  public Passage(
      String title,
      String partId,
      String partName,
      Instrument instrument,
      ImmutableList<TempoChange> tempi,
      ImmutableList<Measure> measures,
      ImmutableList<Moment> moments,
      ImmutableList<String> remarks,
      ImmutableList<PrintedString> oneString) {
    this(
        title,
        partId,
        partName,
        instrument,
        tempi,
        measures,
        moments,
        remarks,
        oneString,
        ImmutableList.of());
  }

  /** A passage without words that ask for one string or name a position. */
  public Passage(
      String title,
      String partId,
      String partName,
      Instrument instrument,
      ImmutableList<TempoChange> tempi,
      ImmutableList<Measure> measures,
      ImmutableList<Moment> moments,
      ImmutableList<String> remarks) {
    this(
        title, partId, partName, instrument, tempi, measures, moments, remarks, ImmutableList.of());
  }

  /** The same passage where no words ask for one string. */
  public Passage ignoringStringWords() {
    return new Passage(
        title,
        partId,
        partName,
        instrument,
        tempi,
        measures,
        moments,
        remarks,
        ImmutableList.of(),
        positions);
  }

  /** A passage in one tempo throughout. */
  public Passage(
      String title,
      String partId,
      String partName,
      Instrument instrument,
      Tempo tempo,
      ImmutableList<Measure> measures,
      ImmutableList<Moment> moments,
      ImmutableList<String> remarks) {
    this(
        title,
        partId,
        partName,
        instrument,
        ImmutableList.of(new TempoChange(BigFraction.ZERO, tempo)),
        measures,
        moments,
        remarks);
  }

  /** The tempo at which it begins, as asked for, printed or assumed. */
  public Tempo tempo() {
    return tempi.get(0).tempo();
  }

  /** The tempo in force at a place, in quarter notes from the start of the part. */
  public Tempo tempoAt(BigFraction start) {
    Tempo inForce = tempo();
    for (TempoChange change : tempi) {
      if (change.start().compareTo(start) > 0) {
        break;
      }
      inForce = change.tempo();
    }
    return inForce;
  }

  /** Whether a finger, a string or a position is printed in it. */
  public boolean fingered() {
    return positions.stream().anyMatch(asked -> asked.position().isPresent())
        || notes().stream()
            .anyMatch(n -> n.marks().finger().isPresent() || n.marks().string().isPresent());
  }

  /** All sounding notes in score order, those of a chord lowest first. */
  public ImmutableList<Note> notes() {
    return moments.stream()
        .flatMap(moment -> moment.starting().stream())
        .collect(ImmutableList.toImmutableList());
  }
}
