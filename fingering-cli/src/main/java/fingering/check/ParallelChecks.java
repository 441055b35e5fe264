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
 * Checks many files on several threads. Results are delivered in the order of the files; at most
 * {@value #AHEAD} for each thread wait for an earlier one. Of the files in progress the largest
 * start first, so no thread is left with a large one at the end.
 */
public final class ParallelChecks {
  /** Enough to keep the other threads busy while one checks a long score; results are small. */
  static final int AHEAD = 32;

  /** The approximate factor by which a compressed score grows when unpacked. */
  private static final long UNPACKED = 15;

  private ParallelChecks() {}

  /**
   * Checks files.
   *
   * @param files the files, in the order of the results
   * @param jobs the number of threads, at least 1
   * @param check checks each file, on any thread
   * @param finished runs on any thread after each file
   * @param results receives the results in the order of the files, on the calling thread
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

  /** The check of one file; larger files come first. */
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
      // Reading the file will report the problem.
      return 0;
    }
  }
}
