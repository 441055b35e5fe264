package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Pitch;

/** Rules that judge a single grip. */
final class NoteRules {
  /**
   * A note at least this long needs a strong finger, in hundredths of a second (common practice).
   */
  private static final long LONG = 70;

  /** A shorter note gives the fourth finger no time to settle, in hundredths of a second. */
  private static final long QUICK = 20;

  /**
   * An open string up to this length is not noticeable, in hundredths of a second (common
   * practice).
   */
  private static final long SHORT_OPEN = 30;

  /**
   * The steps charged on violin and viola, indexed by position from half: more for less familiar
   * positions (common practice).
   */
  private static final int[] VIOLIN_STEPS = {2, 0, 4, 2, 5, 6, 8};

  /** The same on the cello, where 4th is familiar from the end of the neck (common practice). */
  private static final int[] CELLO_STEPS = {2, 0, 3, 3, 2, 5, 6, 7};

  /** The steps charged for the thumb at the octave; more on both sides (common practice). */
  private static final int THUMB_AT_OCTAVE = 9;

  /** The last place on a string that is not high, in semitones (common practice). */
  private static final int NOT_HIGH = 9;

  /**
   * The highest note of the hand with the thumb at the octave: a fourth above (common practice).
   */
  private static final int END_OF_BLOCK = 17;

  private NoteRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedNoteRule(
            "position",
            "Position away from 1st",
            "Higher and less practised positions are less secure; 3rd is more familiar than 2nd.",
            "step",
            NoteRules::position),
        new NamedNoteRule(
            "fourth-finger",
            "Fourth finger",
            "The weakest finger, above all on a quick, long or accented note.",
            "half fourth finger",
            NoteRules::fourthFinger),
        new NamedNoteRule(
            "open-string",
            "Exposed open string",
            "An open string on a long or slurred note rings without vibrato.",
            "tenth of a second",
            NoteRules::openString),
        new NamedNoteRule(
            "extension",
            "Extension",
            "A finger reaches beyond the hand frame.",
            "millimetre",
            NoteRules::extension),
        new NamedNoteRule(
            "low-string-high",
            "High on a low string",
            "A note high on a thick string speaks less easily, above all on cello and bass.",
            "semitone",
            NoteRules::highOnLowString),
        new NamedNoteRule(
            "finger-against-spelling",
            "Finger against the spelling",
            "The finger plays a note that is spelled with the letter of its neighbour.",
            "note",
            NoteRules::againstSpelling),
        new NamedNoteRule(
            "trill",
            "Awkward trill",
            "A trill over an open string is hard to keep even; without a free finger it is impossible.",
            "half trill",
            NoteRules::trill));
  }

  private static long position(NoteContext context, Grip grip) {
    long steps = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement placement = grip.placements().get(i);
      if (!placement.open()) {
        steps += steps(placement.frame());
      }
    }
    return steps;
  }

  private static int steps(Frame frame) {
    if (frame.thumb().isPresent()) {
      int fromOctave = frame.thumb().getAsInt() - Pitch.OCTAVE;
      return THUMB_AT_OCTAVE + (fromOctave < 0 ? -fromOctave : fromOctave / 2);
    }
    int number = frame.position().number();
    if (frame.shape() != Frame.Shape.LETTERS) {
      return frame.hand() == HandKind.BASS
          ? number
          : CELLO_STEPS[Math.min(number, CELLO_STEPS.length - 1)];
    }
    return number < VIOLIN_STEPS.length ? VIOLIN_STEPS[number] : number + 2;
  }

  private static long fourthFinger(NoteContext context, Grip grip) {
    boolean exposed = context.hundredths() >= LONG || context.accented();
    boolean quick = context.hundredths() < QUICK && !context.grace();
    long halves = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement placement = grip.placements().get(i);
      if (placement.finger() == Finger.FOURTH && placement.stopped() && weak(placement)) {
        halves += exposed ? 4 : quick ? 3 : 2;
      }
    }
    return halves;
  }

  /** On cello and bass the fourth finger stops the string as firmly as the others. */
  private static boolean weak(Placement placement) {
    return placement.frame().shape() == Frame.Shape.LETTERS;
  }

  private static long openString(NoteContext context, Grip grip) {
    if (context.plucked() || grip.placements().size() > 1 || !grip.open()) {
      return 0;
    }
    long over = Math.max(0, context.hundredths() - SHORT_OPEN) / 10;
    return Math.min(12, over) + (context.slurred() && over > 0 ? 2 : 0);
  }

  private static long extension(NoteContext context, Grip grip) {
    double millimetres = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      millimetres += grip.placements().get(i).stretch();
    }
    return Math.round(millimetres);
  }

  private static long highOnLowString(NoteContext context, Grip grip) {
    long semitones = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement placement = grip.placements().get(i);
      if (placement.stopped() && !inBlock(placement)) {
        semitones += thickness(placement) * Math.max(0, placement.semitones() - NOT_HIGH);
      }
    }
    return semitones;
  }

  /** The weight of a string. On violin and viola all but the top string count the same. */
  private static long thickness(Placement placement) {
    boolean letters = placement.frame().shape() == Frame.Shape.LETTERS;
    return letters ? Math.min(1, placement.string() - 1) : placement.string() - 1;
  }

  /**
   * Whether the note lies under the thumb at the octave: the hand then covers the two upper
   * strings, which are one place to play.
   */
  private static boolean inBlock(Placement placement) {
    return placement.frame().shape() == Frame.Shape.THUMB
        && placement.string() == 2
        && placement.semitones() <= END_OF_BLOCK;
  }

  private static long againstSpelling(NoteContext context, Grip grip) {
    long notes = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      notes += grip.placements().get(i).respelled() ? 1 : 0;
    }
    return notes;
  }

  private static long trill(NoteContext context, Grip grip) {
    ImmutableIntArray trilled = context.trilled(grip);
    long trills = 0;
    for (int i = 0; i < trilled.length(); i++) {
      Placement placement = grip.placements().get(trilled.get(i));
      trills += placement.trill().isEmpty() ? 4 : placement.open() ? 1 : 0;
    }
    return trills;
  }
}
