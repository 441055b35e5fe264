package fingering.playability.rules;

import fingering.playability.part.PartMusic;

/**
 * A rule of the check, which finds one family of problems. It reads the level when it is created,
 * and stores nothing about parts.
 */
public interface CheckRule {
  /** Adds the findings in a part, in the order of the music. */
  void check(PartMusic music, Findings findings);
}
