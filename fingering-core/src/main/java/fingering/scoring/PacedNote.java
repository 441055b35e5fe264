package fingering.scoring;

import fingering.fingerboard.Grip;
import fingering.music.Moment;

/**
 * A note context together with the pace of the music. Rules see only the context; the scoring
 * multiplies what a {@link PacedNoteRule} charges by the slowness.
 *
 * @param context the music at the moment, as rules see it
 * @param slowness hundredths of a second by which the mean length of the notes around exceeds 0.15
 *     s, 0 or more
 */
public record PacedNote(NoteContext context, long slowness) {
  /** The note of a moment. */
  public static PacedNote of(Moment moment) {
    return new PacedNote(NoteContext.of(moment), Slowness.of(moment));
  }

  /** The amount that a rule charges for a grip; 0 if the rule judges transitions. */
  public long amount(CostRule rule, Grip grip) {
    if (rule instanceof NoteRule plain) {
      return Scoring.checked(rule, plain.amount(context, grip));
    }
    if (rule instanceof PacedNoteRule paced) {
      return slowness == 0 ? 0 : slowness * Scoring.checked(rule, paced.share(context, grip));
    }
    return 0;
  }
}
