package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.LimitCause;
import fingering.tempo.PlayerSpeed;
import fingering.tempo.TempoLimit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the few places where a plan is likely to fail at tempo: the shifts with the least time, the
 * measures that limit its comfortable tempo, and the figure most often repeated in a row (common
 * practice, no source).
 */
public final class PracticeSpots {
  private static final int SHIFTS = 2;
  private static final int LIMITS = 3;

  /** The most moments of a run that its exercise has. */
  private static final int RUN = 8;

  /** The beats after a shift in which a note still shows whether the hand has arrived. */
  private static final int SOON = 2;

  /** The lower number of the time signature of quarter notes. */
  private static final int QUARTER = 4;

  private static final double MICROS = 1e6;

  private static final String SHIFT_ALONE =
      "Play the shift alone, slowly. Then play up to it, stop, look, and shift.";

  private final Plan plan;
  private final Passage passage;
  private final ExerciseBuilder exercises;
  private final Set<Integer> measures = new HashSet<>();
  private final List<PracticeSpot> spots = new ArrayList<>();

  private PracticeSpots(Plan plan) {
    this.plan = plan;
    passage = plan.passage();
    exercises = new ExerciseBuilder(plan);
  }

  /** Returns the spots of a plan in score order, at most six. */
  public static ImmutableList<PracticeSpot> of(Plan plan, PlayerSpeed level) {
    PracticeSpots found = new PracticeSpots(plan);
    plan.notes().stream()
        .filter(note -> note.shift() && note.moment() > 0)
        .map(note -> found.arrival(note.moment()))
        .flatMap(Optional::stream)
        .distinct()
        .filter(found::writable)
        .sorted(Comparator.comparingLong(found::timeMicros))
        .limit(SHIFTS)
        .forEach(found::shift);
    ComfortableTempo.of(plan, level).tightestDistinct(SHIFTS + LIMITS).stream()
        .filter(limit -> !found.measures.contains(limit.place().measureIndex()))
        .limit(LIMITS)
        .forEach(found::limit);
    RepeatedFigures.most(plan).filter(found::writable).ifPresent(found::figure);
    return ImmutableList.sortedCopyOf(
        Comparator.comparingInt((PracticeSpot spot) -> spot.place().measureIndex()), found.spots);
  }

  /**
   * Returns the few spots to begin with, in score order: first one of each way to practise, since a
   * shift, a run and a crossing teach more than three shifts.
   *
   * @param spots the spots of a plan, in score order
   * @param most the most spots to return
   */
  public static ImmutableList<PracticeSpot> few(List<PracticeSpot> spots, int most) {
    List<PracticeSpot> chosen = new ArrayList<>();
    Set<String> ways = new HashSet<>();
    spots.stream().filter(spot -> ways.add(spot.instructions().get(0))).forEach(chosen::add);
    spots.stream().filter(spot -> !chosen.contains(spot)).forEach(chosen::add);
    List<PracticeSpot> first = chosen.subList(0, Math.min(most, chosen.size()));
    return spots.stream().filter(first::contains).collect(ImmutableList.toImmutableList());
  }

  /** Returns the first stopped note after a shift; the hand may still move under open strings. */
  private Optional<Integer> arrival(int shift) {
    for (int m = shift; m < plan.grips().size(); m++) {
      if (!plan.grips().get(m).open()) {
        return Optional.of(m).filter(to -> shifts(stoppedBefore(to), to));
      }
    }
    return Optional.empty();
  }

  private boolean shifts(int from, int to) {
    return plan.grips().get(from).frame().shiftsTo(plan.grips().get(to).frame());
  }

  /** Returns the last moment before another at which a finger stops a string. */
  private int stoppedBefore(int moment) {
    for (int m = moment - 1; m > 0; m--) {
      if (!plan.grips().get(m).open()) {
        return m;
      }
    }
    return Math.max(0, moment - 1);
  }

  /** Returns whether a shift can be written as an exercise: no harmonics, no divided chords. */
  private boolean writable(int moment) {
    return plain(stoppedBefore(moment)) && plain(moment);
  }

  private boolean plain(int moment) {
    Grip grip = plan.grips().get(moment);
    return !grip.divided() && grip.placements().stream().allMatch(p -> p.touch().isEmpty());
  }

