package fingering.web.lesson;

import com.google.common.cache.CacheBuilder;
import com.google.common.cache.CacheLoader;
import com.google.common.cache.LoadingCache;
import com.google.common.util.concurrent.MoreExecutors;
import fingering.lesson.Lesson;
import fingering.lesson.LessonFile;
import fingering.lesson.StoredLesson;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Writes the histories of open lessons in the background, so that nobody waits for them: after a
 * long lesson a history has 200 states. Of several changes in a row only the last one is written.
 */
public final class HistoryKeeper implements AutoCloseable {
  /** How long closing waits for the last write. */
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final Map<Path, OpenLesson> waiting = new ConcurrentHashMap<>();
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "history");
            thread.setDaemon(true);
            return thread;
          });

  /** The text of each state, which does not change. */
  private final LoadingCache<Lesson, String> texts =
      CacheBuilder.newBuilder().weakKeys().build(CacheLoader.from(LessonFile::text));

  /** Keeps the history of a lesson that is saved. */
  void keep(OpenLesson open) {
    Path file = open.stored().file();
    if (waiting.put(file, open) == null) {
      writer.execute(
          () ->
              Optional.ofNullable(waiting.remove(file))
                  .ifPresent(last -> HistoryFile.save(last, texts::getUnchecked)));
    }
  }

  /** The history of a lesson; none if there is none to be read. */
  History read(StoredLesson lesson) {
    // After all writes that are still waiting.
    return CompletableFuture.supplyAsync(() -> HistoryFile.read(lesson), writer).join();
  }

  /** Waits until all is written. */
  @Override
  public void close() {
    MoreExecutors.shutdownAndAwaitTermination(writer, PATIENCE);
  }
}
