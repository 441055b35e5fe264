package fingering.tempo;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** Says what limits a tempo, as a teacher would. */
final class TempoLimitText {
  private final List<Moment> moments;
  private final List<Grip> grips;

  TempoLimitText(List<Moment> moments, List<Grip> grips) {
    this.moments = moments;
    this.grips = grips;
  }

  /** What is to be done between two moments. */
  String transition(LimitCause cause, int from, int to) {
    long micros = moments.get(to).startMicros() - moments.get(from).startMicros();
    BigFraction quarters = start(to).subtract(start(from));
    return what(cause, from, to) + " " + NoteValues.in(quarters, micros);
  }

  private BigFraction start(int moment) {
    return moments.get(moment).starting().get(0).start();
  }

  private String what(LimitCause cause, int from, int to) {
    Grip before = grips.get(from);
    Grip reached = grips.get(to);
    return switch (cause) {
      case SHIFT -> shift(before, reached);
      case SLIDE -> "finger slides";
      case FINGERS -> "change of fingers";
      case WEAK_FINGERS -> "third and fourth finger";
      case TOGETHER -> "new finger and new bow";
      case BOW -> "new bow";
      case CROSSING -> "string crossing";
      case SKIP -> "bow skips a string";
      case HOP -> "finger goes over to another string";
      case STRETCH -> "finger reaches out";
      case CHORD -> chord(Math.max(before.placements().size(), reached.placements().size()));
      case PIZZICATO -> "pizzicato";
      case TRILL, GRACE_NOTES, RUN ->
          throw new IllegalArgumentException(cause + " lies not between two moments");
    };
  }

  private static String chord(int strings) {
    return strings == 1 ? "artificial harmonic" : strings == 2 ? "double stop" : "chord";
  }

  private static String shift(Grip before, Grip reached) {
    String from = before.frame().display();
    String to = reached.frame().display();
    return from.equals(to) ? "shift within " + to : "shift from " + from + " to " + to;
  }

  /** A trill that a moment has to hold. */
  String trill(int moment, Placement placement) {
    String free = placement.trill().isPresent() ? "trill " : "trill without free finger ";
    long micros = moments.get(moment).soundMicros();
    return free + NoteValues.in(longest(moments.get(moment)), micros);
  }

  private static BigFraction longest(Moment moment) {
    return moment.starting().stream()
        .map(note -> note.length())
        .max(BigFraction::compareTo)
        .orElseThrow();
  }

  /** Grace notes and the note after them. */
  String graces(int first, int main) {
    int graces = main - first;
    Moment note = moments.get(main);
    return (graces == 1 ? "grace note " : graces + " grace notes ")
        + NoteValues.in(longest(note), note.soundMicros());
  }

  /** A run, and what it has most of besides fingers. */
  String run(int changes, long micros, int shifts, int crossings) {
    String with =
        crossings > 0 && crossings >= shifts
            ? " with " + count(crossings, "string crossing")
            : shifts > 0 ? " with " + count(shifts, "shift") : "";
    double perSecond = changes * 1e6 / micros;
    return String.format(
        Locale.ROOT, "%d notes in a row%s, %.1f a second", changes, with, perSecond);
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
