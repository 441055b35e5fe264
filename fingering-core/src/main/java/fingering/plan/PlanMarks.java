package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.marking.NoteMarks;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The marks that a teacher would write into the part: the finger at every note, the string where it
 * changes, and the position at every shift.
 */
public final class PlanMarks {
  private PlanMarks() {}

  /** The marks of a plan, in the order of its notes. */
  public static ImmutableList<NoteMarks> of(Plan plan) {
    ImmutableList.Builder<NoteMarks> marks = ImmutableList.builder();
    int string = 0;
    boolean first = true;
    for (PlannedNote note : plan.notes()) {
      boolean stringChanges = note.placement().string() != string;
      string = note.placement().string();
      boolean showPosition = note.shift() || first;
      first = false;
      marks.add(
          new NoteMarks(
              note.note().address(),
              Optional.of(note.finger()),
              stringChanges ? OptionalInt.of(string) : OptionalInt.empty(),
              showPosition ? Optional.of(position(plan, note)) : Optional.empty()));
    }
    return marks.build();
  }

  /**
   * The marks needed by a player who keeps the hand in place unless a mark says otherwise: shifts,
   * a fourth finger in place of an open string, stretches, slides and double stops. The list has no
   * entry for a note without a mark.
   */
  public static ImmutableList<NoteMarks> sparing(Plan plan) {
    return SparingMarks.of(plan, of(plan));
  }

  /** {@code 3rd pos.}, or in thumb position {@code thumb on D}. */
  private static String position(Plan plan, PlannedNote note) {
    return note.thumb(plan.passage().instrument())
        .map(pitch -> "thumb on " + pitch.letterName())
        .orElseGet(() -> note.placement().frame().position().display() + " pos.");
  }
}
