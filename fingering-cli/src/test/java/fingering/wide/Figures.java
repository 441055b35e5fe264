package fingering.wide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Counts, times and failures of many runs. Thread-safe. */
public final class Figures {
  private static final double NANOS = 1e9;
  private static final long MIB = 1 << 20;

  /** More failures are only counted. */
  private static final int MOST_SHOWN = 30;

  private final String title;
  private final List<Long> times = new ArrayList<>();
  private final List<String> failures = new ArrayList<>();
  private String slowest = "";
  private long longest;

  public Figures(String title) {
    this.title = title;
  }

  /** Work whose time is taken. */
  public interface Work<T> {
    /** Does the work. */
    T done() throws Exception;
  }

  /** Does something and takes its time. */
  public <T> T timed(String what, Work<T> work) throws Exception {
    long start = System.nanoTime();
    try {
      return work.done();
    } finally {
      took(what, System.nanoTime() - start);
    }
  }

  private synchronized void took(String what, long nanos) {
    times.add(nanos);
    if (nanos > longest) {
      longest = nanos;
      slowest = what;
    }
  }

  /** Notes a failure unless a condition is met. */
  public synchronized void check(boolean met, String failure) {
    if (met) {
      return;
    }
    failures.add(failure);
    if (failures.size() <= MOST_SHOWN) {
      System.out.println("FAILURE " + failure);
    }
  }

  public synchronized List<String> failures() {
    return List.copyOf(failures);
  }

  /** The longest time, in seconds. */
  public synchronized double longestSeconds() {
    return longest / NANOS;
  }

  /** How many times were taken. */
  public synchronized int runs() {
    return times.size();
  }

  /** The memory in use after a collection, in MiB. */
  public static long heap() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / MIB;
  }

  /** Prints the figures on one line. */
  public synchronized void print(String subjects) {
    Collections.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%s: %s, %d runs, %d failures; median %.3f s, 95 %% within %.3f s, longest %.3f s (%s); %d MiB after a collection%n",
        title,
        subjects,
        times.size(),
        failures.size(),
        at(0.5),
        at(0.95),
        longest / NANOS,
        slowest,
        heap());
  }

  private double at(double share) {
    return times.isEmpty() ? 0 : times.get((int) (share * (times.size() - 1))) / NANOS;
  }
}
