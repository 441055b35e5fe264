package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedNote;
import fingering.music.PrintedPart;
import fingering.music.Sign;
import fingering.musicxml.PartInfo;
import fingering.tables.Instrument;
import java.util.Optional;

/**
 * A part as the rules see it.
 *
 * @param info the part
 * @param passage all its music
 * @param forces how many play from it
 * @param signs what is printed besides the notes, in order of time
 * @param print what is printed on the staff
 * @param playable the moments of the passage without the notes out of range, in the same order;
 *     empty where no note is left
 * @param ways every grip of each of these; empty where no note is left
 * @param lines what each player has of it, the upper line first; empty where nothing can be played
 */
record PartMusic(
    PartInfo info,
    Passage passage,
    Forces forces,
    ImmutableList<Sign> signs,
    PrintedPart print,
    ImmutableList<Optional<Moment>> playable,
    ImmutableList<ImmutableList<Grip>> ways,
    ImmutableList<Line> lines) {

  Instrument instrument() {
    return passage.instrument();
  }

  ImmutableList<Moment> moments() {
    return passage.moments();
  }

  boolean section() {
    return forces == Forces.SECTION;
  }

  /** How a note is printed. */
  PrintedNote printed(Note note) {
    return printed(print, note.address());
  }

  /** How the note at an address is printed; notes stand in the order of their addresses. */
  static PrintedNote printed(PrintedPart print, NoteAddress address) {
    PrintedMeasure measure =
        print.measures().get(address.measure() - print.measures().get(0).index());
    ImmutableList<PrintedNote> notes = measure.notes();
    // Only rests that are not printed and cue notes are missing before it.
    for (int i = Math.min(address.note(), notes.size() - 1); i >= 0; i--) {
      if (notes.get(i).address().note() == address.note()) {
        return notes.get(i);
      }
    }
    throw new IllegalStateException("the note at " + address + " is not printed");
  }

  /** The first moment that begins at a time or later; the number of moments where there is none. */
  int from(Sign sign) {
    int low = 0;
    int high = moments().size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments().get(middle).struck().get(0).start().compareTo(sign.start()) < 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
