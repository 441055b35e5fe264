package fingering.fingerboard;

import fingering.tables.Instrument;
import java.util.ArrayList;
import java.util.List;

/**
 * An independent model of the grips that a hand can hold, from string length and reach alone. It
 * tries all combinations of placements.
 */
final class PhysicalHand {
  private final Instrument instrument;
  private final Fingerboard fingerboard;
  private final double reach;
  private final boolean lowThumb;

  PhysicalHand(Fingerboard fingerboard, LeftHand hand) {
    this.fingerboard = fingerboard;
    instrument = fingerboard.instrument();
    reach = hand.reach(instrument);
    lowThumb = hand.lowThumb();
  }

  /** All combinations of one placement for each note that one hand can hold, bowed or plucked. */
  List<List<Placement>> holds(List<PitchRequest> notes, boolean plucked) {
    List<List<Placement>> all = List.of(List.of());
    for (PitchRequest note : notes) {
      List<Placement> alone = fingerboard.placements(note, true);
      List<List<Placement>> longer = new ArrayList<>();
      for (List<Placement> some : all) {
        for (Placement next : alone) {
          if (some.stream().allMatch(one -> one.string() != next.string() && pair(one, next))) {
            List<Placement> more = new ArrayList<>(some);
            more.add(next);
            longer.add(more);
          }
        }
      }
      all = longer;
    }
    return all.stream()
        .filter(some -> plucked || adjacent(some))
        .filter(this::thumbAllowed)
        .filter(PhysicalHand::barsLieFlat)
        .toList();
  }

  /** Whether the strings are adjacent. */
  private boolean adjacent(List<Placement> notes) {
    boolean[] sounding = new boolean[instrument.strings().size() + 1];
    notes.forEach(note -> sounding[note.string()] = true);
    int runs = 0;
    for (int s = 1; s < sounding.length; s++) {
      runs += sounding[s] && !sounding[s - 1] ? 1 : 0;
    }
    return runs == 1;
  }

  /** Whether the thumb is on the neck only together with a finger. */
  private boolean thumbAllowed(List<Placement> notes) {
    Frame frame = notes.get(0).frame();
    if (frame.shape() != Frame.Shape.THUMB || frame.first() - 2 >= (lowThumb ? 7 : 12)) {
      return true;
    }
    boolean thumb = false;
    boolean finger = false;
    for (Placement note : notes) {
      thumb |= note.finger() == Finger.THUMB;
      finger |= "1234".contains(note.finger().symbol()) || note.touch().isPresent();
    }
    return thumb && finger;
  }

  /** Whether no string under a bar sounds a note below it, and none is left out. */
  private static boolean barsLieFlat(List<Placement> notes) {
    for (Finger finger :
        List.of(Finger.THUMB, Finger.FIRST, Finger.SECOND, Finger.THIRD, Finger.FOURTH)) {
      List<Placement> bar = notes.stream().filter(note -> note.finger() == finger).toList();
      if (bar.size() < 2) {
        continue;
      }
      int top = bar.stream().mapToInt(Placement::string).min().orElseThrow();
      int bottom = bar.stream().mapToInt(Placement::string).max().orElseThrow();
      for (int string = top; string <= bottom; string++) {
        int under = string;
        if (notes.stream()
            .noneMatch(n -> n.string() == under && n.semitones() >= bar.get(0).semitones())) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean pair(Placement a, Placement b) {
    if (!a.frame().equals(b.frame())) {
      return false;
    }
    if (a.finger() == Finger.OPEN || b.finger() == Finger.OPEN) {
      return true;
    }
    int strings = Math.abs(a.string() - b.string());
    int higher = "T1234".indexOf(b.finger().symbol()) - "T1234".indexOf(a.finger().symbol());
    if (higher < 0) {
      return pair(b, a);
    }
    int semitones = b.semitones() - a.semitones();
    if (higher == 0) {
      return semitones == 0; // a bar
    }
    double length = instrument.stringLength();
    double apart =
        length / Math.pow(2, a.semitones() / 12.0) - length / Math.pow(2, b.semitones() / 12.0);
    boolean sideBySide = semitones == 0 && higher == 1 && strings > 1;
    double fingers = reach * (higher == 1 ? 0.55 : higher == 2 ? 0.65 : 1);
    return switch (a.frame().shape()) {
      case LETTERS ->
          (semitones >= higher || sideBySide)
              && !(a.finger() == Finger.THIRD && semitones > 2)
              && apart <= (semitones <= 2 * higher ? reach : fingers);
      case THUMB ->
          semitones >= higher && apart <= (a.finger() == Finger.THUMB ? 1.2 * reach : fingers);
      case CLOSED, EXTENDED_BACK, EXTENDED_FORWARD -> semitones > 0 || sideBySide;
    };
  }
}
