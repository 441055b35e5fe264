package fingering.playability.part;

import fingering.music.Moment;
import fingering.music.Note;
import java.util.List;
import java.util.stream.Collectors;

/** Notes as text. */
public final class NoteText {
  private NoteText() {}

  /** Returns the written pitches of the notes that begin: {@code C4+E4}. */
  public static String of(Moment moment) {
    return of(moment.starting());
  }

  /** Returns the written pitches of notes, joined by plus signs. */
  public static String of(List<Note> notes) {
    return notes.stream().map(note -> note.written().display()).collect(Collectors.joining("+"));
  }
}
