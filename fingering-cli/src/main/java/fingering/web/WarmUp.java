package fingering.web;

import fingering.tables.FingeringException;
import fingering.web.folder.Demo;
import fingering.web.lesson.OpenLessons;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Plans and draws the demo once where nobody sees it, so that the classes and tables for the first
 * plan are loaded while the teacher chooses a score.
 */
final class WarmUp {
  private final OpenLessons lessons;
  private final LessonPages pages;
  private final DroppedFiles dropped;
  private final AtomicBoolean started = new AtomicBoolean();

  /**
   * A warm-up.
   *
   * @param lessons lessons that nobody else opens
   * @param pages pages that nobody sees
   * @param dropped takes the demo
   */
  WarmUp(OpenLessons lessons, LessonPages pages, DroppedFiles dropped) {
    this.lessons = lessons;
    this.pages = pages;
    this.dropped = dropped;
  }

  void start() {
    if (started.compareAndSet(false, true)) {
      Thread thread = new Thread(this::plan, "warm-up");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void plan() {
    try {
      DroppedFiles.Dropped demo = dropped.keep(Demo.SCORE, Demo.score());
      String id = lessons.open(demo.id(), demo.path(), demo.name(), true).id();
      OpenLessons.State state = lessons.planned(id);
      pages.page(state.open(), "");
      pages.answer(state, Map.of(), "");
    } catch (FingeringException e) {
      // The first plan then loads everything itself, and says what is wrong.
      return;
    }
  }
}
