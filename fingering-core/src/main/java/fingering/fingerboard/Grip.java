package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;

/**
 * What the left hand holds at one moment: a placement for each sounding note, all in one frame.
 *
 * @param placements the placements, in the order of the notes, lowest note first
 * @param frame the frame of the hand
 * @param divided true where no hand can hold these notes together, so that they are fingered as if
 *     each were alone (broken, or divided between players)
 */
public record Grip(ImmutableList<Placement> placements, Frame frame, boolean divided) {

  /** The grip of a single note. */
  public static Grip of(Placement placement) {
    return new Grip(ImmutableList.of(placement), placement.frame(), false);
  }

  /** The placement of the highest note, which carries the line. */
  public Placement top() {
    return placements.get(placements.size() - 1);
  }

  /**
   * The notes that the placements are for, in the same order: all that sound at the moment, or,
   * where the held ones are let go, those that begin.
   */
  public ImmutableList<Note> notes(Moment moment) {
    ImmutableList<Note> sounding = moment.sounding();
    return placements.size() == sounding.size() ? sounding : moment.starting();
  }

  /** Whether it agrees with every finger and string printed at its notes of the moment. */
  public boolean asPrinted(Moment moment) {
    ImmutableList<Note> notes = notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      if (!placements.get(i).asPrinted(notes.get(i).marks())) {
        return false;
      }
    }
    return true;
  }

  /** Whether no finger stops a string. */
  public boolean open() {
    for (int i = 0; i < placements.size(); i++) {
      if (!placements.get(i).open()) {
        return false;
      }
    }
    return true;
  }
}
