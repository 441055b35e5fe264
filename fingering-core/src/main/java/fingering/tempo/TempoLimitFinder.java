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

/** Finds what limits each measure of a fingered passage. */
final class TempoLimitFinder {
  private final Passage passage;
  private final List<Moment> moments;
  private final List<Grip> grips;
  private final TimeTable times;
  private final TempoClock clock;
  private final FingerBowTime actions;
  private final ShiftTime travel;
  private final TempoLimitText words;
  private final double once;

  /** By index of measure; missing where nothing limits it. */
  private final Candidate[] tightest;

  private final Map<Integer, Optional<MinimumTime>> ways = new HashMap<>();

  /** The moments in which it lies, both ends within. */
  private record Extent(int first, int last) {}

  /** What may be the tightest of its measure; put into words only where it is. */
  private record Candidate(
      int from, int to, Extent extent, MinimumTime need, long free, Supplier<String> says) {
    double factor() {
      return (double) free / need.micros();
    }
  }

  TempoLimitFinder(Passage passage, List<Grip> grips, PlayerSpeed level) {
    this.passage = passage;
    this.grips = grips;
    moments = passage.moments();
    times = TimeTable.of(level, passage.instrument());
    clock = new TempoClock(moments, times);
    actions = new FingerBowTime(times, passage.instrument().stringLength());
    travel = new ShiftTime(times);
    words = new TempoLimitText(moments, grips);
    // Not always that of the last moment: a measure may hold more than its meter, and overlap the
    // next.
    int last = moments.stream().mapToInt(moment -> moment.place().measureIndex()).max().orElse(-1);
    tightest = new Candidate[last + 1];
    once = times.share("once");
  }

  /** Finds what limits each measure most. */
  TempoLimitFinder find() {
    actions();
    travels();
    graces();
    trills();
    runs();
    return this;
  }

  /** What limits each measure most, in score order, where that is below a multiple of the tempi. */
  ImmutableList<TempoLimit> under(double factor) {
    return found()
        .filter(found -> found.factor() < factor)
        .map(this::limit)
        .collect(ImmutableList.toImmutableList());
  }

  /** How many measures have a limit below a multiple of the tempi. */
  int count(double factor) {
    return (int) found().filter(found -> found.factor() < factor).count();
  }

  private Stream<Candidate> found() {
    return Arrays.stream(tightest).filter(Objects::nonNull);
  }

  private void add(int from, int to, MinimumTime need, long free, Supplier<String> says) {
    add(new Candidate(from, to, new Extent(to, to), need, Math.max(0, free), says));
  }

  private void add(Candidate found) {
    int measure = moments.get(found.to()).place().measureIndex();
    Candidate was = tightest[measure];
    if (was == null || found.factor() < was.factor()) {
      tightest[measure] = found;
    }
  }

  private TempoLimit limit(Candidate found) {
    return new TempoLimit(
        found.to(),
        moments.get(found.to()).place(),
        moments.get(found.extent().first()).place(),
        moments.get(found.extent().last()).place(),
        passage.tempoAt(moments.get(found.from()).starting().get(0).start()),
        found.need().cause(),
        found.says().get(),
        found.need().micros(),
        found.free());
  }

  /** Whether it is a grace note, or the note on which grace notes lean: they share their time. */
  private boolean leans(int m) {
    return moments.get(m).grace() || (m > 0 && moments.get(m - 1).grace());
  }

  /** From one onset to the next, each by itself. */
  private void actions() {
    for (int m = 1; m < moments.size(); m++) {
      if (!leans(m - 1)) {
        MinimumTime need = actions.need(true, grips.get(m - 1), moments.get(m), grips.get(m));
        add(m - 1, m, need.times(once), clock.elastic(m - 1, m), says(need, m - 1, m));
      }
    }
  }

  private Supplier<String> says(MinimumTime need, int from, int to) {
    return () -> words.transition(need.cause(), from, to);
  }

