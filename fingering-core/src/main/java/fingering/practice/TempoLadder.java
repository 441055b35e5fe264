package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * From a clean tempo to a goal in small steps, day by day. Each day begins some steps below what
 * was clean last and ends at most one step above it. Where there is time the steps are spread, so
 * that the goal is reached when a quarter of the days are left. Where there is not, the ladder says
 * how far it leads; its steps never grow. The last day before brings nothing new (common practice,
 * no source).
 *
 * @param request what it leads to
 * @param size how small its steps are
 * @param reachable the tempo at which it ends: the goal, or less where the days do not suffice
 * @param days a day for each date from the first to the day itself
 */
public record TempoLadder(
    LadderRequest request, StepSize size, Tempo reachable, ImmutableList<PracticeDay> days) {

  /** So many steps below the last clean tempo a day begins. */
  private static final int BACK = 4;

  /** The share of the days after which the goal is reached, in quarters. */
  private static final int QUARTERS = 3;

  private static final int EVERY_DAY = 7;
  private static final int TWICE = 3;
  private static final int EVERY_SECOND = 14;

  /** Makes the ladder, its steps spread over the days that there are. */
  public static TempoLadder of(LadderRequest request, StepSize size) {
    return of(request, size, true);
  }

  /** Makes a ladder that takes a step each day, so that hard measures lead the whole. */
  static TempoLadder leading(LadderRequest request, StepSize size) {
    return of(request, size, false);
  }

  private static TempoLadder of(LadderRequest request, StepSize size, boolean spread) {
    ImmutableList<LocalDate> climbing = climbing(request);
    List<Tempo> pace = pace(request, size, climbing.size());
    int last = pace.size() - 1;
    int arrival = spread ? Math.max(last, (climbing.size() * QUARTERS + 3) / 4) : last;
    Tempo reachable = pace.get(last);
    ImmutableList.Builder<PracticeDay> days = ImmutableList.builder();
    Tempo clean = request.clean();
    int climbed = 0;
    int untried = 0;
    for (LocalDate date = request.first(); !date.isAfter(request.by()); date = date.plusDays(1)) {
      PracticeDay.Kind kind = kind(request, date);
      if (kind == PracticeDay.Kind.REST) {
        days.add(new PracticeDay(date, kind, ImmutableList.of(), 0));
        continue;
      }
      if (kind == PracticeDay.Kind.PRACTICE) {
        climbed++;
      }
      Tempo top = pace.get(Math.min(last, (int) ((long) last * climbed / Math.max(1, arrival))));
      int full = full(kind, request, date, there(clean, reachable), untried);
      untried = full > 0 ? 0 : untried + 1;
      days.add(new PracticeDay(date, kind, steps(kind, clean, top, size), full));
      clean = top;
    }
    return new TempoLadder(request, size, reachable, days.build());
  }

  /** Whether it ends at the goal. */
  public boolean reachesGoal() {
    return reachable.perMinute().compareTo(request.goal().perMinute()) == 0;
  }

  /** The days on which there may be something new. */
  private static ImmutableList<LocalDate> climbing(LadderRequest request) {
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

  /** The fastest tempo after each day of climbing, at full pace; the first is what is clean. */
  private static List<Tempo> pace(LadderRequest request, StepSize size, int days) {
    List<Tempo> pace = new ArrayList<>();
    Tempo now = slower(request.clean(), request.goal());
    pace.add(now);
    while (now.perMinute().compareTo(request.goal().perMinute()) < 0 && pace.size() <= days) {
      Tempo next = slower(size.up(now), request.goal());
      for (int held = 1; held < size.days(now, next) && pace.size() <= days; held++) {
        pace.add(now);
      }
      if (pace.size() <= days) {
        pace.add(next);
      }
      now = next;
    }
    return pace;
  }

  private static Tempo slower(Tempo one, Tempo other) {
    return one.perMinute().compareTo(other.perMinute()) <= 0 ? one : other;
  }

  private static boolean there(Tempo clean, Tempo end) {
    return clean.perMinute().compareTo(end.perMinute()) >= 0;
  }

  private static ImmutableList<Tempo> steps(
      PracticeDay.Kind kind, Tempo clean, Tempo top, StepSize size) {
    Tempo start = slower(clean, top);
    for (int i = 0; i < BACK; i++) {
      start = size.down(start);
    }
    List<Tempo> steps = new ArrayList<>();
    for (Tempo step = start;
        step.perMinute().compareTo(top.perMinute()) < 0;
        step = size.up(step)) {
      steps.add(step);
    }
    // Before the day itself and on it one slow tempo is enough to find the hand.
    return kind == PracticeDay.Kind.PRACTICE
        ? ImmutableList.<Tempo>builder().addAll(steps).add(top).build()
        : ImmutableList.of(steps.get(0), top);
  }

  /** More often as the day comes nearer, once the last tempo has been reached. */
  private static int full(
      PracticeDay.Kind kind, LadderRequest request, LocalDate date, boolean there, int untried) {
    if (kind == PracticeDay.Kind.EVE || kind == PracticeDay.Kind.DAY) {
      return 1;
    }
    long left = ChronoUnit.DAYS.between(date, request.by());
    if (!there) {
      return 0;
    }
    if (left <= TWICE) {
      return 2;
    }
    int apart = left <= EVERY_DAY ? 1 : left <= EVERY_SECOND ? 2 : 3;
    return untried + 1 >= apart ? 1 : 0;
  }
}
