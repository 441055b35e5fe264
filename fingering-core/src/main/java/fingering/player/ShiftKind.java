package fingering.player;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.Transition;
import fingering.tables.FingeringException;
import java.util.Arrays;
import java.util.stream.Collectors;

/** A way to shift that a student learns (common practice, no source). */
public enum ShiftKind {
  /** A rest stands between. */
  REST("rest", "a shift over a rest"),
  /** The hand moves while an open string sounds. */
  OPEN_STRING("open string", "a shift on an open string"),
  /** One finger stays on its string and guides the hand. */
  SAME_FINGER("same finger", "a shift on one finger"),
  /** As in scales: up a step to the first finger, or down a step from it. */
  FIRST_FINGER("first finger", "a shift by the first finger"),
  /** From one finger to another on the same string. */
  ANOTHER_FINGER("another finger", "a shift to another finger"),
  /** From one string to another. */
  ANOTHER_STRING("another string", "a shift to another string"),
  /** One bow joins the notes; besides the way the fingers go. */
  SLUR("slur", "a shift under a slur");

  /** The widest step of a scale, in semitones. */
  private static final int STEP = 2;

  private final String word;
  private final String told;

  ShiftKind(String word, String told) {
    this.word = word;
    this.told = told;
  }

  /** The word for it in a player file. */
  public String word() {
    return word;
  }

  /** What it is, in a sentence. */
  public String told() {
    return told;
  }

  /**
   * The kind of that word, which may be joined by hyphens: {@code first-finger}.
   *
   * @throws FingeringException if there is none
   */
  public static ShiftKind named(String text) {
    String asked = text.strip().replace('-', ' ');
    return Arrays.stream(values())
        .filter(kind -> kind.word.equalsIgnoreCase(asked))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "'"
                        + text
                        + "' is no kind of shift; choose "
                        + Arrays.stream(values())
                            .map(kind -> kind.word.replace(' ', '-'))
                            .collect(Collectors.joining(", "))));
  }

  /**
   * Whether a shift is of this kind; under a slur it may be of another kind too.
   *
   * @param before the grip that is left; the hand shifts from it to the other
   */
  public boolean is(Transition transition, Grip before, Grip now) {
    return this == SLUR ? slurred(transition, before) : of(transition, before, now) == this;
  }

  /** How the hand shifts, slur aside; the highest note of each grip carries the line. */
  public static ShiftKind of(Transition transition, Grip before, Grip now) {
    if (transition.rest()) {
      return REST;
    }
    if (before.open()) {
      return OPEN_STRING;
    }
    Placement left = before.top();
    Placement reached = now.top();
    if (left.string() != reached.string()) {
      return ANOTHER_STRING;
    }
    if (left.finger() == reached.finger()) {
      return SAME_FINGER;
    }
    return stepByFirst(left, reached) || stepByFirst(reached, left) ? FIRST_FINGER : ANOTHER_FINGER;
  }

  /** Whether a slur joins the notes while the hand moves, so that the way is heard. */
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