  /** From one stopped note to the next; open strings between leave the hand free. */
  private void travels() {
    int from = -1;
    for (int m = 0; m < moments.size(); m++) {
      if (grips.get(m).open()) {
        continue;
      }
      if (from >= 0 && !leans(from)) {
        Optional<MinimumTime> need = travel(from, m);
        if (need.isPresent()) {
          add(from, m, need.get(), clock.free(from, m), says(need.get(), from, m));
        }
      }
      from = m;
    }
  }

  private Optional<MinimumTime> travel(int from, int to) {
    if (to != from + 1) {
      return between(from, to);
    }
    // Runs ask for the same ways again.
    Optional<MinimumTime> known = ways.get(to);
    if (known == null) {
      known = between(from, to);
      ways.put(to, known);
    }
    return known;
  }

  private Optional<MinimumTime> between(int from, int to) {
    return travel.need(
        moments.get(from), grips.get(from), moments.get(to), grips.get(to), to == from + 1);
  }

  /** What the way to a moment takes among others; grace notes are joined in any case. */
  private long inRow(int m) {
    long travels = travel(m - 1, m).map(MinimumTime::micros).orElse(0L);
    return Math.max(actionInRow(m).micros(), Math.round(travels / clock.share(m)));
  }

  private MinimumTime actionInRow(int m) {
    boolean joined = moments.get(m).slurred() || moments.get(m - 1).grace();
    return actions.need(joined, grips.get(m - 1), moments.get(m), grips.get(m));
  }

  /** Grace notes take the time they need from their neighbours. */
  private void graces() {
    int first = -1;
    for (int m = 0; m < moments.size(); m++) {
      boolean grace = moments.get(m).grace();
      if (grace && first < 0) {
        first = m;
      } else if (!grace && first >= 0) {
        long needed = 0;
        for (int next = first + 1; next <= Math.min(m + 1, moments.size() - 1); next++) {
          needed += inRow(next);
        }
        MinimumTime need = new MinimumTime(LimitCause.GRACE_NOTES, needed);
        int from = first;
        int to = m;
        add(from, to, need, clock.graces(from, to), () -> words.graces(from, to));
        first = -1;
      }
    }
  }

  private void trills() {
    for (int m = 0; m < moments.size(); m++) {
      Moment moment = moments.get(m);
      List<Note> sounding = grips.get(m).notes(moment);
      for (Note note : moment.starting()) {
        if (note.marks().trill().isPresent() && !moment.grace()) {
          Placement placement = grips.get(m).placements().get(sounding.indexOf(note));
          MinimumTime need = actions.trill(placement).times(once);
          int at = m;
          add(m, m, need, moment.soundMicros(), () -> words.trill(at, placement));
        }
      }
    }
  }

  /** What goes at ease once does not go so many times in a row. */
  private void runs() {
    long[] needed = new long[moments.size()];
    int[] leaning = new int[moments.size()];
    for (int m = 1; m < moments.size(); m++) {
      needed[m] = needed[m - 1] + inRow(m);
      leaning[m] = leaning[m - 1] + (leans(m) ? 1 : 0);
    }
    for (String kind : List.of("burst", "run")) {
      int length = times.amount(kind);
      double takes = times.share(kind + "-takes");
      for (int to = length; to < moments.size(); to++) {
        int from = to - length;
        if (leaning[to] == leaning[from] && !leans(from)) {
          long sum = Math.round((needed[to] - needed[from]) * takes);
          MinimumTime need = new MinimumTime(LimitCause.RUN, sum);
          int end = to;
          long free = Math.max(0, clock.elastic(from, to));
          // It counts for the measure of its middle. The note at its end is no longer part of it.
          Extent extent = new Extent(from, to - 1);
          add(new Candidate(from, from + length / 2, extent, need, free, () -> run(from, end)));
        }
      }
    }
  }

  private String run(int from, int to) {
    int shifts = 0;
    int crossings = 0;
    for (int m = from + 1; m <= to; m++) {
      shifts +=
          travel(m - 1, m).filter(need -> need.cause() == LimitCause.SHIFT).isPresent() ? 1 : 0;
      crossings += FingerBowTime.apart(grips.get(m - 1), grips.get(m)) > 0 ? 1 : 0;
    }
    return words.run(to - from, clock.between(from, to), shifts, crossings);
  }
}
