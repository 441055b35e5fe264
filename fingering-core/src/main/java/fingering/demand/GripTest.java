package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;

/**
 * A question about one grip, with the answer yes or no. The answer must depend on the moment and
 * the grip only, because the search asks in any order and often. Plans may be made on several
 * threads.
 */
@FunctionalInterface
public interface GripTest {
  /**
   * Answers the question.
   *
   * @param moment the notes, with their place and time
   * @param grip how the left hand plays them: a placement for each {@linkplain Grip#notes note},
   *     lowest first
   */
  boolean test(Moment moment, Grip grip);
}
