package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.GripAspect;
import fingering.scoring.HandMovement;
import fingering.scoring.NoteContext;
import fingering.scoring.ShiftCondition;
import fingering.scoring.Transition;
import fingering.tables.Position;

/**
 * Rules of sound. A line that sings, see {@link NoteContext#singing}, should change its colour as
 * little as the hand allows. These rules charge nothing in quick or detached music.
 */
final class SoundRules {
  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  /**
   * The lowest open string that sounds shrill: the violin's E string, not the A string of viola and
   * cello, which sings (common practice, no source).
   */
  private static final int SHRILL_MIDI = 74;

  private SoundRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedNoteRule(
            "open-string-singing",
            "Open string in a singing line",
            "An open string stands out of a singing line, because it has no vibrato.",
            "half note",
            (context, grip) -> bowedOpen(context, grip) ? context.singing() : 0),
        new NamedNoteRule(
            "top-string-singing",
            "Top string in a singing line",
            "A singing line is warmer on a lower string than on the violin's top string.",
            "half note",
            (context, grip) -> shrill(context, grip) ? context.singing() : 0),
        new NamedNoteRule(
            "low-position-singing",
            "Low position in a singing line",
            "In half and 1st position the vibrato of a singing line is less free.",
            "half note",
            (context, grip) -> lowPosition(grip) ? context.singing() : 0),
        new NamedNoteRule(
            "fourth-finger-singing",
            "Fourth finger in a singing line",
            "The fourth finger's vibrato is narrower than that of the others, which a singing line shows.",
            "half note",
            (context, grip) -> fourth(grip) ? context.singing() : 0),
        new NamedTransitionRule(
                "crossing-singing",
                "Crossing in a singing line",
                "A change of string is heard as a change of colour in a singing line.",
                "half crossing",
                (transition, before, now) ->
                    crosses(transition, before, now) ? transition.singing() : 0)
            .seeing(GripAspect.STRINGS)
            .where(transition -> transition.singing() > 0 && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "crossing-on-step",
                "Crossing on a step",
                "The bow changes string for a step of the scale, which would sound more connected on one string.",
                "crossing",
                (transition, before, now) ->
                    step(transition) && crosses(transition, before, now) ? 1 : 0)
            .seeing(GripAspect.STRINGS)
            .where(transition -> step(transition) && HandMovement.bowed(transition)),
        new NamedTransitionRule(
                "crossing-at-ornament",
                "Crossing at an ornament",
                "A grace note stays on the string of its main note.",
                "crossing",
                (transition, before, now) ->
                    transition.grace() && crosses(transition, before, now) ? 1 : 0)
            .seeing(GripAspect.STRINGS)
            .where(transition -> transition.grace() && HandMovement.bowed(transition)),
        new NamedNoteRule(
            "open-top-string",
            "Open top string",
            "The violin's open top string is shrill and may whistle.",
            "note",
            (context, grip) -> bowedOpen(context, grip) && shrill(context, grip) ? 1 : 0),
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
            .seeing(GripAspect.HAND)
            .on(ShiftCondition.SHIFT)
            .where(Transition::offBeat));
  }

  private static boolean bowedOpen(NoteContext context, Grip grip) {
    return grip.top().open() && !context.plucked();
  }

  private static boolean shrill(NoteContext context, Grip grip) {
    return grip.top().string() == 1 && context.top() - grip.top().semitones() >= SHRILL_MIDI;
  }

  /** Only on violin and viola; the low positions of cello and bass are as free as the others. */
  private static boolean lowPosition(Grip grip) {
    return grip.top().frame().shape() == Frame.Shape.LETTERS
        && (in(grip, Position.HALF) || in(grip, Position.FIRST));
  }

  private static boolean fourth(Grip grip) {
    return grip.top().finger() == Finger.FOURTH
        && grip.frame().shape() == Frame.Shape.LETTERS
        && grip.top().stopped();
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
