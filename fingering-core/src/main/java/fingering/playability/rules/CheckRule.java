package fingering.playability.rules;

import fingering.playability.part.PartMusic;

/**
 * A small rule that looks for findings of one family. It keeps nothing from part to part; what it
 * needs of the level it looks up when it is made.
 */
public interface CheckRule {
  /** Tells what it finds in a part, in the order of the music. */
  void check(PartMusic music, Findings findings);
}
