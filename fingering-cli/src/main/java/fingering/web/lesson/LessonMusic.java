package fingering.web.lesson;

import fingering.lesson.Lesson;
import fingering.music.Passage;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.tables.FingeringException;
import java.util.Optional;

/** The music that a lesson is about, which may be readable even if it cannot be planned. */
public final class LessonMusic {
  private LessonMusic() {}

  /** The music of an open lesson; empty if its score does not have it. */
  public static Optional<Passage> of(OpenLesson now) {
    try {
      Setting setting = Setting.of(now.stamp(), now.stored());
      return Optional.of(
          now.planned()
              .filter(planned -> planned.setting().equals(setting))
              .map(Planned::passage)
              .orElseGet(() -> now.score().passage(request(now.lesson()))));
    } catch (FingeringException e) {
      // The page has said so. What is chosen next may be readable.
      return Optional.empty();
    }
  }

  /**
   * The music of a lesson.
   *
   * @param before other music, for whose instrument it is read if the lesson names none
   * @throws FingeringException if the score does not have the part or the measures
   */
  static Passage of(Lesson lesson, Score score, Passage before) {
    return score.passage(
        request(lesson).withInstrument(lesson.instrument().orElse(before.instrument())));
  }

  private static PassageRequest request(Lesson lesson) {
    PassageRequest request = PassageRequest.WHOLE;
    request = lesson.part().map(request::withPart).orElse(request);
    request = lesson.instrument().map(request::withInstrument).orElse(request);
    return lesson.measures().map(request::withMeasures).orElse(request);
  }
}
