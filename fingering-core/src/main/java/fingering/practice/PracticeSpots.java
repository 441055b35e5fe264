package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
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

/**
 * Finds the few places where a plan can fail at tempo: the shifts with the least time, and the
 * measures that limit its comfortable tempo, and the figure that comes most often in a row. The
 * exercises are common practice, no source.
 */
public final class PracticeSpots {
  private static final int SHIFTS = 2;
  private static final int LIMITS = 3;

  /** Notes of a run that its exercise takes, at most. */
  private static final int RUN = 8;

  private static final double MICROS = 1e6;

  private final Plan plan;
  private final Passage passage;
  private final ExerciseBuilder drill;
  private final Set<Integer> measures = new HashSet<>();
  private final List<PracticeSpot> spots = new ArrayList<>();

  private PracticeSpots(Plan plan) {
    this.plan = plan;
    passage = plan.passage();
    drill = new ExerciseBuilder(plan);
  }

  /** The spots of a plan, in score order, six at most. */
  public static ImmutableList<PracticeSpot> of(Plan plan, PlayerSpeed level) {
    PracticeSpots found = new PracticeSpots(plan);
    plan.notes().stream()
        .filter(note -> note.shift() && note.moment() > 0)
        .map(note -> found.arrival(note.moment()))
        .flatMap(Optional::stream)
        .distinct()
        .filter(found::ordinary)
        .sorted(Comparator.comparingLong(found::free))
        .limit(SHIFTS)
        .forEach(found::shift);
    ComfortableTempo.of(plan, level).tightestDistinct(SHIFTS + LIMITS).stream()
        .filter(limit -> !found.measures.contains(limit.place().measureIndex()))
        .limit(LIMITS)
        .forEach(found::limit);
    RepeatedFigures.most(plan).filter(found::ordinary).ifPresent(found::figure);
    return ImmutableList.sortedCopyOf(
        Comparator.comparingInt((PracticeSpot spot) -> spot.place().measureIndex()), found.spots);
  }

  /** The first stopped note after a shift: an open string leaves the hand on its way. */
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

  /** The last moment before another at which a finger stops a string. */
  private int stoppedBefore(int moment) {
    for (int m = moment - 1; m > 0; m--) {
      if (!plan.grips().get(m).open()) {
        return m;
      }
    }
    return Math.max(0, moment - 1);
  }

  /** Whether exercises can be made of it: two grips without harmonics and undivided chords. */
  private boolean ordinary(int moment) {
    return plain(stoppedBefore(moment)) && plain(moment);
  }

  private boolean plain(int moment) {
    Grip grip = plan.grips().get(moment);
    return !grip.divided() && grip.placements().stream().allMatch(p -> p.touch().isEmpty());
  }

  private long free(int moment) {
    int from = stoppedBefore(moment);
    return passage.moments().get(moment).startMicros() - passage.moments().get(from).startMicros();
  }

  /** How much of the time between two moments is rest, as printed. */
  private String rest(int from, int to) {
    long micros = drill.rest(from, to);
    return micros > 0 ? String.format(Locale.ROOT, ", %.1f s of it rest", micros / MICROS) : "";
  }

  private void shift(int to) {
    int from = stoppedBefore(to);
    Grip left = plan.grips().get(from);
    Grip reached = plan.grips().get(to);
    Moment at = passage.moments().get(to);
    if (!measures.add(at.place().measureIndex())) {
      return;
    }
    ImmutableList.Builder<String> todo = ImmutableList.builder();
    todo.add("Play the shift alone and slow. Then stop before it, look, and go.");
    drill
        .guide(from, to)
        .map(guide -> slide(guide, reached))
        .or(() -> unheard(from, to, reached))
        .ifPresent(todo::add);
    spots.add(
        new PracticeSpot(
            at.place(),
            span(from, to),
            String.format(
                Locale.ROOT,
                "the hand shifts from %s to %s, %.1f s from the beginning of the last stopped note%s",
                left.frame().display(),
                reached.frame().display(),
                free(to) / MICROS,
                rest(from, to)),
            todo.build(),
            check(to),
            Optional.of(drill.shift(from, to))));
  }

  private static String slide(SpotExercise.Fingered guide, Grip reached) {
    return "Slide finger %s lightly to the guide note %s, then set %s."
        .formatted(guide.finger(), guide.written().display(), named(reached));
  }

