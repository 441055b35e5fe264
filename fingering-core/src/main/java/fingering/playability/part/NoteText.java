package fingering.playability.part;

import fingering.music.Moment;
import fingering.music.Note;
import java.util.List;
import java.util.stream.Collectors;

/** Notes in words. */
public final class NoteText {
  private NoteText() {}

  /** The notes that begin, as written: {@code C4+E4}. */
  public static String of(Moment moment) {
    return of(moment.starting());
  }

  /** The notes as written, joined by plus signs. */
  public static String of(List<Note> notes) {
    return notes.stream().map(note -> note.written().display()).collect(Collectors.joining("+"));
  }
}
