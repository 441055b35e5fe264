package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.cache.Cache;
import com.google.common.cache.CacheBuilder;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.page.PageContent;
import fingering.player.Player;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * The plans of an open score for other students than its own. The last ones are kept, so that one
 * more student takes the time of one. Thread-safe.
 */
final class StudentPlans {
  private static final int KEPT = 8;

  private final Adviser adviser;
  private final Cache<Asked, PageContent> kept =
      CacheBuilder.newBuilder().maximumSize(KEPT).build();

  StudentPlans(Adviser adviser) {
    this.adviser = adviser;
  }

  /**
   * What plans are made for.
   *
   * @param score the id of the open score
   * @param lesson the lesson with the student
   * @param player what the player file says
   */
  private record Asked(String score, Lesson lesson, Player player) {}

  /**
   * The plans for a student.
   *
   * @throws FingeringException if there are none; the message is one sentence
   */
  PageContent of(OpenScore open, StudentsFolder.Entry student, Cancellation cancellation) {
    StoredLesson stored = open.lesson();
    Lesson lesson = stored.lesson().withStudent(Optional.of(student.nameIn(stored)));
    Asked asked = new Asked(open.id(), lesson, student.player());
    PageContent known = kept.getIfPresent(asked);
    if (known != null) {
      return known;
    }
    try {
      PageContent made =
          adviser.compare(
              open.file(),
              open.score(),
              new StoredLesson(stored.file(), lesson, stored.text()),
              cancellation);
      kept.put(asked, made);
      return made;
    } catch (CancellationException e) {
      throw new FingeringException(text("open.slow"), e);
    }
  }
}
