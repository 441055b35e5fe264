package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Range;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.Optional;

/** Demands of the plans of a lesson when it turns to other music or another instrument. */
public final class FittingDemands {
  private FittingDemands() {}

  /**
   * The lesson without demands on notes and measures that it no longer has.
   *
   * @param wanted the lesson with its new measures, part and instrument
   * @param now the open lesson as it is
   * @param before its music, which its demands are about
   * @throws FingeringException if the score does not have these measures
   */
  public static Lesson in(Lesson wanted, OpenLesson now, Passage before) {
    Lesson lesson = now.lesson();
    // Notes of another part are other notes, and another instrument has other strings.
    boolean sameNotes =
        wanted.part().equals(lesson.part()) && wanted.instrument().equals(lesson.instrument());
    boolean same = sameNotes && wanted.measures().equals(lesson.measures());
    if (same || wanted.plans().stream().allMatch(plan -> plan.demands().isEmpty())) {
      return wanted;
    }
    Passage after = LessonMusic.of(wanted, now.score(), before);
    return wanted.withPlans(
        wanted.plans().stream()
            .map(plan -> plan.without((key, value) -> !fits(key, value, before, after, sameNotes)))
            .collect(ImmutableList.<LessonPlan>toImmutableList()));
  }

  private static boolean fits(
      String key, String value, Passage before, Passage after, boolean sameNotes) {
    boolean note = key.equals("fix");
    int end = note ? value.indexOf('.') : value.lastIndexOf('@');
    if (end < 0) {
      return true;
    }
    String measures = note ? value.substring(0, end) : value.substring(end + 1);
    Optional<Range<Integer>> there = NamedMeasures.in(after, measures);
    // The same numbers may be those of another movement.
    return (sameNotes || !note)
        && there.isPresent()
        && there.equals(NamedMeasures.in(before, measures));
  }
}
