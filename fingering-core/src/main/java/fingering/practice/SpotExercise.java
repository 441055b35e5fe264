package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.exercise.ClefChoice;
import fingering.music.BeatUnit;
import fingering.music.NoteAddress;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
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
 * An exercise for a practice spot, in 4/4, with fingers and strings.
 *
 * @param title its title
 * @param instrument the instrument
 * @param fifths the key signature: the number of sharps, or of flats as a negative number
 * @param tempo a slow tempo to begin with
 * @param measures the music by measure, each four quarters long
 */
public record SpotExercise(
    String title,
    Instrument instrument,
    int fifths,
    Tempo tempo,
    ImmutableList<ImmutableList<Event>> measures) {

  /**
   * A fingered note.
   *
   * @param written the pitch as written
   * @param finger the finger as printed
   * @param string the number of the string, 1 for the highest
   */
  public record Fingered(Pitch written, String finger, int string) {}

  /**
   * A note, a chord or a rest.
   *
   * @param notes the notes, lowest first; empty for a rest
   * @param value its duration
   */
  public record Event(ImmutableList<Fingered> notes, BeatUnit value) {}

  /** Returns the score without fingers. */
  PlainScore score() {
    ClefChoice staff = new ClefChoice(instrument);
    ImmutableList.Builder<PlainScore.Measure> plain = ImmutableList.builder();
    for (ImmutableList<Event> measure : measures) {
      ImmutableList<PlainNote> notes =
          measure.stream()
              .map(
                  event ->
                      PlainNote.of(
                          event.notes().stream()
                              .map(Fingered::written)
                              .collect(ImmutableList.toImmutableList()),
                          event.value()))
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

  /** Returns the score as MusicXML, with all fingers, and string numbers where they change. */
  public String text() {
    ImmutableList.Builder<NoteMarks> marks = ImmutableList.builder();
    int string = 0;
    for (int m = 0; m < measures.size(); m++) {
      int note = 0;
      for (Event event : measures.get(m)) {
        for (Fingered fingered : event.notes()) {
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
        note += event.notes().isEmpty() ? 1 : 0;
      }
    }
    return ScoreMarker.mark(PlainScoreWriter.text(score()), marks.build());
  }

  /**
   * Writes the exercise to a new file.
   *
   * @throws fingering.musicxml.UnwritableScoreException if the file exists or cannot be written
   */
  public void write(Path target) {
    file().writeMarked(text(), target);
  }

  /** The exercise as a score without marks; {@link #text} has them. */
  public ScoreFile file() {
    return ScoreFile.of(PlainScoreWriter.text(score()), ImmutableList.of());
  }
}
