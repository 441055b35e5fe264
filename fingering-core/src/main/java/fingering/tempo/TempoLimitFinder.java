package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Finds the tightest tempo limit of each measure of a fingered passage. */
final class TempoLimitFinder {
  private final Passage passage;
  private final List<Moment> moments;
  private final List<Grip> grips;
  private final TimeTable times;
  private final TempoClock clock;
  private final FingerBowTime fingerBowTime;
  private final ShiftTime shiftTime;
  private final TempoLimitText limitText;

  /** The factor for a movement that does not repeat. */
  private final double single;

  /** The tightest limit by measure index; null if a measure has none. */
  private final Candidate[] tightest;

  /** The shift times from the moment before, by index of the moment. */
  private final Map<Integer, Optional<MinimumTime>> adjacentShifts = new HashMap<>();

  /** A range of moments, both ends included. */
  private record Range(int first, int last) {}

  /**
   * A possible limit. Its description is written only if it is requested.
   *
   * @param from index of the moment at which the movement starts
   * @param to index of the moment to whose measure the limit belongs
   * @param range the moments that it covers
   * @param needed the minimum time needed
   * @param free the time available in microseconds, 0 or more
   * @param text its description
   */
  private record Candidate(
      int from, int to, Range range, MinimumTime needed, long free, Supplier<String> text) {
    double factor() {
      return (double) free / needed.micros();
    }
  }

  TempoLimitFinder(Passage passage, List<Grip> grips, PlayerSpeed level) {
    this.passage = passage;
    this.grips = grips;
    moments = passage.moments();
    times = TimeTable.of(level, passage.instrument());
    clock = new TempoClock(moments, times);
    fingerBowTime = new FingerBowTime(times, passage.instrument().stringLength());
    shiftTime = new ShiftTime(times);
    limitText = new TempoLimitText(moments, grips);
    // The last moment need not be in the last measure: a measure may hold more than its meter and
    // overlap the next.
    int last = moments.stream().mapToInt(moment -> moment.place().measureIndex()).max().orElse(-1);
    tightest = new Candidate[last + 1];
    single = times.share("once");
  }

  /** Finds the limits; to be called once, before all others. */
  TempoLimitFinder find() {
    addActions();
    addShifts();
    addGraceNotes();
    addTrills();
    addRuns();
    return this;
  }

  /** The tightest limit of each measure, in score order, if it is below a multiple of the tempi. */
  ImmutableList<TempoLimit> below(double factor) {
    return candidates()
        .filter(candidate -> candidate.factor() < factor)
        .map(this::limit)
        .collect(ImmutableList.toImmutableList());
  }

  /** The number of measures with a limit below a multiple of the tempi. */
  int countBelow(double factor) {
    return (int) candidates().filter(candidate -> candidate.factor() < factor).count();
  }

  private Stream<Candidate> candidates() {
    return Arrays.stream(tightest).filter(Objects::nonNull);
  }

  private void add(int from, int to, MinimumTime needed, long free, Supplier<String> text) {
    add(new Candidate(from, to, new Range(to, to), needed, Math.max(0, free), text));
  }

  private void add(Candidate candidate) {
    int measure = moments.get(candidate.to()).place().measureIndex();
    Candidate previous = tightest[measure];
    if (previous == null || candidate.factor() < previous.factor()) {
      tightest[measure] = candidate;
    }
  }

  private TempoLimit limit(Candidate candidate) {
    return new TempoLimit(
        candidate.to(),
        moments.get(candidate.to()).place(),
        moments.get(candidate.range().first()).place(),
        moments.get(candidate.range().last()).place(),
        passage.tempoAt(moments.get(candidate.from()).starting().get(0).start()),
        candidate.needed().cause(),
        crosses(candidate),
        candidate.text().get(),
        candidate.needed().micros(),
        candidate.free());
  }

  private boolean crosses(Candidate candidate) {
    // The last moment of a run is not in its range.
    int from = candidate.range().first();
    int to = candidate.range().last() + 1;
    return switch (candidate.needed().cause()) {
      case CROSSING, SKIP -> true;
      case RUN -> TempoLimitText.mostlyCrosses(shifts(from, to), crossings(from, to));
      default -> false;
    };
  }

  /** Whether a moment is a grace note or the note after one; these share their time. */
  private boolean inGraceFigure(int m) {
    return moments.get(m).grace() || (m > 0 && moments.get(m - 1).grace());
  }

  /** Adds the limits of fingers and bow from each onset to the next. */
  private void addActions() {
    for (int m = 1; m < moments.size(); m++) {
      if (!inGraceFigure(m - 1)) {
        MinimumTime needed =
            fingerBowTime.between(true, grips.get(m - 1), moments.get(m), grips.get(m));
        add(m - 1, m, needed.times(single), clock.flexible(m - 1, m), text(needed, m - 1, m));
      }
    }
  }

  private Supplier<String> text(MinimumTime needed, int from, int to) {
    return () -> limitText.transition(needed.cause(), from, to);
  }

