package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.HandMovement;
import fingering.scoring.NoteContext;
import fingering.scoring.ShiftCondition;
import fingering.scoring.Transition;
import fingering.tables.Position;

/** Rules of sound. Most of them charge more the slower the music is, and nothing in fast music. */
final class SoundRules {
  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private SoundRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedNoteRule.Paced(
            "open-string-slow",
            "Open string in slow music",
            "The slower the music, the more an open string stands out, because it has no vibrato.",
            "hundredth of a second",
            (context, grip) -> bowedOpen(context, grip) ? 1 : 0),
        new NamedNoteRule.Paced(
            "top-string-slow",
            "Top string in slow music",
            "The slower the music, the more the warmer sound of the lower strings is missed.",
            "hundredth of a second",
            (context, grip) -> grip.top().string() == 1 ? 1 : 0),
        new NamedNoteRule.Paced(
            "low-position-slow",
            "Low position in slow music",
            "The slower the music, the more the freer vibrato of higher positions is missed.",
            "hundredth of a second",
            (context, grip) -> lowPosition(grip) ? 1 : 0),
        new NamedTransitionRule.Paced(
            "crossing-slow",
            "Crossing in slow music",
            "The slower the music, the more a change of string is heard as a change of colour.",
            "hundredth of a second",
            (transition, before, now) -> crosses(transition, before, now) ? 1 : 0),
        new NamedTransitionRule(
                "crossing-on-step",
                "Crossing on a step",
                "The bow changes string for a step of the scale, which would sound more connected on one string.",
                "crossing",
                (transition, before, now) ->
                    step(transition) && crosses(transition, before, now) ? 1 : 0)
            .where(transition -> step(transition) && HandMovement.bowed(transition)),
        new NamedNoteRule(
            "open-top-string",
            "Open top string",
            "The open top string is shrill and may whistle.",
            "note",
            (context, grip) -> bowedOpen(context, grip) && grip.top().string() == 1 ? 1 : 0),
        new NamedNoteRule(
            "high-position",
            "Above 3rd position",
            "Above 3rd position the notes lie closer together, and the hand leaves the neck.",
            "position",
            SoundRules::aboveThird),
        new NamedTransitionRule(
                "shift-off-beat",
                "Shift off the beat",
                "A shift is least noticeable on the beat, with the new bow or the accent.",
                "shift",
                (transition, before, now) ->
                    transition.offBeat() && HandMovement.shifts(transition, before, now) ? 1 : 0)
            .on(ShiftCondition.SHIFT)
            .where(Transition::offBeat));
  }

  private static boolean bowedOpen(NoteContext context, Grip grip) {
    return grip.top().open() && !context.plucked();
  }

  private static boolean lowPosition(Grip grip) {
    return in(grip, Position.HALF) || in(grip, Position.FIRST);
  }

  private static boolean in(Grip grip, Position position) {
    Placement top = grip.top();
    return !top.open() && top.frame().position().equals(position);
  }

  private static long aboveThird(NoteContext context, Grip grip) {
    Frame frame = grip.top().frame();
    if (grip.top().open() || frame.thumb().isPresent()) {
      return 0;
    }
    return Math.max(0, frame.position().number() - 3);
  }

  private static boolean crosses(Transition transition, Grip before, Grip now) {
    return before.top().string() != now.top().string() && HandMovement.bowed(transition);
  }

  private static boolean step(Transition transition) {
    return Math.abs(transition.rises()) <= STEP;
  }
}
