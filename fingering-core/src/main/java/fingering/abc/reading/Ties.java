package fingering.abc.reading;

import fingering.abc.reading.PendingNote.DraftHead;
import fingering.abc.syntax.LineCursor;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Ties that lead to the next note. */
final class Ties {

  private record Open(LineCursor place, DraftHead from) {}

  private final List<Open> open = new ArrayList<>();

  /** Begins ties at these notes. */
  void begin(LineCursor place, List<DraftHead> heads) {
    for (DraftHead head : heads) {
      head.tieStart = true;
      open.add(new Open(place, head));
    }
  }

  /** The pitch of the tied note on that place of the staff, for the note that it is held on as. */
  Optional<Pitch> heldOn(Pitch natural) {
    return open.stream()
        .map(tie -> tie.from.pitch)
        .filter(pitch -> pitch.letterNumber() == natural.letterNumber())
        .findFirst();
  }

  /** Takes the next note, chord or rest that has a length. */
  void add(PendingNote draft) {
    for (Open tie : open) {
      DraftHead to =
          draft.heads.stream()
              .filter(head -> head.pitch.midi() == tie.from.pitch.midi() && !head.tieStop)
              .findFirst()
              .orElseThrow(() -> tie.place.wrong(leads(tie.from.pitch, draft)));
      to.tieStop = true;
    }
    open.clear();
  }

  private static String leads(Pitch from, PendingNote to) {
    return "a tie leads from %s to %s: tie a note to the same note, or write a slur with ( and )."
        .formatted(from.display(), to.rest() ? "a rest" : to.heads.get(0).pitch.display());
  }

  /** Comes to the end of a repeat: where its ties lead is another matter. */
  void repeat() {
    open.clear();
  }

  /** Ends the tune. */
  void finish() {
    if (!open.isEmpty()) {
      throw open.get(0)
          .place
          .wrong(
              "the tie that begins here leads to no note: put the note behind it, or leave it out.");
    }
  }
}
