package fingering.check;

import com.google.common.util.concurrent.Futures;
import com.google.common.util.concurrent.ThreadFactoryBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Checks many files on several threads. Results are handed on in the order of the files; of those
 * that wait for an earlier one no more than {@value #AHEAD} are kept for each thread. Among these
 * the largest begins first, so that no thread is left alone with it at the end.
 */
public final class ParallelChecks {
  /** Enough that a long score does not hold up the other threads; a result is small. */
  static final int AHEAD = 32;

  /** A compressed score is about so much larger when it is unpacked. */
  private static final long UNPACKED = 15;

  private ParallelChecks() {}

  /**
   * Checks files.
   *
   * @param files the files, in the order in which results are wanted
   * @param jobs threads, at least 1
   * @param check how each is checked, on any thread
   * @param finished is told, on any thread, whenever a file is done
   * @param results gets the results in the order of the files, on the thread that calls
   */
  public static void check(
      List<Path> files,
      int jobs,
      FileCheck check,
      Runnable finished,
      Consumer<CheckedFile> results) {
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            jobs,
            jobs,
            0,
            TimeUnit.SECONDS,
            new PriorityBlockingQueue<>(),
            // An abandoned check does not keep the program alive.
            new ThreadFactoryBuilder().setDaemon(true).setNameFormat("check-%d").build());
    try {
      Deque<Work> pending = new ArrayDeque<>();
      int next = 0;
      while (next < files.size() || !pending.isEmpty()) {
        while (next < files.size() && pending.size() < jobs * AHEAD) {
          Work work = new Work(files.get(next++), check, finished);
          pending.add(work);
          pool.execute(work);
        }
        results.accept(Futures.getUnchecked(pending.remove()));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  /** The check of one file, the larger the earlier. */
  private static final class Work extends FutureTask<CheckedFile> implements Comparable<Work> {
    private final long size;

    Work(Path file, FileCheck check, Runnable finished) {
      super(
          () -> {
            CheckedFile checked = check.of(file);
            finished.run();
            return checked;
          });
      size = size(file);
    }

    @Override
    public int compareTo(Work other) {
      return Long.compare(other.size, size);
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file) * (ScoreFinder.compressed(file) ? UNPACKED : 1);
    } catch (IOException e) {
      // Whoever reads it will say what is wrong with it.
      return 0;
    }
  }
}
