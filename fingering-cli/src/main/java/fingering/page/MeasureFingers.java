package fingering.page;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import fingering.music.Measure;
import fingering.page.music.PrintedSigns;
import fingering.page.music.ShiftDirection;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;

/**
 * The fingers of one measure in a line: {@code ↑3rd II 1 3 2 I 0}. A string is named where it
 * changes, a position where the hand shifts, and at the beginning if it is not the first.
 */
public final class MeasureFingers {
  private final Plan plan;
  private final ImmutableListMultimap<Integer, PlannedNote> notes;

  /** Groups the notes of a plan by measure. */
  public MeasureFingers(Plan plan) {
    this.plan = plan;
    notes = Multimaps.index(plan.notes(), note -> note.note().place().measureIndex());
  }

  /** The fingers of the plan in a measure; empty if no note begins there. */
  public String in(Measure measure) {
    StringBuilder text = new StringBuilder();
    int string = 0;
    int moment = -1;
    boolean placed = false;
    for (PlannedNote note : notes.get(measure.index())) {
      boolean chord = note.moment() == moment;
      moment = note.moment();
      if (text.length() > 0) {
        text.append(chord ? "+" : " ");
      }
      if (note.shift() && !chord && note.moment() > 0) {
        text.append(
            PrintedSigns.shift(plan, note).filter(d -> d == ShiftDirection.UP).isPresent()
                ? '↑'
                : '↓');
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
