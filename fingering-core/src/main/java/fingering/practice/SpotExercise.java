package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.exercise.ClefChoice;
import fingering.music.BeatUnit;
import fingering.music.NoteAddress;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.file.StagedScore;
import fingering.musicxml.marking.NoteMarks;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.writing.PlainNote;
import fingering.musicxml.writing.PlainScore;
import fingering.musicxml.writing.PlainScoreWriter;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * An exercise for a spot, in 4/4, with fingers and strings.
 *
 * @param title its title
 * @param instrument the instrument
 * @param fifths the key signature of the spot: sharps, or flats below 0
 * @param tempo a slow tempo to begin with
 * @param measures what is played, measure by measure, each four quarters long
 */
public record SpotExercise(
    String title,
    Instrument instrument,
    int fifths,
    Tempo tempo,
    ImmutableList<ImmutableList<Stroke>> measures) {

  /**
   * A fingered note.
   *
   * @param written the pitch as written
   * @param finger the finger's sign
   * @param string the string, 1 being the highest
   */
  public record Fingered(Pitch written, String finger, int string) {}

  /**
   * What is struck, or a rest where there is no note.
   *
   * @param notes the notes, lowest first
   * @param value how long
   */
  public record Stroke(ImmutableList<Fingered> notes, BeatUnit value) {}

  /** The score without fingers. */
  PlainScore score() {
    ClefChoice staff = new ClefChoice(instrument);
    ImmutableList.Builder<PlainScore.Measure> plain = ImmutableList.builder();
    for (ImmutableList<Stroke> measure : measures) {
      ImmutableList<PlainNote> notes =
          measure.stream()
              .map(
                  context ->
                      PlainNote.of(
                          context.notes().stream()
                              .map(Fingered::written)
                              .collect(ImmutableList.toImmutableList()),
                          context.value()))
              .collect(ImmutableList.toImmutableList());
      plain.add(new PlainScore.Measure(staff.next(notes), notes));
    }
    return new PlainScore(
        title,
        instrument.name(),
        instrument.writtenOctaves(),
        Optional.of(tempo),
        fifths,
        4,
        4,
        plain.build());
  }

  /** The text of the score in MusicXML, with fingers, and strings where they change. */
  public String text() {
    ImmutableList.Builder<NoteMarks> marks = ImmutableList.builder();
    int string = 0;
    for (int m = 0; m < measures.size(); m++) {
      int note = 0;
      for (Stroke context : measures.get(m)) {
        for (Fingered fingered : context.notes()) {
          boolean changes = fingered.string() != string;
          string = fingered.string();
          marks.add(
              new NoteMarks(
                  new NoteAddress(0, m, note),
                  Optional.of(fingered.finger()),
                  changes ? OptionalInt.of(string) : OptionalInt.empty(),
                  Optional.empty()));
          note++;
        }
        note += context.notes().isEmpty() ? 1 : 0;
      }
    }
    return ScoreMarker.mark(PlainScoreWriter.text(score()), marks.build());
  }

  /**
   * Writes it to a new file.
   *
   * @throws fingering.musicxml.UnwritableScoreException if the file exists or cannot be written
   */
  public void write(Path target) {
    file().writeMarked(text(), target);
  }

  /**
   * Writes it, and leaves it beside its place until it is told to appear.
   *
   * @throws fingering.musicxml.UnwritableScoreException as above
   */
  public StagedScore unfinished(Path target) {
    return file().stage(text(), target);
  }

  private ScoreFile file() {
    return ScoreFile.of(PlainScoreWriter.text(score()), ImmutableList.of());
  }
}
