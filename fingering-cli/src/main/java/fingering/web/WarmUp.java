package fingering.web;

import fingering.tables.FingeringException;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Plans and draws the demo once where nobody sees it, so that the classes and tables for the first
 * plan are loaded while the teacher chooses a score.
 */
final class WarmUp {
  private final Adviser adviser;
  private final DroppedFiles dropped;
  private final AtomicBoolean started = new AtomicBoolean();

  WarmUp(Adviser adviser, DroppedFiles dropped) {
    this.adviser = adviser;
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
      OpenScores scores = new OpenScores(adviser);
      DroppedFiles.Dropped demo = dropped.keep(Demo.SCORE, Demo.score());
      OpenScore open = scores.open(demo.id(), demo.path(), demo.name());
      new ScorePages(adviser, scores).plans(open, Map.of(), "");
    } catch (FingeringException e) {
      // The first plan then loads everything itself, and says what is wrong.
      return;
    }
  }
}
