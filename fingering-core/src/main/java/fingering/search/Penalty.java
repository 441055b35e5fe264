package fingering.search;

import fingering.fingerboard.Grip;

/** What a grip offends against a brief where nothing better can be had. */
public interface Penalty {
  /** Offends nothing. */
  Penalty NONE = (moment, grip) -> 0;

  /**
   * The offence, 0 or more.
   *
   * @param moment index of the moment in the passage, from 0
   */
  long of(int moment, Grip grip);
}
