package fingering.music;

import com.google.common.collect.ImmutableSet;

/** Words over the staff that hold for some of the notes below. */
public interface PrintedWords {
  /** The words as printed. */
  String words();

  /** Where the first of the notes begins. */
  Place from();

  /** Where the last of the notes begins. */
  Place to();

  /** The notes that they hold for. */
  ImmutableSet<NoteAddress> notes();

  /** As in a sentence: {@code 'sul G' in m. 5–8}. */
  default String told() {
    return "'"
        + words()
        + "' in m. "
        + from().measure()
        + (from().measureIndex() == to().measureIndex() ? "" : "–" + to().measure());
  }

  /** Whether a moment has one of the notes. */
  default boolean concerns(Moment moment) {
    return moment.starting().stream().anyMatch(note -> notes().contains(note.address()));
  }
}
