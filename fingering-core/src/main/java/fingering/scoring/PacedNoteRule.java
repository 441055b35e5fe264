package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A note rule that charges the more the more slowly the music goes: a share for each hundredth of a
 * second that {@link NoteContext#singing} tells. The share itself does not depend on that.
 */
public interface PacedNoteRule extends NoteRule {
  /** How much is charged for each hundredth of a second; 0 or more. */
  long share(NoteContext stroke, Grip grip);

  @Override
  default long amount(NoteContext stroke, Grip grip) {
    return stroke.singing() == 0 ? 0 : stroke.singing() * share(stroke, grip);
  }
}
