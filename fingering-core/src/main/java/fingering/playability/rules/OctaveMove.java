package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.playability.CheckLevel;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLines;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.Optional;

/** Moves notes by octaves until players at a level can play them. */
final class OctaveMove {
  private static final int MOST = 4;

  private final CheckLevel level;

  OctaveMove(CheckLevel level) {
    this.level = level;
  }

  /** Returns whether the notes alone, without held ones, lie in the positions of the level. */
  boolean inPosition(PartMusic music, Moment moment, ImmutableList<Note> notes) {
    ImmutableList<Grip> grips = music.gripFinder().apply(PlayerLines.with(moment, notes));
    Position highest = level.highest(music.instrument());
    return grips.stream()
        .anyMatch(grip -> !grip.divided() && grip.frame().position().compareTo(highest) <= 0);
  }

  /**
   * Returns how far a note has to move: {@code an octave lower}, {@code two octaves higher}; empty
   * if no octave helps.
   */
  Optional<String> words(PartMusic music, Moment moment, Note note, boolean higher) {
    for (int octaves = 1; octaves <= MOST; octaves++) {
      int by = higher ? octaves : -octaves;
      if (plays(music, moment, note, by)) {
        return Optional.of(
            (octaves == 1 ? "an octave" : octaves == 2 ? "two octaves" : octaves + " octaves")
                + (higher ? " higher" : " lower"));
      }
    }
    return Optional.empty();
  }

  private boolean plays(PartMusic music, Moment moment, Note note, int octaves) {
    try {
      Note moved =
          new Note(
              note.address(),
              note.place(),
              note.written().plusOctaves(octaves),
              note.sounding().plusOctaves(octaves),
              note.start(),
              note.length(),
              note.marks());
      return inPosition(music, moment, ImmutableList.of(moved));
    } catch (FingeringException e) {
      // There is no such pitch.
      return false;
    }
  }
}
