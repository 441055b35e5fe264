package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan from a clean tempo to a goal in small steps, day by day. Each day begins {@value
 * #STEPS_BACK} steps below the last clean tempo and ends at most one step above it. If there is
 * time, the steps are spread over the days, and the goal is reached with a quarter of the days
 * left. If not, the ladder ends below the goal; its steps never grow. The ladder of a whole piece
 * is never above that of a spot that is not clean yet. The day before the performance brings
 * nothing new (common practice, no source).
 *
 * @param request the start and the goal
 * @param size the size of the steps
 * @param reachable the tempo at which it ends: the goal, or less if there are too few days
 * @param days one day for each date from the first day to the performance
 */
public record TempoLadder(
    LadderRequest request, StepSize size, Tempo reachable, ImmutableList<PracticeDay> days) {

  /** The number of steps below the last clean tempo at which a day begins. */
  public static final int STEPS_BACK = 4;

  /** The share of the days after which the goal is reached, in quarters. */
  private static final int QUARTERS = 3;

  /** Days before the performance from which there are run-throughs every second day. */
  private static final int EVERY_SECOND_DAY = 14;

  /** Days before the performance from which there is a run-through every day. */
  private static final int EVERY_DAY = 7;

  /** Days before the performance from which there are two run-throughs a day. */
  private static final int TWICE_A_DAY = 3;

  /** Creates a ladder whose steps are spread over the available days. */
  public static TempoLadder of(LadderRequest request, StepSize size) {
    return behind(request, size, false, ImmutableList.of());
  }

  /**
   * Creates a ladder with a step each day, which keeps a spot ahead of the whole piece.
   *
   * @param held whether the first day brings nothing faster, because the last one was bad
   */
  static TempoLadder leading(LadderRequest request, StepSize size, boolean held) {
    return of(request, size, climb(request, size, held, ImmutableList.of()));
  }

  /**
   * Creates a ladder whose steps are spread over the available days, and which is never faster than
   * any of the spots on the same day: a piece is as fast as its slowest spot.
   *
   * @param held whether the first day brings nothing faster, because the last one was bad
   * @param spots the ladders of the spots, each with the same days
   */
  static TempoLadder behind(
      LadderRequest request, StepSize size, boolean held, List<TempoLadder> spots) {
    List<Tempo> free = climb(request, size, held, ImmutableList.of());
    List<Tempo> tops = climb(request, size, held, spots);
    int days = free.size() - 1;
    int last = free.indexOf(free.get(days));
    last = reached(free.get(days), request.goal()) ? last : days;
    int arrival = Math.max(Math.max(1, last), (days * QUARTERS + 3) / 4);
    List<Tempo> spread = new ArrayList<>();
    for (int day = 0; day <= days; day++) {
      int step = (int) Math.min(last, (long) last * day / arrival);
      spread.add(slower(free.get(step), tops.get(day)));
    }
    return of(request, size, spread);
  }

  /**
   * Creates the days of a ladder.
   *
   * @param tops the fastest tempo before the first practice day, and then of each
   */
  private static TempoLadder of(LadderRequest request, StepSize size, List<Tempo> tops) {
    Tempo reachable = tops.get(tops.size() - 1);
    ImmutableList.Builder<PracticeDay> days = ImmutableList.builder();
    Tempo clean = request.clean();
    int practised = 0;
    int daysWithoutRunThrough = 0;
    for (LocalDate date = request.first(); !date.isAfter(request.by()); date = date.plusDays(1)) {
      PracticeDay.Kind kind = kind(request, date);
      if (kind == PracticeDay.Kind.REST) {
        days.add(new PracticeDay(date, kind, ImmutableList.of(), 0));
        continue;
      }
      if (kind == PracticeDay.Kind.PRACTICE) {
        practised++;
      }
      Tempo top = tops.get(practised);
      int runThroughs =
          runThroughs(kind, request, date, reached(clean, reachable), daysWithoutRunThrough);
      daysWithoutRunThrough = runThroughs > 0 ? 0 : daysWithoutRunThrough + 1;
      days.add(new PracticeDay(date, kind, steps(kind, clean, top, size), runThroughs));
      clean = top;
    }
    return new TempoLadder(request, size, reachable, days.build());
  }

  /** Returns whether the ladder ends at the goal. */
  public boolean reachesGoal() {
    return reachable.perMinute().compareTo(request.goal().perMinute()) == 0;
  }

  /** Returns the days that may bring a new tempo. */
  private static ImmutableList<LocalDate> practiceDays(LadderRequest request) {
    return request
        .first()
        .datesUntil(request.by())
        .filter(date -> kind(request, date) == PracticeDay.Kind.PRACTICE)
        .collect(ImmutableList.toImmutableList());
  }

  private static PracticeDay.Kind kind(LadderRequest request, LocalDate date) {
    if (date.equals(request.by())) {
      return PracticeDay.Kind.DAY;
    }
    if (request.rest().contains(date.getDayOfWeek())) {
      return PracticeDay.Kind.REST;
    }
    return date.plusDays(1).equals(request.by()) ? PracticeDay.Kind.EVE : PracticeDay.Kind.PRACTICE;
  }

  /**
   * Returns the fastest tempo of each practice day if each takes a step; the first element is the
   * tempo before the first day. A step that is larger than it should be is prepared for several
   * days.
   */
  private static List<Tempo> climb(
      LadderRequest request, StepSize size, boolean held, List<TempoLadder> spots) {
    List<Tempo> tops = new ArrayList<>();
    Tempo now = slower(request.clean(), request.goal());
    tops.add(now);
    int prepared = held ? -1 : 0;
    for (LocalDate date : practiceDays(request)) {
      Tempo next = slower(size.up(now), request.goal());
      prepared++;
      if (prepared > 0 && prepared >= size.daysFor(now, next)) {
        for (TempoLadder spot : spots) {
          next = slower(next, spot.on(date));
        }
        if (next.perMinute().compareTo(now.perMinute()) > 0) {
          now = next;
          prepared = 0;
        }
      }
      tops.add(now);
    }
    return tops;
  }

  /** Returns the fastest tempo of a day of practice. */
  private Tempo on(LocalDate date) {
    return days.get((int) ChronoUnit.DAYS.between(request.first(), date)).top();
  }

  private static Tempo slower(Tempo one, Tempo other) {
    return one.perMinute().compareTo(other.perMinute()) <= 0 ? one : other;
  }

  private static boolean reached(Tempo clean, Tempo end) {
    return clean.perMinute().compareTo(end.perMinute()) >= 0;
  }

  private static ImmutableList<Tempo> steps(
      PracticeDay.Kind kind, Tempo clean, Tempo top, StepSize size) {
    Tempo start = slower(clean, top);
    for (int i = 0; i < STEPS_BACK; i++) {
      start = size.down(start);
    }
    List<Tempo> steps = new ArrayList<>();
    steps.add(start);
    Tempo next = size.up(start);
    // Above the fastest setting of the metronome there is no next step.
    while (next.perMinute().compareTo(top.perMinute()) < 0
        && next.perMinute().compareTo(steps.get(steps.size() - 1).perMinute()) > 0) {
      steps.add(next);
      next = size.up(next);
    }
    // On the day of the performance and the day before, one slow tempo is enough.
    return kind == PracticeDay.Kind.PRACTICE
        ? ImmutableList.<Tempo>builder().addAll(steps).add(top).build()
        : ImmutableList.of(steps.get(0), top);
  }

  /** Returns the run-throughs of a day: once the last tempo is reached, more often near the end. */
  private static int runThroughs(
      PracticeDay.Kind kind,
      LadderRequest request,
      LocalDate date,
      boolean reached,
      int daysWithoutRunThrough) {
    if (kind == PracticeDay.Kind.EVE || kind == PracticeDay.Kind.DAY) {
      return 1;
    }
    long left = ChronoUnit.DAYS.between(date, request.by());
    if (!reached) {
      return 0;
    }
    if (left <= TWICE_A_DAY) {
      return 2;
    }
    int apart = left <= EVERY_DAY ? 1 : left <= EVERY_SECOND_DAY ? 2 : 3;
    return daysWithoutRunThrough + 1 >= apart ? 1 : 0;
  }
}