  /** Where the hand can move without being heard; empty where it cannot. */
  private Optional<String> unheard(int from, int to, Grip reached) {
    List<String> when = new ArrayList<>();
    if (to - from > 1) {
      when.add(to - from == 2 ? "under the open string" : "under the open strings");
    }
    if (drill.rest(from, to) > 0) {
      when.add("in the rest");
    }
    return when.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Lift the finger, move %s without a sound, then set %s."
                .formatted(String.join(" and ", when), named(reached)));
  }

  private static String named(Grip reached) {
    Finger finger = reached.top().finger();
    return finger == Finger.THUMB ? "the thumb" : "finger " + finger.symbol();
  }

  private boolean ordinary(RepeatedFigures.Figure figure) {
    boolean known = measures.contains(passage.moments().get(figure.from()).place().measureIndex());
    return !known && IntStream.rangeClosed(figure.from(), figure.to()).allMatch(this::plain);
  }

  private void figure(RepeatedFigures.Figure figure) {
    Moment first = passage.moments().get(figure.from());
    measures.add(first.place().measureIndex());
    spots.add(
        new PracticeSpot(
            first.place(),
            span(figure.from(), figure.from() + figure.length() * figure.times() - 1),
            "one figure %d times in a row".formatted(figure.times()),
            ImmutableList.of("Stop after each time, and count aloud. Then two at a time."),
            Optional.empty(),
            Optional.of(drill.figure(figure.from(), figure.to()))));
  }

  private String span(int from, int to) {
    String first = passage.moments().get(from).place().measure();
    String last = passage.moments().get(to).place().measure();
    return first.equals(last) ? first : first + "–" + last;
  }

  private void limit(TempoLimit limit) {
    int to = limit.moment();
    boolean run = limit.cause() == LimitCause.RUN;
    int begin = begin(to);
    int end = end(begin);
    for (int m = limit.first().measureIndex(); m <= limit.last().measureIndex(); m++) {
      measures.add(m);
    }
    boolean playable = true;
    for (int m = begin; m <= end; m++) {
      playable &= plain(m);
    }
    boolean runs = playable && end > begin;
    boolean pair = to > 0 && plain(to - 1) && plain(to);
    ImmutableList<String> todo;
    Optional<SpotExercise> exercise;
    switch (limit.cause()) {
      case SHIFT, SLIDE -> {
        todo =
            ImmutableList.of("Play the shift alone and slow. Then stop before it, look, and go.");
        exercise =
            to > 0 && ordinary(to)
                ? Optional.of(drill.shift(stoppedBefore(to), to))
                : Optional.empty();
      }
      case CROSSING, SKIP -> {
        todo = crossings();
        exercise = runs ? Optional.of(drill.crossing(begin, end)) : Optional.empty();
      }
      case STRETCH, HOP, CHORD -> {
        todo =
            ImmutableList.of(
                "Set the fingers without the bow. Let the thumb and wrist give way first.",
                "Then hold each grip long. Stop at the first ache.");
        exercise = pair ? Optional.of(drill.held("Grip", to - 1, to)) : Optional.empty();
      }
      case TRILL, GRACE_NOTES -> {
        todo = ImmutableList.of("Leave the ornament out until the notes go in time.");
        exercise = runs ? Optional.of(drill.dotted(begin, end)) : Optional.empty();
      }
      default -> {
        boolean crosses = limit.text().contains("crossing");
        todo =
            crosses
                ? crossings()
                : ImmutableList.of("Play it in dotted rhythms, long-short, then short-long.");
        exercise =
            !runs
                ? Optional.empty()
                : Optional.of(crosses ? drill.crossing(begin, end) : drill.dotted(begin, end));
      }
    }
    spots.add(
        new PracticeSpot(
            limit.first(),
            run ? limit.measures() : span(begin, end),
            limit.text(),
            todo,
            Optional.empty(),
            exercise));
  }

  private static ImmutableList<String> crossings() {
    return ImmutableList.of("Bow it on the open strings alone. Then add the fingers.");
  }

  /** The first moment of a measure. */
  private int begin(int moment) {
    int begin = moment;
    while (begin > 0 && inOne(begin - 1, moment)) {
      begin--;
    }
    return begin;
  }

  private int end(int begin) {
    int end = begin;
    while (end + 1 < passage.moments().size() && end - begin + 1 < RUN && inOne(begin, end + 1)) {
      end++;
    }
    return end;
  }

  private boolean inOne(int one, int other) {
    return passage.moments().get(one).place().measureIndex()
        == passage.moments().get(other).place().measureIndex();
  }

  /** The first note in the new position that rings with another string. */
  private Optional<String> check(int moment) {
    Grip arrived = plan.grips().get(moment);
    for (int m = moment; m < plan.grips().size(); m++) {
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
              "%s in %s has to ring with the open %s string"
                  .formatted(
                      notes.get(i).written().display(),
                      passage.moments().get(m).place(),
                      rings.get().pitch().letterName()));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<OpenString> ringing(Pitch sounding, int own) {
    return passage.instrument().strings().stream()
        .filter(string -> string.number() != own)
        .filter(string -> sounding.midi() >= string.pitch().midi())
        .filter(string -> (sounding.midi() - string.pitch().midi()) % Pitch.OCTAVE == 0)
        .findFirst();
  }
}
