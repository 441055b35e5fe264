package fingering.bench;

import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.ScoreReader;
import fingering.playability.CheckLevel;
import fingering.playability.check.Checker;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.audiveris.proxymusic.util.Marshalling;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** Compressed scores on two cores: only read by the XML binding, and checked. */
@State(Scope.Benchmark)
public class Checking {
  private static final int CORES = 2;

  /** A folder of compressed scores. */
  @Param("")
  public String folder;

  private List<Path> files = List.of();
  private ExecutorService threads;

  private interface Work {
    Object on(Path file) throws IOException, Marshalling.UnmarshallingException;
  }

  /** Lists the scores, the largest first, so that both threads end at about the same time. */
  @Setup
  public void find() throws IOException {
    try (Stream<Path> all = Files.list(Path.of(folder))) {
      files =
          all.filter(file -> file.toString().endsWith(".mxl"))
              .sorted(Comparator.comparingLong((Path file) -> -file.toFile().length()))
              .toList();
    }
    threads = Executors.newFixedThreadPool(CORES);
  }

  @TearDown
  public void end() {
    threads.shutdownNow();
  }

  /** The total times. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Turns {
    /** Microseconds of reading alone. */
    public long bareReading;

    /** Microseconds of checking. */
    public long checking;
  }

  /**
   * Reads the files into the classes of the binding only, and alternately reads and checks them
   * with a checker whose caches are empty. Alternating spreads other load on the machine over both.
   */
  @Benchmark
  public int byTurns(Turns turns) throws InterruptedException, ExecutionException {
    long start = System.nanoTime();
    int read = each(Checking::unmarshal);
    long between = System.nanoTime();
    Checker checker = Checker.of(CheckLevel.preset("advanced"));
    int checked = each(file -> checker.check(ScoreReader.read(ScoreFile.read(file))));
    turns.bareReading += (between - start) / 1_000;
    turns.checking += (System.nanoTime() - between) / 1_000;
    return read + checked;
  }

  private int each(Work work) throws InterruptedException, ExecutionException {
    List<Future<Object>> done = new ArrayList<>();
    for (Path file : files) {
      done.add(threads.submit(() -> work.on(file)));
    }
    int count = 0;
    for (Future<Object> one : done) {
      count += one.get() == null ? 0 : 1;
    }
    return count;
  }

  private static Object unmarshal(Path file)
      throws IOException, Marshalling.UnmarshallingException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry score =
          Collections.list(zip.entries()).stream()
              .filter(entry -> !entry.getName().startsWith("META-INF"))
              .filter(entry -> entry.getName().matches(".*\\.(xml|musicxml)"))
              .findFirst()
              .orElseThrow();
      try (InputStream in = zip.getInputStream(score)) {
        return Marshalling.unmarshal(in);
      }
    }
  }
}
