package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.print.PrintedNote.Tremolo.Role;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLine;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;

/** Finds trills without a free finger, and tremolos whose two notes do not lie under one hand. */
public final class TrillRule implements CheckRule {

  @Override
  public void check(PartMusic music, Findings findings) {
    for (PlayerLine line : music.lines()) {
      for (int m = 0; m < line.moments().size(); m++) {
        trills(line, m, findings);
        if (m + 1 < line.moments().size()
            && music.prints().tremolo(line.moment(m).starting(), Role.FIRST)
            && music.prints().tremolo(line.moment(m + 1).starting(), Role.SECOND)) {
          tremolo(music, line, m, findings);
        }
      }
      findings.endRuns();
    }
  }

  private static void trills(PlayerLine line, int m, Findings findings) {
    Moment moment = line.moment(m);
    for (Note note : moment.starting()) {
      if (note.marks().trill().isPresent() && !canTrill(line.grips().get(m), moment, note)) {
        findings.add(
            FindingKind.TRILL_WITHOUT_FINGER,
            Merge.IN_A_PASSAGE,
            Severity.RISKY,
            0,
            moment,
            () ->
                new Message(
                    "No finger is free to trill %s with %s"
                        .formatted(
                            note.written().display(),
                            note.marks().trill().orElseThrow().letterName()),
                    "Trill a single note, or remove the trill."));
      }
    }
  }

  private static boolean canTrill(ImmutableList<Grip> grips, Moment moment, Note note) {
    for (Grip grip : grips) {
      int at = grip.notes(moment).indexOf(note);
      if (grip.placements().get(at).trill().isPresent()) {
        return true;
      }
    }
    return false;
  }

  private static void tremolo(PartMusic music, PlayerLine line, int m, Findings findings) {
    Moment one = line.moment(m);
    Moment other = line.moment(m + 1);
    if (underOneHand(line.grips().get(m), line.grips().get(m + 1))) {
      return;
    }
    findings.add(
        FindingKind.TREMOLO_TOO_WIDE,
        Merge.IN_A_PASSAGE,
        Severity.RISKY,
        Math.abs(one.starting().get(0).midi() - other.starting().get(0).midi()),
        one,
        () ->
            new Message(
                "%s and %s do not lie under one hand, on one string or on two neighbouring strings"
                    .formatted(NoteText.of(one), NoteText.of(other)),
                music.section()
                    ? "Divide the section, and let each half repeat one of the notes."
                    : "Write notes that are closer together."));
  }

  private static boolean underOneHand(ImmutableList<Grip> some, ImmutableList<Grip> others) {
    for (Grip one : some) {
      for (Grip other : others) {
        if (one.frame().index() == other.frame().index() && alternate(one, other)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Returns whether one hand can keep both grips in place, on strings that the bow can alternate.
   */
  private static boolean alternate(Grip one, Grip other) {
    int lowest = Integer.MIN_VALUE;
    int highest = Integer.MAX_VALUE;
    for (Placement a : one.placements()) {
      lowest = Math.max(lowest, a.string());
      highest = Math.min(highest, a.string());
      for (Placement b : other.placements()) {
        boolean sameFinger =
            a.finger() == b.finger() && !a.open() && a.semitones() != b.semitones();
        if (sameFinger) {
          return false;
        }
      }
    }
    for (Placement b : other.placements()) {
      lowest = Math.max(lowest, b.string());
      highest = Math.min(highest, b.string());
    }
    int most = Math.max(one.placements().size(), other.placements().size());
    return lowest - highest <= Math.max(1, most);
  }
}
