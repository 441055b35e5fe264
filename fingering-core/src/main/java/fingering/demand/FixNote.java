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
 * Take one note so. In a chord one of the notes that begin must be taken so.
 *
 * @param when measure and beat
 * @param string number of the string, 1 being the highest; empty for any
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
          "nothing is fixed for m. " + when.measure() + "; give a string, a finger or a position");
    }
  }

  @Override
  public BitSet concerns(Passage passage) {
    BitSet moments = new BitSet();
    moments.set(when.in(passage));
    return moments;
  }

  @Override
  public boolean keeps(Moment moment, Grip grip) {
    for (int i = 0; i < grip.placements().size(); i++) {
      Note note = grip.notes(moment).get(i);
      if (moment.starting().contains(note) && taken(grip.placements().get(i))) {
        return true;
      }
    }
    return false;
  }

  private boolean taken(Placement placement) {
    return string.orElse(placement.string()) == placement.string()
        && finger.map(placement.finger()::equals).orElse(true)
        && position
            .map(p -> !placement.open() && placement.frame().position().equals(p))
            .orElse(true);
  }

  @Override
  public String words() {
    StringJoiner how = new StringJoiner(", ");
    string.ifPresent(s -> how.add("string " + RomanNumeral.of(s)));
    finger.ifPresent(f -> how.add(f == Finger.OPEN ? "open" : "finger " + f.symbol()));
    position.ifPresent(p -> how.add(p.display() + " position"));
    return "take the note at "
        + when.measure()
        + "."
        + when.beat().toPlainString()
        + " with "
        + how;
  }
}