  private long timeMicros(int moment) {
    int from = stoppedBefore(moment);
    return passage.moments().get(moment).startMicros() - passage.moments().get(from).startMicros();
  }

  /** Describes how much of the time between two moments is printed rest. */
  private String rest(int from, int to) {
    long micros = exercises.rest(from, to);
    return micros > 0
        ? String.format(Locale.ROOT, ", including %.1f s of rest", micros / MICROS)
        : "";
  }

  private void shift(int to) {
    int from = stoppedBefore(to);
    Grip left = plan.grips().get(from);
    Grip reached = plan.grips().get(to);
    Moment at = passage.moments().get(to);
    if (!measures.add(at.place().measureIndex())) {
      return;
    }
    ImmutableList.Builder<String> instructions = ImmutableList.builder();
    instructions.add(SHIFT_ALONE);
    exercises
        .guide(from, to)
        .map(guide -> slide(guide, reached))
        .or(() -> silentShift(from, to, reached))
        .ifPresent(instructions::add);
    spots.add(
        new PracticeSpot(
            at.place(),
            span(from, to),
            String.format(
                Locale.ROOT,
                "the hand shifts from %s to %s; you have %.1f s from the start of the last stopped"
                    + " note%s",
                left.frame().display(),
                reached.frame().display(),
                timeMicros(to) / MICROS,
                rest(from, to)),
            instructions.build(),
            ringingNote(to),
            Optional.of(exercises.shift(from, to))));
  }

  private static String slide(SpotExercise.Fingered guide, Grip reached) {
    return "Slide finger %s lightly to the guide note %s, then put down %s."
        .formatted(guide.finger(), guide.written().display(), named(reached));
  }

