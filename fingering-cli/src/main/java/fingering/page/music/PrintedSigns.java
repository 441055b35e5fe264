package fingering.page.music;

import fingering.fingerboard.Placement;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import java.util.Optional;

/** The marks of a planned note: its finger and its shift. */
public final class PrintedSigns {
  private PrintedSigns() {}

  /**
   * The symbol of the finger: {@code 4°} for a natural harmonic, {@code 1◇4} for an artificial one
   * that the fourth finger touches.
   */
  public static String finger(Placement placement) {
    String stopping = placement.finger().symbol();
    return placement
        .touch()
        .map(
            touch ->
                touch.finger() == placement.finger()
                    ? stopping + "°"
                    : stopping + "◇" + touch.finger().symbol())
        .orElse(stopping);
  }

  /** The direction of the shift to a note; empty if the hand does not shift to it. */
  public static Optional<ShiftDirection> shift(Plan plan, PlannedNote note) {
    if (!note.shift() || note.moment() == 0) {
      return Optional.empty();
    }
    double before = plan.grips().get(note.moment() - 1).frame().first();
    return Optional.of(
        note.placement().frame().first() > before ? ShiftDirection.UP : ShiftDirection.DOWN);
  }
}
