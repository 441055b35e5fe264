package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.tables.Position;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Rules of sound: what matters the more the more slowly the music goes. In quick passage work they
 * charge nothing.
 */
final class SingingRules {
  /** Music whose notes last no longer on the average does not sing, in microseconds. */
  private static final long SINGS = 150_000;

  private static final long HUNDREDTH = 10_000;

  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private SingingRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedNoteRule(
            "open-string-singing",
            "Open string in singing music",
            "The slower the music, the more an open string, without vibrato, falls out of the line.",
            "hundredth of a second",
            (moment, grip) -> bowedOpen(moment, grip) ? singing(moment) : 0),
        new NamedNoteRule(
            "top-string-singing",
            "Top string in singing music",
            "The slower the music, the warmer it sounds on the strings below the brightest.",
            "hundredth of a second",
            (moment, grip) -> grip.top().string() == 1 ? singing(moment) : 0),
        new NamedNoteRule(
            "low-position-singing",
            "Near the nut in singing music",
            "The slower the music, the more the freer vibrato of the higher positions is missed.",
            "hundredth of a second",
            (moment, grip) -> nearTheNut(grip) ? singing(moment) : 0),
        new NamedTransitionRule(
            "crossing-singing",
            "Crossing in singing music",
            "The slower the music, the more a change of string changes the voice.",
            "hundredth of a second",
            (passing, before, now) -> crosses(passing, before, now) ? singing(passing.now()) : 0),
        new NamedTransitionRule(
            "crossing-step",
            "Crossing for a step",
            "The bow changes string for a step of the scale, which one string would have joined.",
            "crossing",
            (passing, before, now) -> step(passing) && crosses(passing, before, now) ? 1 : 0),
        new NamedNoteRule(
            "open-top-string",
            "Open top string",
            "The open top string is shrill, and may whistle.",
            "note",
            (moment, grip) -> bowedOpen(moment, grip) && grip.top().string() == 1 ? 1 : 0),
        new NamedNoteRule(
            "high-position",
            "Above 3rd position",
            "Higher up the places lie closer, and the hand has left the neck.",
            "position",
            SingingRules::above),
        new NamedTransitionRule(
            "shift-off-beat",
            "Shift off the beat",
            "A shift hides best where the new bow or the accent comes: on the beat.",
            "shift",
            (passing, before, now) ->
                offBeat(passing.now()) && ShiftRules.shifts(passing, before, now) ? 1 : 0));
  }

  /** Hundredths of a second by which the notes around are longer than those of passage work. */
  private static long singing(Moment moment) {
    return Math.max(0, moment.paceMicros() - SINGS) / HUNDREDTH;
  }

  private static boolean bowedOpen(Moment moment, Grip grip) {
    return grip.top().open() && !moment.pizzicato();
  }

  private static boolean nearTheNut(Grip grip) {
    return in(grip, Position.HALF) || in(grip, Position.FIRST);
  }

  private static boolean in(Grip grip, Position position) {
    Placement top = grip.top();
    return !top.open() && top.frame().position().equals(position);
  }

  private static long above(Moment moment, Grip grip) {
    Frame frame = grip.top().frame();
    if (grip.top().open() || frame.thumb().isPresent()) {
      return 0;
    }
    return Math.max(0, frame.position().halves() / 2 - 3);
  }

  private static boolean crosses(Passing passing, Grip before, Grip now) {
    return before.top().string() != now.top().string()
        && !passing.now().pizzicato()
        && !passing.acrossRest();
  }

  private static boolean step(Passing passing) {
    return Math.abs(top(passing.now()) - top(passing.before())) <= STEP;
  }

  private static int top(Moment moment) {
    return moment.struck().get(moment.struck().size() - 1).midi();
  }

  private static boolean offBeat(Moment moment) {
    BigFraction beat = moment.place().beat();
    return beat.getDenominator().bitLength() > 1;
  }
}
