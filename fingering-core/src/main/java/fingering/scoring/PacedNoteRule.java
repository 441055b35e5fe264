package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A note rule that charges the more the more slowly the music goes: a share for each hundredth of a
 * second that {@link NoteContext#slowness} tells. The share itself does not depend on that.
 */
public interface PacedNoteRule extends NoteRule {
  /** How much is charged for each hundredth of a second; 0 or more. */
  long share(NoteContext context, Grip grip);

  @Override
  default long amount(NoteContext context, Grip grip) {
    return context.slowness() == 0 ? 0 : context.slowness() * share(context, grip);
  }
}