  /**
   * Adds the limits of shifts from each stopped note to the next; open strings in between add time.
   */
  private void addShifts() {
    int from = -1;
    for (int m = 0; m < moments.size(); m++) {
      if (grips.get(m).open()) {
        continue;
      }
      if (from >= 0 && !inGraceFigure(from)) {
        Optional<MinimumTime> needed = shift(from, m);
        if (needed.isPresent()) {
          add(from, m, needed.get(), clock.forShift(from, m), text(needed.get(), from, m));
        }
      }
      from = m;
    }
  }

  private Optional<MinimumTime> shift(int from, int to) {
    if (to != from + 1) {
      return computeShift(from, to);
    }
    // Cached, because runs overlap.
    Optional<MinimumTime> cached = adjacentShifts.get(to);
    if (cached == null) {
      cached = computeShift(from, to);
      adjacentShifts.put(to, cached);
    }
    return cached;
  }

  private Optional<MinimumTime> computeShift(int from, int to) {
    return shiftTime.between(
        moments.get(from), grips.get(from), moments.get(to), grips.get(to), to == from + 1);
  }

  /** The microseconds needed from the moment before to a moment, within a run. */
  private long neededInRun(int m) {
    long shift = shift(m - 1, m).map(MinimumTime::micros).orElse(0L);
    return Math.max(actionInRun(m).micros(), Math.round(shift / clock.shiftShare(m)));
  }

  private MinimumTime actionInRun(int m) {
    boolean joined = moments.get(m).slurred() || moments.get(m - 1).grace();
    return fingerBowTime.between(joined, grips.get(m - 1), moments.get(m), grips.get(m));
  }

  /** Adds the limits of grace notes, which use time of the notes around them. */
  private void addGraceNotes() {
    int first = -1;
    for (int m = 0; m < moments.size(); m++) {
      boolean grace = moments.get(m).grace();
      if (grace && first < 0) {
        first = m;
      } else if (!grace && first >= 0) {
        long micros = 0;
        for (int next = first + 1; next <= Math.min(m + 1, moments.size() - 1); next++) {
          micros += neededInRun(next);
        }
        MinimumTime needed = new MinimumTime(LimitCause.GRACE_NOTES, micros);
        int from = first;
        int to = m;
        add(from, to, needed, clock.forGraceNotes(from, to), () -> limitText.graceNotes(from, to));
        first = -1;
      }
    }
  }

  private void addTrills() {
    for (int m = 0; m < moments.size(); m++) {
      Moment moment = moments.get(m);
      List<Note> sounding = grips.get(m).notes(moment);
      for (Note note : moment.starting()) {
        if (note.marks().trill().isPresent() && !moment.grace()) {
          Placement placement = grips.get(m).placements().get(sounding.indexOf(note));
          MinimumTime needed = fingerBowTime.trill(placement).times(single);
          int trilled = m;
          add(m, m, needed, moment.soundMicros(), () -> limitText.trill(trilled, placement));
        }
      }
    }
  }

  /** Adds the limits of runs: a movement that is comfortable once may not be in a long row. */
  private void addRuns() {
    // Sums up to each moment, of the microseconds needed and of the moments in grace figures.
    long[] needed = new long[moments.size()];
    int[] graceFigures = new int[moments.size()];
    for (int m = 1; m < moments.size(); m++) {
      needed[m] = needed[m - 1] + neededInRun(m);
      graceFigures[m] = graceFigures[m - 1] + (inGraceFigure(m) ? 1 : 0);
    }
    for (String kind : List.of("burst", "run")) {
      int length = times.amount(kind);
      double factor = times.share(kind + "-takes");
      for (int to = length; to < moments.size(); to++) {
        int from = to - length;
        if (graceFigures[to] == graceFigures[from] && !inGraceFigure(from)) {
          long micros = Math.round((needed[to] - needed[from]) * factor);
          int end = to;
          // The limit belongs to the measure of the middle. The last note is not part of the run.
          add(
              new Candidate(
                  from,
                  from + length / 2,
                  new Range(from, to - 1),
                  new MinimumTime(LimitCause.RUN, micros),
                  Math.max(0, clock.flexible(from, to)),
                  () -> runText(from, end)));
        }
      }
    }
  }

  private String runText(int from, int to) {
    return limitText.run(to - from, clock.between(from, to), shifts(from, to), crossings(from, to));
  }

  private int shifts(int from, int to) {
    int shifts = 0;
    for (int m = from + 1; m <= to; m++) {
      shifts +=
          shift(m - 1, m).filter(needed -> needed.cause() == LimitCause.SHIFT).isPresent() ? 1 : 0;
    }
    return shifts;
  }

  private int crossings(int from, int to) {
    int crossings = 0;
    for (int m = from + 1; m <= to; m++) {
      crossings += FingerBowTime.stringsApart(grips.get(m - 1), grips.get(m)) > 0 ? 1 : 0;
    }
    return crossings;
  }
}
