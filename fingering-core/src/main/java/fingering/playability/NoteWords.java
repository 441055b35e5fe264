package fingering.playability;

import fingering.music.Moment;
import fingering.music.Note;
import java.util.List;
import java.util.stream.Collectors;

/** Notes in words. */
final class NoteWords {
  private NoteWords() {}

  /** The notes that begin, as written: {@code C4+E4}. */
  static String of(Moment moment) {
    return of(moment.struck());
  }

  /** The notes as written, joined by plus signs. */
  static String of(List<Note> notes) {
    return notes.stream().map(note -> note.written().display()).collect(Collectors.joining("+"));
  }
}
