package fingering.cli.text;

import fingering.music.Measure;
import fingering.page.PrintedSigns;
import fingering.page.staff.Lane.Direction;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import java.util.List;

/**
 * The fingers of one measure in a line: {@code ↑3rd II 1 3 2 I 0}. A string is named where it
 * changes, a position where the hand shifts, and at the beginning if it is not the first.
 */
final class MeasureCells {
  private MeasureCells() {}

  /** The fingers of a plan in a measure; empty if no note begins there. */
  static String of(Plan plan, Measure measure) {
    List<PlannedNote> notes =
        plan.notes().stream()
            .filter(note -> note.note().place().measureIndex() == measure.index())
            .toList();
    StringBuilder text = new StringBuilder();
    int string = 0;
    int moment = -1;
    boolean placed = false;
    for (PlannedNote note : notes) {
      boolean chord = note.moment() == moment;
      moment = note.moment();
      if (text.length() > 0) {
        text.append(chord ? "+" : " ");
      }
      if (note.shift() && !chord && note.moment() > 0) {
        text.append(
            PrintedSigns.shift(plan, note).filter(d -> d == Direction.UP).isPresent() ? '↑' : '↓');
        text.append(note.position().display()).append(' ');
        placed = true;
      } else if (!placed && !note.open()) {
        if (!note.position().equals(Position.FIRST)) {
          text.append(note.position().display()).append(' ');
        }
        placed = true;
      }
      if (note.placement().string() != string) {
        string = note.placement().string();
        text.append(RomanNumeral.of(string)).append(' ');
      }
      text.append(PrintedSigns.finger(note.placement()));
    }
    return text.toString();
  }
}
