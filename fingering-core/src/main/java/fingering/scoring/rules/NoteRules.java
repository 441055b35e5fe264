package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.tables.Pitch;

/** Rules on a grip by itself. */
final class NoteRules {
  /**
   * A note this long wants vibrato and a strong finger, in hundredths of a second (common
   * practice).
   */
  private static final long LONG = 70;

  /** A note this short leaves the fourth finger no time to settle, in hundredths of a second. */
  private static final long QUICK = 20;

  /**
   * An open string shorter than this does not stand out, in hundredths of a second (common
   * practice).
   */
  private static final long RINGS = 30;

  /** The same on the cello, where 4th is at home at the end of the neck (common practice). */
  private static final int[] NECK = {2, 0, 3, 3, 2, 5, 6, 7};

  /** A hand that spans no more, in semitones, is that of the bass. */
  private static final int BASS_SPAN = 2;

  /**
   * How far from home a position is on violin and viola, from half and 1st up (common practice).
   */
  private static final int[] UNFAMILIAR = {2, 0, 4, 2, 5, 6, 8};

  /** The same for the thumb at the octave; it grows on both sides (common practice). */
  private static final int THUMB_AT_OCTAVE = 12;

  private NoteRules() {}

  static ImmutableList<CostRule> all() {
    return ImmutableList.of(
        new NamedNoteRule(
            "position",
            "Position away from 1st",
            "Higher and less practised positions are less sure; 3rd is more at home than 2nd.",
            "step",
            NoteRules::position),
        new NamedNoteRule(
            "fourth-finger",
            "Fourth finger",
            "The weakest finger; more so on a quick, a long or an accented note.",
            "half fourth finger",
            NoteRules::fourthFinger),
        new NamedNoteRule(
            "open-string",
            "Open string standing out",
            "An open string in a long or slurred note rings without vibrato.",
            "tenth of a second",
            NoteRules::openString),
        new NamedNoteRule(
            "extension",
            "Extension",
            "A finger reaches out of the hand's frame.",
            "millimetre",
            NoteRules::extension),
        new NamedNoteRule(
            "low-string-high",
            "High on a low string",
            "High on a thick string the note speaks less readily, the more so on cello and bass.",
            "semitone",
            NoteRules::highOnLowString),
        new NamedNoteRule(
            "finger-against-spelling",
            "Under another letter",
            "The finger takes a note that the page gives to its neighbour's letter.",
            "note",
            NoteRules::respelled),
        new NamedNoteRule(
            "trill",
            "Trill without free finger",
            "A trill over an open string is hard to keep even; without a finger above it cannot be.",
            "half trill",
            NoteRules::trill),
        new NamedNoteRule(
            "chord-shape",
            "Strings stopped together",
            "Each finger that must hold while another plays makes the grip harder.",
            "finger",
            NoteRules::chordShape),
        new NamedNoteRule(
            "divided",
            "No one hand",
            "The notes cannot be held together; break or divide them.",
            "note",
            (context, grip) -> grip.divided() ? grip.placements().size() : 0));
  }

  private static long position(NoteContext context, Grip grip) {
    long steps = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement placement = grip.placements().get(i);
      if (!placement.open()) {
        steps += unfamiliar(placement.frame());
      }
    }
    return steps;
  }

  private static int unfamiliar(Frame frame) {
    if (frame.thumb().isPresent()) {
      int fromOctave = frame.thumb().getAsInt() - Pitch.OCTAVE;
      return THUMB_AT_OCTAVE + (fromOctave < 0 ? -fromOctave : fromOctave / 2);
    }
    int number = frame.position().number();
    if (frame.shape() != Frame.Shape.LETTERS) {
      return frame.span() <= BASS_SPAN ? number : NECK[Math.min(number, NECK.length - 1)];
    }
    return number < UNFAMILIAR.length ? UNFAMILIAR[number] : number + 2;
  }

  private static long fourthFinger(NoteContext context, Grip grip) {
    boolean exposed = context.hundredths() >= LONG || context.accented();
    boolean quick = context.hundredths() < QUICK && !context.grace();
    long halves = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      Placement placement = grip.placements().get(i);
      if (placement.finger() == Finger.FOURTH && placement.stopped()) {
        halves += exposed ? 4 : quick ? 3 : 2;
      }
    }
    return halves;
  }

  private static long openString(NoteContext context, Grip grip) {
    if (context.plucked() || grip.placements().size() > 1 || !grip.open()) {
      return 0;
    }
    long over = Math.max(0, context.hundredths() - RINGS) / 10;
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
      if (placement.stopped()) {
        semitones += thickness(placement) * Math.max(0, placement.semitones() - 9);
      }
    }
    return semitones;
  }

  /** On violin and viola the low strings are played high; on cello and bass they are as ropes. */
  private static long thickness(Placement placement) {
    boolean letters = placement.frame().shape() == Frame.Shape.LETTERS;
    return letters ? Math.min(1, placement.string() - 1) : placement.string() - 1;
  }

  private static long respelled(NoteContext context, Grip grip) {
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

  private static long chordShape(NoteContext context, Grip grip) {
    if (grip.placements().size() < 2) {
      return 0;
    }
    long fingers = 0;
    for (int i = 0; i < grip.placements().size(); i++) {
      fingers += grip.placements().get(i).open() ? 0 : 1;
    }
    return fingers;
  }
}
