package fingering.demand;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.MeasureBeat;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.StringJoiner;

/**
 * Fixes the fingering of one note. In a chord, at least one of the notes that begin must have it.
 *
 * @param when measure and beat of the note
 * @param string number of the string, 1 for the highest; empty for any
 * @param finger the finger; empty for any
 * @param position the position; empty for any
 */
public record FixNote(
    MeasureBeat when, OptionalInt string, Optional<Finger> finger, Optional<Position> position)
    implements GripDemand {
  /**
   * Checks the components.
   *
   * @throws FingeringException if neither string nor finger nor position is given
   */
  public FixNote {
    if (string.isEmpty() && finger.isEmpty() && position.isEmpty()) {
      throw new FingeringException(
          "nothing is fixed for the note at " + when + "; give a string, a finger or a position");
    }
  }

  @Override
  public BitSet moments(Passage passage) {
    BitSet moments = new BitSet();
    moments.set(when.indexIn(passage));
    return moments;
  }

  @Override
  public boolean allows(Moment moment, Grip grip) {
    for (int i = 0; i < grip.placements().size(); i++) {
      Note note = grip.notes(moment).get(i);
      if (moment.starting().contains(note) && matches(grip.placements().get(i))) {
        return true;
      }
    }
    return false;
  }

  private boolean matches(Placement placement) {
    return string.orElse(placement.string()) == placement.string()
        && finger.map(placement.finger()::equals).orElse(true)
        && position
            .map(p -> !placement.open() && placement.frame().position().equals(p))
            .orElse(true);
  }

  @Override
  public String text() {
    StringJoiner fingering = new StringJoiner(", ");
    string.ifPresent(s -> fingering.add("on string " + RomanNumeral.of(s)));
    finger.ifPresent(f -> fingering.add(f == Finger.OPEN ? "open" : "with finger " + f.symbol()));
    position.ifPresent(p -> fingering.add("in " + p.display() + " position"));
    return "play the note at " + when + " " + fingering;
  }
}
