package fingering.exercise;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import fingering.exercise.ScalePattern.ScaleNote;
import fingering.music.BeatUnit;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.musicxml.writing.PlainNote;
import fingering.musicxml.writing.PlainScore;
import fingering.musicxml.writing.PlainScoreWriter;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;

/**
 * A scale or arpeggio as an exercise for an instrument: up and down in eighths, from a given tonic.
 * In a seven-note scale each tonic is a quarter, so each octave fills a measure and begins on a
 * beat. Triads are in 6/8. The last note is longer (common practice).
 *
 * @param request the scale and how to play it
 * @param instrument the instrument, with its tuning and size
 * @param from the first note, a tonic, as written
 */
public record ScaleExercise(ScaleRequest request, Instrument instrument, Pitch from) {
  private static final int TRIAD = 3;

  private static final Tempo SINGLE = new Tempo(BeatUnit.QUARTER, BigDecimal.valueOf(80));
  private static final Tempo DOUBLE = new Tempo(BeatUnit.QUARTER, BigDecimal.valueOf(60));
  private static final Tempo IN_SIX = new Tempo(new BeatUnit("quarter", 1), BigDecimal.valueOf(50));

  /**
   * Checks the first note.
   *
   * @throws FingeringException if it is not the tonic
   */
  public ScaleExercise {
    if (!from.equals(request.scale().tonic(from.octave()))) {
      throw new FingeringException(
          request.scale().display() + " does not start on " + from.display());
    }
  }

  /** The highest tonic, as written. */
  public Pitch top() {
    return from.plusOctaves(request.octaves());
  }

  /** All pitches, as written, lowest first. */
  public ImmutableSortedSet<Pitch> pitches() {
    return notes().stream()
        .flatMap(note -> note.pitches().stream())
        .collect(
            ImmutableSortedSet.toImmutableSortedSet(
                Comparator.comparingInt(Pitch::midi).thenComparingInt(Pitch::letterNumber)));
  }

  private ImmutableList<ScaleNote> notes() {
    int lowest = instrument.lowest().midi() - Pitch.OCTAVE * instrument.writtenOctaves();
    return request
        .pattern()
        .notes(request.scale(), from, request.octaves(), midi -> midi >= lowest);
  }

  /** The score, without fingerings. */
  public PlainScore score() {
    boolean inSix = request.scale().kind().notesInOctave() == TRIAD;
    boolean longTonics =
        request.scale().kind().sevenNotes()
            && request.pattern() != ScalePattern.THIRDS
            && !request.even();
    ScaleRhythm rhythm = ScaleRhythm.of(notes(), longTonics, inSix ? 6 : 8, request.slur());
    ClefChoice clefs = new ClefChoice(instrument);
    ImmutableList.Builder<PlainScore.Measure> measures = ImmutableList.builder();
    for (ImmutableList<PlainNote> notes : rhythm.measures()) {
      measures.add(new PlainScore.Measure(clefs.next(notes), notes));
    }
    return new PlainScore(
        request.title(),
        instrument.name(),
        instrument.writtenOctaves(),
        Optional.of(request.tempo().orElse(usualTempo(inSix))),
        request.scale().signs(),
        inSix ? 6 : 4,
        inSix ? 8 : 4,
        measures.build());
  }

  private Tempo usualTempo(boolean inSix) {
    return inSix ? IN_SIX : request.pattern() == ScalePattern.DOUBLE_THIRDS ? DOUBLE : SINGLE;
  }

  /** The score as MusicXML in memory. */
  public ScoreFile file() {
    return ScoreFile.of(PlainScoreWriter.text(score()), ImmutableList.of());
  }

  /** The score as read back from its MusicXML. */
  Score read() {
    return ScoreReader.read(file());
  }

  /** The passage read from its MusicXML; marks of a plan for it can be written there. */
  public Passage passage() {
    return passage(read());
  }

  Passage passage(Score score) {
    return score.passage(PassageRequest.WHOLE.withInstrument(instrument), read -> instrument);
  }
}
