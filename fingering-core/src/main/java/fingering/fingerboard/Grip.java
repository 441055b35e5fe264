package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;

/**
 * A grip of the left hand at one moment: a placement for each sounding note, all in one frame.
 *
 * @param placements the placements in the order of the notes, lowest first; at least one
 * @param frame the frame of the hand
 * @param divided whether no hand can hold these notes together. Each is then fingered as if it were
 *     alone: the chord is broken, or divided between players
 */
public record Grip(ImmutableList<Placement> placements, Frame frame, boolean divided) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if there is no placement
   */
  public Grip {
    if (placements.isEmpty()) {
      throw new IllegalArgumentException("a grip without a placement");
    }
  }

  /** The grip of a single note. */
  public static Grip of(Placement placement) {
    return new Grip(ImmutableList.of(placement), placement.frame(), false);
  }

  /** The placement of the highest note, usually the melody. */
  public Placement top() {
    return placements.get(placements.size() - 1);
  }

  /**
   * The notes of the placements, in the same order: all that sound at the moment, or only those
   * that start, if the held notes are released.
   */
  public ImmutableList<Note> notes(Moment moment) {
    ImmutableList<Note> sounding = moment.sounding();
    return placements.size() == sounding.size() ? sounding : moment.starting();
  }

  /** Whether it matches all fingers and strings printed at its notes. */
  public boolean matchesPrinted(Moment moment) {
    ImmutableList<Note> notes = notes(moment);
    for (int i = 0; i < notes.size(); i++) {
      if (!placements.get(i).matchesPrinted(notes.get(i).marks())) {
        return false;
      }
    }
    return true;
  }

  /** Whether all its strings are open. */
  public boolean open() {
    for (int i = 0; i < placements.size(); i++) {
      if (!placements.get(i).open()) {
        return false;
      }
    }
    return true;
  }
}
