package fingering.player;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.Transition;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;
import java.util.Arrays;

/** A kind of shift that a student learns (common practice, no source). */
public enum ShiftKind {
  /** In a rest. */
  REST("rest", "a shift over a rest"),
  /** While an open string sounds. */
  OPEN_STRING("open string", "a shift on an open string"),
  /** The same finger plays both notes on one string and guides the hand. */
  SAME_FINGER("same finger", "a shift on one finger"),
  /** Up a step to the first finger, or down a step from it, as in scales. */
  FIRST_FINGER("first finger", "a shift by the first finger"),
  /** From one finger to another on the same string. */
  ANOTHER_FINGER("another finger", "a shift to another finger"),
  /** From one string to another. */
  ANOTHER_STRING("another string", "a shift to another string"),
  /** Under a slur; in addition to one of the other kinds. */
  SLUR("slur", "a shift under a slur");

  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private final String word;
  private final String phrase;

  ShiftKind(String word, String phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** The name in a player file. */
  public String word() {
    return word;
  }

  /** The kind in words for a sentence, such as {@code a shift over a rest}. */
  public String phrase() {
    return phrase;
  }

  /**
   * The kind of that name, with spaces or hyphens: {@code first-finger}. Case does not matter.
   *
   * @throws FingeringException if there is no such kind
   */
  public static ShiftKind named(String text) {
    String name = text.strip().replace('-', ' ');
    return Arrays.stream(values())
        .filter(kind -> kind.word.equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "'%s' is not a kind of shift; %s"
                        .formatted(
                            text,
                            NearWord.advice(
                                text,
                                Arrays.stream(values())
                                    .map(kind -> kind.word.replace(' ', '-'))
                                    .toList()))));
  }

  /**
   * Whether a shift is of this kind; under a slur it is of another kind too.
   *
   * @param before the grip from which the hand shifts
   * @param now the grip to which it shifts
   */
  public boolean matches(Transition transition, Grip before, Grip now) {
    return this == SLUR ? slurred(transition, before) : of(transition, before, now) == this;
  }

  /** The kind of a shift, not counting slurs, judged by the highest note of each grip. */
  public static ShiftKind of(Transition transition, Grip before, Grip now) {
    if (transition.rest()) {
      return REST;
    }
    if (before.open()) {
      return OPEN_STRING;
    }
    Placement from = before.top();
    Placement to = now.top();
    if (from.string() != to.string()) {
      return ANOTHER_STRING;
    }
    if (from.finger() == to.finger()) {
      return SAME_FINGER;
    }
    return stepByFirst(from, to) || stepByFirst(to, from) ? FIRST_FINGER : ANOTHER_FINGER;
  }

  /** Whether the shift is heard because a slur joins the notes. */
  static boolean slurred(Transition transition, Grip before) {
    return transition.slurred() && !transition.rest() && !before.open();
  }

  private static boolean stepByFirst(Placement below, Placement above) {
    int rises = above.semitones() - below.semitones();
    return below.finger().number() > 1
        && above.finger() == Finger.FIRST
        && rises > 0
        && rises <= STEP;
  }
}
