package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.LineCursor;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The open ties, which lead to the next note. */
final class Ties {

  private record Open(LineCursor place, PendingHead from) {}

  private final List<Open> open = new ArrayList<>();

  /** Begins ties at notes. */
  void begin(LineCursor place, List<PendingHead> heads) {
    for (PendingHead head : heads) {
      head.tieStart = true;
      open.add(new Open(place, head));
    }
  }

  /**
   * Returns the pitch of the open tie at a staff position, which the next note continues.
   *
   * @param natural the natural note at that position
   */
  Optional<Pitch> tiedTo(Pitch natural) {
    return open.stream()
        .map(tie -> tie.from.pitch)
        .filter(pitch -> pitch.letterNumber() == natural.letterNumber())
        .findFirst();
  }

  /**
   * Ends the ties at the next note, chord or rest that is not a grace note.
   *
   * @throws AbcException if it does not have their pitches
   */
  void add(PendingNote pending) {
    for (Open tie : open) {
      PendingHead to =
          pending.heads.stream()
              .filter(head -> head.pitch.midi() == tie.from.pitch.midi() && !head.tieStop)
              .findFirst()
              .orElseThrow(() -> tie.place.error(mismatch(tie.from.pitch, pending)));
      to.tieStop = true;
    }
    open.clear();
  }

  private static String mismatch(Pitch from, PendingNote to) {
    return "a tie leads from %s to %s: tie a note to the same note, or write a slur with ( and )."
        .formatted(from.display(), to.rest() ? "a rest" : to.heads.get(0).pitch.display());
  }

  /** Drops the open ties at the end of a repeat, because they continue elsewhere. */
  void repeat() {
    open.clear();
  }

  /**
   * Ends the tune.
   *
   * @throws AbcException if a tie is open
   */
  void finish() {
    if (!open.isEmpty()) {
      throw open.get(0)
          .place
          .error(
              "no note follows the tie that begins here: write the note after it, or leave the tie out.");
    }
  }
}
