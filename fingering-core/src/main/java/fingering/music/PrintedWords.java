package fingering.music;

import com.google.common.collect.ImmutableSet;

/** Words above the staff that apply to some of the notes. */
public interface PrintedWords {
  /** The words as printed. */
  String words();

  /** The place of the first note they apply to. */
  Place from();

  /** The place of the last note they apply to. */
  Place to();

  /** The notes they apply to. */
  ImmutableSet<NoteAddress> notes();

  /** For use in a sentence: {@code 'sul G' in m. 5–8}. */
  default String description() {
    return "'" + words() + "' in m. " + from().measuresTo(to());
  }

  /** Whether they apply to a note that starts at the moment. */
  default boolean appliesTo(Moment moment) {
    return moment.starting().stream().anyMatch(note -> notes().contains(note.address()));
  }
}
