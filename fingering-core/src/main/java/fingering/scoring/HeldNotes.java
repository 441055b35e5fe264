package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.Optional;

/**
 * The notes that are held from one moment to the next, and their placements in a grip. A grip has a
 * placement for every sounding note or, if no hand can hold them all, for the struck notes only.
 * Each note therefore has two indices at the earlier moment. Immutable.
 *
 * @param before index of each held note among all notes that sounded before, -1 if it did not sound
 * @param beforeStruck index of each held note among the notes struck before, -1 if it was already
 *     held then
 * @param now index of each held note among all notes that sound now
 * @param soundingBefore number of notes that sounded before
 * @param sounding number of notes that sound now
 */
public record HeldNotes(
    ImmutableIntArray before,
    ImmutableIntArray beforeStruck,
    ImmutableIntArray now,
    int soundingBefore,
    int sounding) {
  /** No held notes. */
  public static final HeldNotes NONE =
      new HeldNotes(ImmutableIntArray.of(), ImmutableIntArray.of(), ImmutableIntArray.of(), 0, 0);

  /** The notes held from one moment to the next. */
  static HeldNotes between(Moment before, Moment now) {
    if (now.held().isEmpty()) {
      return NONE;
    }
    ImmutableList<Note> sounded = before.sounding();
    ImmutableList<Note> sounding = now.sounding();
    return new HeldNotes(
        indices(now.held(), sounded),
        indices(now.held(), before.starting()),
        indices(now.held(), sounding),
        sounded.size(),
        sounding.size());
  }

  private static ImmutableIntArray indices(ImmutableList<Note> held, ImmutableList<Note> among) {
    return ImmutableIntArray.copyOf(held.stream().mapToInt(among::indexOf));
  }

  /** Whether no note is held. */
  public boolean isEmpty() {
    return now.isEmpty();
  }

  /** The number of held notes. */
  public int count() {
    return now.length();
  }

  /**
   * Whether a held note sounded at the moment before.
   *
   * @param held index of the held note, from 0
   */
  public boolean sounded(int held) {
    return before.get(held) >= 0;
  }

  /**
   * The placement of a held note in the grip of the moment before; empty if that grip had released
   * it.
   *
   * @param held index of the held note, from 0
   */
  public Optional<Placement> placementBefore(int held, Grip grip) {
    ImmutableList<Placement> placements = grip.placements();
    int index = placements.size() == soundingBefore ? before.get(held) : beforeStruck.get(held);
    return index < 0 ? Optional.empty() : Optional.of(placements.get(index));
  }

  /**
   * The placement of a held note in the grip of this moment; empty if the grip releases it.
   *
   * @param held index of the held note, from 0
   */
  public Optional<Placement> placementNow(int held, Grip grip) {
    ImmutableList<Placement> placements = grip.placements();
    return placements.size() == sounding
        ? Optional.of(placements.get(now.get(held)))
        : Optional.empty();
  }
}
