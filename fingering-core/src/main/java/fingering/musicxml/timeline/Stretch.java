package fingering.musicxml.timeline;

import fingering.music.PrintedString.End;
import fingering.musicxml.element.WrittenNote;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Words over the staff and the time that they hold.
 *
 * @param <T> the meaning of the words
 * @param meaning the meaning of the words
 * @param words the words as printed
 * @param measure index of the measure with the words, from 0
 * @param start quarter notes from the start of the part
 * @param end the end of the time, exclusive
 * @param endedBy what ends it
 * @param voice the voice that the words apply to, empty for all
 */
public record Stretch<T>(
    T meaning,
    String words,
    int measure,
    BigFraction start,
    BigFraction end,
    End endedBy,
    String voice) {

  /** Returns whether the words apply to a note. */
  public boolean holds(WrittenNote note) {
    return note.within(start, end, voice);
  }
}
