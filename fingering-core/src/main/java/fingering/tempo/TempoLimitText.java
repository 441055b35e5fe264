package fingering.tempo;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.plan.PlanFigure;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** Describes tempo limits. */
final class TempoLimitText {
  private final List<Moment> moments;
  private final List<Grip> grips;

  TempoLimitText(List<Moment> moments, List<Grip> grips) {
    this.moments = moments;
    this.grips = grips;
  }

  /** Describes the movement from one moment to another, with the time for it. */
  String transition(LimitCause cause, int from, int to) {
    long micros = moments.get(to).startMicros() - moments.get(from).startMicros();
    BigFraction quarters = start(to).subtract(start(from));
    return movement(cause, from, to) + " " + NoteValues.in(quarters, micros);
  }

  private BigFraction start(int moment) {
    return moments.get(moment).starting().get(0).start();
  }

  private String movement(LimitCause cause, int from, int to) {
    Grip before = grips.get(from);
    Grip after = grips.get(to);
    return switch (cause) {
      case SHIFT -> shift(before, after);
      case SLIDE -> "slide of a finger";
      case FINGERS -> "change of finger";
      case WEAK_FINGERS -> "third and fourth finger";
      case TOGETHER -> "new finger and new bow";
      case BOW -> "new bow";
      case CROSSING -> PlanFigure.CROSSINGS.noun(1);
      case SKIP -> "bow skips a string";
      case HOP -> "same finger on another string";
      case STRETCH -> "stretch";
      case CHORD -> chord(Math.max(before.placements().size(), after.placements().size()));
      case PIZZICATO -> "pizzicato";
      case TRILL, GRACE_NOTES, RUN ->
          throw new IllegalArgumentException(cause + " is not between two moments");
    };
  }

  private static String chord(int strings) {
    return strings == 1 ? "artificial harmonic" : strings == 2 ? "double stop" : "chord";
  }

  private static String shift(Grip before, Grip after) {
    String from = before.frame().display();
    String to = after.frame().display();
    return from.equals(to) ? "shift within " + to : "shift from " + from + " to " + to;
  }

  /** Describes a trill, with the time for it. */
  String trill(int moment, Placement placement) {
    String trill = placement.trill().isPresent() ? "trill " : "trill without a free finger ";
    long micros = moments.get(moment).soundMicros();
    return trill + NoteValues.in(longest(moments.get(moment)), micros);
  }

  /** The length of the longest note that begins at a moment, in quarter notes. */
  private static BigFraction longest(Moment moment) {
    return moment.starting().stream()
        .map(note -> note.length())
        .max(BigFraction::compareTo)
        .orElseThrow();
  }

  /** Describes grace notes, with the length of the note after them. */
  String graceNotes(int first, int main) {
    int count = main - first;
    Moment note = moments.get(main);
    return (count == 1 ? "grace note " : count + " grace notes ")
        + NoteValues.in(longest(note), note.soundMicros());
  }

  /**
   * Describes a run, with its string crossings or its shifts, of which it names the more frequent.
   *
   * @param changes the number of transitions
   * @param micros the time of the run
   */
  String run(int changes, long micros, int shifts, int crossings) {
    String with =
        mostlyCrosses(shifts, crossings)
            ? " with " + PlanFigure.CROSSINGS.counted(crossings)
            : shifts > 0 ? " with " + PlanFigure.SHIFTS.counted(shifts) : "";
    double perSecond = changes * 1e6 / micros;
    return String.format(
        Locale.ROOT, "%d notes in a row%s, %.1f a second", changes, with, perSecond);
  }

  /** Whether a run has string crossings, and at least as many as shifts. */
  static boolean mostlyCrosses(int shifts, int crossings) {
    return crossings > 0 && crossings >= shifts;
  }
}
