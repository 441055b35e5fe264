package fingering.exercise;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import fingering.exercise.ScalePattern.Stroke;
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
 * A scale or arpeggio on an instrument, from a certain note: up, and down again to where it began,
 * in eighths. A scale of seven notes holds its tonics for a quarter, so that each octave fills a
 * measure and begins on the beat; triads go in 6/8; the last note is held (common practice).
 *
 * @param request what is practised
 * @param instrument the instrument, as it is tuned and built
 * @param from the tonic at which it begins, as written
 */
public record ScaleExercise(ScaleRequest request, Instrument instrument, Pitch from) {
  private static final int TRIAD = 3;

  private static final Tempo SINGLE = new Tempo(BeatUnit.QUARTER, BigDecimal.valueOf(80));
  private static final Tempo DOUBLE = new Tempo(BeatUnit.QUARTER, BigDecimal.valueOf(60));
  private static final Tempo IN_SIX = new Tempo(new BeatUnit("quarter", 1), BigDecimal.valueOf(50));

  /**
   * Checks where it begins.
   *
   * @throws FingeringException if that is not the tonic
   */
  public ScaleExercise {
    if (!from.equals(request.scale().tonic(from.octave()))) {
      throw new FingeringException(
          request.scale().display() + " does not start on " + from.display());
    }
  }

  /** The tonic at the top, as written. */
  public Pitch top() {
    return from.plusOctaves(request.octaves());
  }

  /** Every pitch it needs, as written, from the lowest to the highest. */
  public ImmutableSortedSet<Pitch> pitches() {
    return contexts().stream()
        .flatMap(context -> context.pitches().stream())
        .collect(
            ImmutableSortedSet.toImmutableSortedSet(
                Comparator.comparingInt(Pitch::midi).thenComparingInt(Pitch::letterNumber)));
  }

  private ImmutableList<Stroke> contexts() {
    int lowest = instrument.lowest().midi() - Pitch.OCTAVE * instrument.writtenOctaves();
    return request
        .pattern()
        .contexts(request.scale(), from, request.octaves(), midi -> midi >= lowest);
  }

  /** The score, without a finger. */
  public PlainScore score() {
    boolean inSix = request.scale().kind().notesInOctave() == TRIAD;
    boolean held =
        request.scale().kind().sevenNotes()
            && request.pattern() != ScalePattern.THIRDS
            && !request.even();
    ScaleRhythm rhythm = ScaleRhythm.of(contexts(), held, inSix ? 6 : 8, request.slur());
    ClefChoice staff = new ClefChoice(instrument);
    ImmutableList.Builder<PlainScore.Measure> measures = ImmutableList.builder();
    for (ImmutableList<PlainNote> notes : rhythm.measures()) {
      measures.add(new PlainScore.Measure(staff.next(notes), notes));
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

  /** The score as MusicXML that lies in no file yet. */
  public ScoreFile file() {
    return ScoreFile.of(PlainScoreWriter.text(score()), ImmutableList.of());
  }

  /** The score, read again like any other. */
  Score read() {
    return ScoreReader.read(file());
  }

  /** The passage that the score is read as, so that a plan for it can be marked there. */
  public Passage passage() {
    return passage(read());
  }

  Passage passage(Score score) {
    return score.passage(PassageRequest.WHOLE.withInstrument(instrument), read -> instrument);
  }
}
