package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A fingered passage to learn from.
 *
 * @param name its name in messages, usually a file name
 * @param passage the music, with printed fingers and strings
 */
public record TrainingExample(String name, Passage passage) {
  private static final double HALF = 0.5;
  private static final NoteAddress NO_ADDRESS = new NoteAddress(0, 0, 0);

  /** The number of notes with a printed finger. */
  public int fingered() {
    return (int) passage.notes().stream().filter(note -> note.marks().finger().isPresent()).count();
  }

  /**
   * The same example at another tempo.
   *
   * @param times the tempo as a multiple of this one
   */
  TrainingExample atTempo(double times) {
    List<Moment> scaled =
        passage.moments().stream()
            .map(
                moment ->
                    moment.withTimes(
                        Math.round(moment.startMicros() / times),
                        Math.round(moment.soundMicros() / times),
                        Math.round(moment.restMicros() / times)))
            .toList();
    return new TrainingExample(
        name,
        new Passage(
            passage.title(),
            passage.partId(),
            passage.partName(),
            passage.instrument(),
            passage.tempi(),
            passage.measures(),
            Moment.withSurroundings(scaled),
            passage.remarks(),
            passage.stringWords(),
            passage.positionWords(),
            passage.unplayable(),
            passage.slurs()));
  }

  /** A key for the piece: instrument, pitches, onsets and lengths, without bowing and fingering. */
  Object pieceKey() {
    return List.of(
        passage.instrument().id(),
        passage.notes().stream()
            .map(note -> List.of(note.sounding(), note.start(), note.length()))
            .toList());
  }

  /** A key for the version: everything that the rules use, without printed fingers and strings. */
  Object versionKey() {
    return List.of(
        passage.instrument(), passage.moments().stream().map(TrainingExample::unfingered).toList());
  }

  private static Moment unfingered(Moment moment) {
    return moment.withNotes(unfingered(moment.starting()), unfingered(moment.held()));
  }

  private static ImmutableList<Note> unfingered(ImmutableList<Note> notes) {
    return notes.stream().map(TrainingExample::unfingered).collect(ImmutableList.toImmutableList());
  }

  private static Note unfingered(Note note) {
    Marks own = note.marks();
    return new Note(
        NO_ADDRESS,
        note.place(),
        note.written(),
        note.sounding(),
        note.start(),
        note.length(),
        new Marks(
            own.trill(),
            own.accent(),
            own.harmonic(),
            own.leftPlucked(),
            Optional.empty(),
            OptionalInt.empty()));
  }

  /**
   * Adds the loss of each grip of each moment: 1/2 for each note that is not on its printed string,
   * and 1/2 for each note that does not have its printed string and finger.
   */
  void addLosses(ImmutableList<ImmutableList<Grip>> grips, double[][] losses) {
    for (int m = 0; m < losses.length; m++) {
      Moment moment = passage.moments().get(m);
      for (int j = 0; j < losses[m].length; j++) {
        losses[m][j] += loss(moment, grips.get(m).get(j));
      }
    }
  }

  private static double loss(Moment moment, Grip grip) {
    ImmutableList<Note> notes = grip.notes(moment);
    double loss = 0;
    for (int i = 0; i < notes.size(); i++) {
      Marks marks = notes.get(i).marks();
      if (moment.starting().contains(notes.get(i))) {
        loss += marks.string().orElse(string(grip, i)) == string(grip, i) ? 0 : HALF;
        loss += grip.placements().get(i).matchesPrinted(marks) ? 0 : HALF;
      }
    }
    return loss;
  }

  private static int string(Grip grip, int note) {
    return grip.placements().get(note).string();
  }
}
