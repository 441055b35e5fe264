package fingering.music;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import fingering.tables.Instrument;
import java.util.Collections;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The music of a part, or of some of its measures.
 *
 * @param title title of the score; empty if it has none
 * @param partId id of the part in the score
 * @param partName name of the part as printed
 * @param instrument the instrument that plays it
 * @param tempi the tempi, in order of time. The first applies from the start: the requested,
 *     printed or default tempo. If a tempo was requested, the later ones are scaled in proportion
 * @param measures the measures, in order
 * @param moments the moments, in order of time
 * @param remarks remarks from reading the score, one sentence each
 * @param stringWords printed words that ask for one string, in order of time
 * @param positionWords printed words that name a position of the hand, in order of time
 * @param unplayable notes of the part that the instrument does not have, in order of time. They are
 *     in no moment, and plans leave them without a finger
 * @param slurs the slurs that differ from the printed ones; the moments have them already
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
    ImmutableList<PrintedString> stringWords,
    ImmutableList<PrintedPosition> positionWords,
    ImmutableList<Note> unplayable,
    ChangedSlurs slurs) {

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

  /**
   * The measure with an index in the score; empty if the passage does not contain it. Takes
   * logarithmic time.
   */
  public Optional<Measure> measure(int measureIndex) {
    int at = Collections.binarySearch(Lists.transform(measures, Measure::index), measureIndex);
    return at < 0 ? Optional.empty() : Optional.of(measures.get(at));
  }

  /** A passage with every note in a moment. */
  public Passage(
      String title,
      String partId,
      String partName,
      Instrument instrument,
      ImmutableList<TempoChange> tempi,
      ImmutableList<Measure> measures,
      ImmutableList<Moment> moments,
      ImmutableList<String> remarks,
      ImmutableList<PrintedString> stringWords,
      ImmutableList<PrintedPosition> positionWords) {
    this(
        title,
        partId,
        partName,
        instrument,
        tempi,
        measures,
        moments,
        remarks,
        stringWords,
        positionWords,
        ImmutableList.of(),
        ChangedSlurs.NONE);
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
      ImmutableList<PrintedString> stringWords) {
    this(
        title,
        partId,
        partName,
        instrument,
        tempi,
        measures,
        moments,
        remarks,
        stringWords,
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

  /** The same passage without words that ask for one string. */
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
        positionWords,
        unplayable,
        slurs);
  }

  /**
   * The same passage without notes that the instrument does not have.
   *
   * @param playable the moments without these notes
   * @param left the notes
   * @param remark a remark on them, without full stop
   */
  public Passage leaving(ImmutableList<Moment> playable, ImmutableList<Note> left, String remark) {
    return new Passage(
        title,
        partId,
        partName,
        instrument,
        tempi,
        measures,
        playable,
        ImmutableList.<String>builder().addAll(remarks).add(remark).build(),
        stringWords,
        positionWords,
        left,
        slurs);
  }

  /** A passage in one tempo, without words that ask for one string or name a position. */
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

  /** The tempo at the start: the requested, printed or default tempo. */
  public Tempo tempo() {
    return tempi.get(0).tempo();
  }

  /** The tempo at a time in quarter notes from the start of the part. */
  public Tempo tempoAt(BigFraction start) {
    Tempo current = tempo();
    for (TempoChange change : tempi) {
      if (change.start().compareTo(start) > 0) {
        break;
      }
      current = change.tempo();
    }
    return current;
  }

  /** Whether any finger, string or position is printed. */
  public boolean fingered() {
    return positionWords.stream().anyMatch(words -> words.position().isPresent())
        || notes().stream()
            .anyMatch(n -> n.marks().finger().isPresent() || n.marks().string().isPresent());
  }

  /** All notes in order of time, those of a chord lowest first. */
  public ImmutableList<Note> notes() {
    return moments.stream()
        .flatMap(moment -> moment.starting().stream())
        .collect(ImmutableList.toImmutableList());
  }
}
