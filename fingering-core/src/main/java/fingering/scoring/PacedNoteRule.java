package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A rule that judges a single grip, and charges more the slower the music is. The rule gives the
 * amount per hundredth of a second; the scoring multiplies it by {@link PacedNote#slowness}.
 */
public non-sealed interface PacedNoteRule extends CostRule {
  @Override
  default int lookBack() {
    return 0;
  }

  /** The amount charged for each hundredth of a second of slowness, 0 or more. */
  long share(NoteContext context, Grip grip);
}
