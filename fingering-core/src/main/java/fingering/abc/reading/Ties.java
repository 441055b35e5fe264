package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The open ties, which lead to the next note. */
final class Ties {

  private record Open(LineCursor place, PendingHead from) {}

  private final Repairs repairs;
  private final List<Open> open = new ArrayList<>();

  Ties(Repairs repairs) {
    this.repairs = repairs;
  }

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
   * Ends the ties at the next note, chord or rest that is not a grace note. Ties to other pitches
   * are left out.
   */
  void add(PendingNote pending) {
    for (Open tie : open) {
      pending.heads.stream()
          .filter(head -> head.pitch.midi() == tie.from.pitch.midi() && !head.tieStop)
          .findFirst()
          .ifPresentOrElse(
              to -> to.tieStop = true, () -> leaveOut(tie, mismatch(tie.from.pitch, pending)));
    }
    open.clear();
  }

  private static String mismatch(Pitch from, PendingNote to) {
    return "a tie leads from %s to %s; it was left out"
        .formatted(from.display(), to.rest() ? "a rest" : to.heads.get(0).pitch.display());
  }

  /** Drops the open ties at the end of a repeat, because they continue elsewhere. */
  void repeat() {
    open.clear();
  }

  /** Ends the tune. Open ties are left out. */
  void finish() {
    open.forEach(tie -> leaveOut(tie, "no note follows the tie that begins here; it was left out"));
  }

  private void leaveOut(Open tie, String what) {
    tie.from.tieStart = false;
    repairs.add(tie.place, what);
  }
}
