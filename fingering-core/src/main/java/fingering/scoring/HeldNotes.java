package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.Optional;

/**
 * The notes of a moment that sound on from before, and which placements of a grip are theirs. A
 * grip holds all that sounds or, where no hand can, what is struck alone: each note has therefore
 * two numbers before. Immutable.
 *
 * @param before where each stands among all notes that sounded before, -1 where it did not sound
 * @param beforeStruck where each stands among the notes that were struck before, -1 where it was
 *     held then, too
 * @param now where each stands among all notes that sound now
 * @param soundingBefore how many notes sounded before
 * @param sounding how many sound now
 */
public record HeldNotes(
    ImmutableIntArray before,
    ImmutableIntArray beforeStruck,
    ImmutableIntArray now,
    int soundingBefore,
    int sounding) {
  /** No note sounds on. */
  public static final HeldNotes NONE =
      new HeldNotes(ImmutableIntArray.of(), ImmutableIntArray.of(), ImmutableIntArray.of(), 0, 0);

  /** The notes that are held at a moment, seen from the moment before it. */
  static HeldNotes between(Moment before, Moment now) {
    if (now.held().isEmpty()) {
      return NONE;
    }
    ImmutableList<Note> sounded = before.sounding();
    ImmutableList<Note> sounding = now.sounding();
    return new HeldNotes(
        places(now.held(), sounded),
        places(now.held(), before.starting()),
        places(now.held(), sounding),
        sounded.size(),
        sounding.size());
  }

  private static ImmutableIntArray places(ImmutableList<Note> held, ImmutableList<Note> among) {
    return ImmutableIntArray.copyOf(held.stream().mapToInt(among::indexOf));
  }

  /** Whether there are none. */
  public boolean isEmpty() {
    return now.isEmpty();
  }

  /** How many there are. */
  public int count() {
    return now.length();
  }

  /** Whether one of them sounded at the moment before. */
  public boolean sounded(int held) {
    return before.get(held) >= 0;
  }

  /** How the grip of the moment before took one of them; empty if it had let go of it. */
  public Optional<Placement> left(int held, Grip grip) {
    ImmutableList<Placement> placements = grip.placements();
    int at = placements.size() == soundingBefore ? before.get(held) : beforeStruck.get(held);
    return at < 0 ? Optional.empty() : Optional.of(placements.get(at));
  }

  /** How the grip of this moment takes one of them; empty if it lets go of it. */
  public Optional<Placement> reached(int held, Grip grip) {
    ImmutableList<Placement> placements = grip.placements();
    return placements.size() == sounding
        ? Optional.of(placements.get(now.get(held)))
        : Optional.empty();
  }
}
