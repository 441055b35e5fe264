package fingering.lesson;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableSet;
import fingering.practice.MetronomeScale;
import fingering.tables.FingeringException;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;

/**
 * How the student practises up to the hearing.
 *
 * @param restDays the days of the week without practice, in the order of the week
 * @param metronome the settings of the student's metronome
 */
public record LessonLadder(ImmutableSet<DayOfWeek> restDays, MetronomeScale metronome) {
  /** Practice on every day, and any metronome. */
  public static final LessonLadder USUAL =
      new LessonLadder(ImmutableSet.of(), MetronomeScale.EXACT);

  /** The letters of the shortest name of a day. */
  private static final int SHORTEST_DAY = 3;

  /** Sorts the days. */
  public LessonLadder {
    restDays = restDays.stream().sorted().collect(ImmutableSet.toImmutableSet());
  }

  /**
   * The day of the week of a name: {@code sun} or {@code Sunday}.
   *
   * @throws FingeringException if it is none
   */
  public static DayOfWeek day(String text) {
    String start = Ascii.toLowerCase(text.strip());
    return Arrays.stream(DayOfWeek.values())
        .filter(day -> start.length() >= SHORTEST_DAY && fullName(day).startsWith(start))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "'%s' is not a day of the week; write mon, tue, wed and so on"
                        .formatted(text)));
  }

  /** The shortest name of a day: {@code sun}. */
  public static String name(DayOfWeek day) {
    return fullName(day).substring(0, SHORTEST_DAY);
  }

  private static String fullName(DayOfWeek day) {
    return Ascii.toLowerCase(day.getDisplayName(TextStyle.FULL, Locale.ENGLISH));
  }
}
