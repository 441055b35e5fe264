package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Range;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.music.Passage;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.tables.FingeringException;
import java.util.Optional;

/** Demands of the plans of a lesson when it turns to other measures or another part. */
public final class FittingDemands {
  private FittingDemands() {}

  /**
   * The lesson without demands on notes and measures that it no longer has.
   *
   * @param before the music that the demands are about
   * @param lesson the lesson with its new measures and part
   * @param samePart whether the part is the same; notes of another part are other notes
   * @throws FingeringException if the score does not have these measures
   */
  public static Lesson in(Lesson lesson, Score score, Passage before, boolean samePart) {
    if (lesson.plans().stream().allMatch(plan -> plan.demands().isEmpty())) {
      return lesson;
    }
    PassageRequest request = PassageRequest.WHOLE.withInstrument(before.instrument());
    request = lesson.part().map(request::withPart).orElse(request);
    request = lesson.measures().map(request::withMeasures).orElse(request);
    Passage now = score.passage(request);
    return lesson.withPlans(
        lesson.plans().stream()
            .map(plan -> plan.without((key, value) -> !fits(key, value, before, now, samePart)))
            .collect(ImmutableList.<LessonPlan>toImmutableList()));
  }

  private static boolean fits(
      String key, String value, Passage before, Passage now, boolean samePart) {
    boolean note = key.equals("fix");
    int end = note ? value.indexOf('.') : value.lastIndexOf('@');
    if (end < 0) {
      return true;
    }
    String measures = note ? value.substring(0, end) : value.substring(end + 1);
    Optional<Range<Integer>> there = NamedMeasures.in(now, measures);
    // The same numbers may be those of another movement.
    return (samePart || !note)
        && there.isPresent()
        && there.equals(NamedMeasures.in(before, measures));
  }
}
