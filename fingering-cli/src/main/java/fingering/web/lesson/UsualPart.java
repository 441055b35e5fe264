package fingering.web.lesson;

import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import java.util.Optional;

/** The part of a lesson that names none. */
final class UsualPart {
  private UsualPart() {}

  /** The first part for strings, if the lesson names none. */
  static StoredLesson in(StoredLesson stored, Score score) {
    Lesson lesson = stored.lesson();
    Optional<String> part =
        lesson
            .part()
            .map(score::part)
            .or(
                () ->
                    score.parts().stream()
                        .filter(info -> info.isString() && score.hasNotes(info))
                        .findFirst())
            .or(
                () ->
                    score.parts().stream()
                        .filter(info -> info.instrument().isPresent() && score.hasNotes(info))
                        .findFirst())
            .or(() -> score.parts().stream().filter(score::hasNotes).findFirst())
            .or(() -> score.parts().stream().findFirst())
            .map(PartInfo::number)
            .map(String::valueOf);
    return new StoredLesson(stored.file(), lesson.withPart(part), stored.text());
  }
}
