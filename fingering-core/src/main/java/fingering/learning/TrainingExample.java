package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import java.util.List;
import java.util.OptionalInt;

/**
 * A fingered passage to learn from.
 *
 * @param name what to call it in remarks, a file name say
 * @param passage the music, with the fingers and strings that a player printed
 */
public record TrainingExample(String name, Passage passage) {
  private static final double HALF = 0.5;
  private static final NoteAddress NOWHERE = new NoteAddress(0, 0, 0);

  /** How many notes have a printed finger. */
  public int fingered() {
    return (int) passage.notes().stream().filter(note -> note.marks().finger().isPresent()).count();
  }

  /**
   * The instrument, pitches and lengths, whatever the bowing and the fingering: what piece it is.
   */
  Object piece() {
    return List.of(
        passage.instrument().id(),
        passage.notes().stream()
            .map(note -> List.of(note.sounding(), note.start(), note.length()))
            .toList());
  }

  /** All that the rules see, without the fingers and strings printed. */
  Object music() {
    return List.of(
        passage.instrument(), passage.moments().stream().map(TrainingExample::unfingered).toList());
  }

  private static Moment unfingered(Moment moment) {
    return new Moment(
        unfingered(moment.starting()),
        unfingered(moment.held()),
        moment.startMicros(),
        moment.soundMicros(),
        moment.restMicros(),
        moment.slurred(),
        moment.grace(),
        moment.pizzicato());
  }

  private static ImmutableList<Note> unfingered(ImmutableList<Note> notes) {
    return notes.stream().map(TrainingExample::unfingered).collect(ImmutableList.toImmutableList());
  }

  private static Note unfingered(Note note) {
    Marks own = note.marks();
    return new Note(
        NOWHERE,
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
            java.util.Optional.empty(),
            OptionalInt.empty()));
  }

  /**
   * Adds what the grips of each moment differ from what is printed: a half for each note on another
   * string, and a half for each on another string or with another finger.
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
        loss += grip.placements().get(i).asPrinted(marks) ? 0 : HALF;
      }
    }
    return loss;
  }

  private static int string(Grip grip, int note) {
    return grip.placements().get(note).string();
  }
}
