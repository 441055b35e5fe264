package fingering.web.lesson;

import fingering.lesson.Lesson;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The lessons in memory, the ones used last, and where the others can be read again. Thread-safe.
 */
final class LessonShelf {
  /** More are put away, the one not used for longest first: a quartet takes some megabytes. */
  private static final int MOST = 12;

  private final Map<String, OpenLesson> open = new LinkedHashMap<>(MOST, 0.75f, true);
  private final Map<String, PutAway> away = new HashMap<>();

  /**
   * A lesson whose page may still be open.
   *
   * @param file its file; that of the score if it is not saved
   * @param name the name that messages give the file
   * @param dropped whether the file is only lent
   * @param revision what the page shows
   * @param unsaved what it said if it is not saved
   */
  record PutAway(Path file, String name, boolean dropped, int revision, Optional<Lesson> unsaved) {
    private static PutAway of(OpenLesson lesson) {
      Path file =
          lesson.saved()
              ? lesson.stored().file()
              : lesson.dropped().orElseGet(() -> lesson.stored().scoreFile());
      return new PutAway(
          file,
          lesson.name(),
          !lesson.saved() && lesson.dropped().isPresent(),
          lesson.revision(),
          lesson.saved() ? Optional.empty() : Optional.of(lesson.lesson()));
    }
  }

  synchronized Optional<OpenLesson> get(String id) {
    return Optional.ofNullable(open.get(id));
  }

  /** The lesson that is saved in a file; empty if it is not in memory. */
  synchronized Optional<OpenLesson> in(Path file) {
    return open.values().stream()
        .filter(lesson -> lesson.saved() && lesson.stored().file().equals(file))
        .findFirst();
  }

  /** A lesson that was in memory; empty if there is none of that id. */
  synchronized Optional<PutAway> away(String id) {
    return Optional.ofNullable(away.get(id));
  }

  synchronized void put(OpenLesson lesson) {
    open.put(lesson.id(), lesson);
    away.remove(lesson.id());
    if (open.size() > MOST) {
      OpenLesson oldest = open.values().iterator().next();
      open.remove(oldest.id());
      away.put(oldest.id(), PutAway.of(oldest));
    }
  }
}
