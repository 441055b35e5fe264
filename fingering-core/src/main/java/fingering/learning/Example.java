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
import java.util.stream.IntStream;

/**
 * A fingered passage to learn from.
 *
 * @param name what to call it in remarks, a file name say
 * @param passage the music, with the fingers and strings that a player printed
 */
public record Example(String name, Passage passage) {
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
        passage.instrument(), passage.moments().stream().map(Example::unfingered).toList());
  }

  private static Moment unfingered(Moment moment) {
    return new Moment(
        unfingered(moment.struck()),
        unfingered(moment.held()),
        moment.startMicros(),
        moment.soundMicros(),
        moment.restMicros(),
        moment.slurred(),
        moment.grace(),
        moment.pizzicato());
  }

  private static ImmutableList<Note> unfingered(ImmutableList<Note> notes) {
    return notes.stream().map(Example::unfingered).collect(ImmutableList.toImmutableList());
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
   * The indices of the grips of each moment that agree with what is printed; all of them where none
   * does, or nothing is printed.
   */
  int[][] agreeing(ImmutableList<ImmutableList<Grip>> grips) {
    int[][] agreeing = new int[grips.size()][];
    for (int m = 0; m < agreeing.length; m++) {
      Moment moment = passage.moments().get(m);
      ImmutableList<Grip> here = grips.get(m);
      int[] some =
          IntStream.range(0, here.size()).filter(j -> here.get(j).asPrinted(moment)).toArray();
      agreeing[m] = some.length > 0 ? some : IntStream.range(0, here.size()).toArray();
    }
    return agreeing;
  }
}
