package fingering.scoring;

import fingering.fingerboard.Grip;
import fingering.music.Moment;

/**
 * A transition together with its time. Rules see only the transition; the scoring adds the time.
 *
 * @param transition the music between the two moments, as rules see it
 * @param time the time between the two moments
 */
public record TimedTransition(Transition transition, TransitionTime time) {
  /** The transition between two successive moments. */
  public static TimedTransition between(Moment before, Moment now) {
    TransitionTime time = TransitionTime.between(before, now);
    return new TimedTransition(Transition.between(before, now, time), time);
  }

  /** The amount that a rule charges for two successive grips; 0 if the rule judges single grips. */
  public long amount(CostRule rule, Grip before, Grip now) {
    if (rule instanceof TransitionRule plain) {
      return plain.appliesTo(transition) && plain.condition().met(transition, before, now)
          ? Scoring.checked(rule, plain.amount(transition, before, now))
          : 0;
    }
    if (rule instanceof TimedTransitionRule timed) {
      return timed.condition().met(transition, before, now)
          ? time.missing(timed, Scoring.needed(timed, transition, before, now), before.open())
          : 0;
    }
    return 0;
  }
}