  /** Describes a shift that the hand makes silently; empty if it has to be heard. */
  private Optional<String> silentShift(int from, int to, Grip reached) {
    List<String> when = new ArrayList<>();
    if (to - from > 1) {
      when.add(to - from == 2 ? "under the open string" : "under the open strings");
    }
    if (exercises.rest(from, to) > 0) {
      when.add("during the rest");
    }
    return when.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Lift the finger, shift silently %s, then put down %s."
                .formatted(String.join(" and ", when), named(reached)));
  }

  private static String named(Grip reached) {
    Finger finger = reached.top().finger();
    return finger == Finger.THUMB ? "the thumb" : "finger " + finger.symbol();
  }

  private boolean writable(RepeatedFigures.Figure figure) {
    boolean covered =
        measures.contains(passage.moments().get(figure.from()).place().measureIndex());
    return !covered && IntStream.rangeClosed(figure.from(), figure.to()).allMatch(this::plain);
  }

  private void figure(RepeatedFigures.Figure figure) {
    Moment first = passage.moments().get(figure.from());
    measures.add(first.place().measureIndex());
    spots.add(
        new PracticeSpot(
            first.place(),
            span(figure.from(), figure.from() + figure.length() * figure.times() - 1),
            "the same figure %d times in a row".formatted(figure.times()),
            ImmutableList.of("Stop after each one and count aloud. Then play two at a time."),
            Optional.empty(),
            Optional.of(exercises.figure(figure.from(), figure.to()))));
  }

  private String span(int from, int to) {
    String first = passage.moments().get(from).place().measure();
    String last = passage.moments().get(to).place().measure();
    return first.equals(last) ? first : first + "–" + last;
  }

  private void limit(TempoLimit limit) {
    int to = limit.moment();
    boolean run = limit.cause() == LimitCause.RUN;
    int begin = firstInMeasure(to);
    int end = lastOfRun(begin);
    for (int m = limit.first().measureIndex(); m <= limit.last().measureIndex(); m++) {
      measures.add(m);
    }
    boolean playable = true;
    for (int m = begin; m <= end; m++) {
      playable &= plain(m);
    }
    boolean canWriteRun = playable && end > begin;
    boolean canWritePair = to > 0 && plain(to - 1) && plain(to);
    ImmutableList<String> instructions;
    Optional<SpotExercise> exercise;
    switch (limit.cause()) {
      case SHIFT, SLIDE -> {
        instructions = ImmutableList.of(SHIFT_ALONE);
        exercise =
            to > 0 && writable(to)
                ? Optional.of(exercises.shift(stoppedBefore(to), to))
                : Optional.empty();
      }
      case CROSSING, SKIP -> {
        instructions = crossings();
        exercise = canWriteRun ? Optional.of(exercises.crossing(begin, end)) : Optional.empty();
      }
      case STRETCH, HOP, CHORD -> {
        instructions =
            ImmutableList.of(
                "Place the fingers without the bow. Keep the thumb and wrist loose.",
                "Then hold each note or chord long. Stop as soon as anything aches.");
        exercise =
            canWritePair ? Optional.of(exercises.held("Held notes", to - 1, to)) : Optional.empty();
      }
      case TRILL, GRACE_NOTES -> {
        instructions = ImmutableList.of("Leave out the ornament until the notes are in time.");
        exercise = canWriteRun ? Optional.of(exercises.dotted(begin, end)) : Optional.empty();
      }
      default -> {
        instructions =
            limit.crosses()
                ? crossings()
                : ImmutableList.of("Play it in dotted rhythms: first long-short, then short-long.");
        exercise =
            !canWriteRun
                ? Optional.empty()
                : Optional.of(
                    limit.crosses()
                        ? exercises.crossing(begin, end)
                        : exercises.dotted(begin, end));
      }
    }
    spots.add(
        new PracticeSpot(
            limit.first(),
            run ? limit.measures() : span(begin, end),
            limit.text(),
            instructions,
            Optional.empty(),
            exercise));
  }

  private static ImmutableList<String> crossings() {
    return ImmutableList.of("First bow it on the open strings. Then add the fingers.");
  }

  /** Returns the first moment of a moment's measure. */
  private int firstInMeasure(int moment) {
    int begin = moment;
    while (begin > 0 && sameMeasure(begin - 1, moment)) {
      begin--;
    }
    return begin;
  }

  /** Returns the last moment of a run from a moment on, within its measure. */
  private int lastOfRun(int begin) {
    int end = begin;
    while (end + 1 < passage.moments().size()
        && end - begin + 1 < RUN
        && sameMeasure(begin, end + 1)) {
      end++;
    }
    return end;
  }

  private boolean sameMeasure(int one, int other) {
    return passage.moments().get(one).place().measureIndex()
        == passage.moments().get(other).place().measureIndex();
  }

  /**
   * Describes the first note in the new position that rings with another open string. It has to
   * come at once, or it says nothing about the arrival: in the same measure, or within two beats.
   */
  private Optional<String> ringingNote(int moment) {
    Grip arrived = plan.grips().get(moment);
    for (int m = moment; m < plan.grips().size() && soonAfter(moment, m); m++) {
      Grip grip = plan.grips().get(m);
      if (arrived.frame().shiftsTo(grip.frame())) {
        return Optional.empty();
      }
      List<Note> notes = grip.notes(passage.moments().get(m));
      for (int i = 0; i < notes.size(); i++) {
        int string = grip.placements().get(i).string();
        Optional<OpenString> rings =
            grip.placements().get(i).stopped()
                ? ringing(notes.get(i).sounding(), string)
                : Optional.empty();
        if (rings.isPresent()) {
          return Optional.of(
              "%s in %s should ring with the open %s string"
                  .formatted(
                      notes.get(i).written().display(),
                      passage.moments().get(m).place(),
                      rings.get().pitch().letterName()));
        }
      }
    }
    return Optional.empty();
  }

  private boolean soonAfter(int arrival, int later) {
    if (sameMeasure(arrival, later)) {
      return true;
    }
    Note from = passage.moments().get(arrival).starting().get(0);
    int beatType =
        passage.measure(from.place().measureIndex()).map(Measure::beatType).orElse(QUARTER);
    BigFraction beats =
        passage
            .moments()
            .get(later)
            .starting()
            .get(0)
            .start()
            .subtract(from.start())
            .multiply(BigFraction.of(beatType, QUARTER));
    return beats.compareTo(BigFraction.of(SOON)) <= 0;
  }

  private Optional<OpenString> ringing(Pitch sounding, int own) {
    return passage.instrument().strings().stream()
        .filter(string -> string.number() != own)
        .filter(string -> sounding.midi() >= string.pitch().midi())
        .filter(string -> (sounding.midi() - string.pitch().midi()) % Pitch.OCTAVE == 0)
        .findFirst();
  }
}
