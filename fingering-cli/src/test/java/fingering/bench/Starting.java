package fingering.bench;

import com.google.common.base.Splitter;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How long a start takes: {@code compare} by its launcher, against a JVM that does no more than
 * read the same file by the XML binding. Both are started by turns, and their medians compared,
 * since the machine is not equally quick at all times. Where it tells, the time of the processor is
 * compared too, which other programs disturb less.
 */
public final class Starting {
  private static final int TIMES = 31;
  private static final List<String> OPTIONS =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

  private Starting() {}

  /**
   * Measures and prints.
   *
   * @param arguments the launcher, the runnable jar, the score, and the folder of this class
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    String launcher = arguments[0];
    String jar = arguments[1];
    String score = arguments[2];
    List<String> bare = new ArrayList<>(List.of(java()));
    bare.addAll(OPTIONS);
    String classes = jar + File.pathSeparator + arguments[3];
    bare.addAll(List.of("-cp", classes, BareReading.class.getName(), score));
    List<String> compare = List.of(launcher, "compare", score);
    run(compare); // the first start may have to prepare
    long[] bareMillis = new long[TIMES];
    long[] compareMillis = new long[TIMES];
    long[] bareProcessor = new long[TIMES];
    long[] compareProcessor = new long[TIMES];
    for (int i = 0; i < TIMES; i++) {
      long before = processorMillis();
      bareMillis[i] = run(bare);
      long between = processorMillis();
      compareMillis[i] = run(compare);
      bareProcessor[i] = between - before;
      compareProcessor[i] = processorMillis() - between;
    }
    print("start of compare : bare reading", compareMillis, bareMillis);
    print("processor time of both", compareProcessor, bareProcessor);
  }

  private static void print(String what, long[] compare, long[] bare) {
    System.out.printf(
        "%s = %.2f (%d and %d ms)%n",
        what, (double) median(compare) / median(bare), median(compare), median(bare));
  }

  /** The processor time of all processes that this one has started and that have ended; or 0. */
  private static long processorMillis() throws IOException {
    Path status = Path.of("/proc/self/stat");
    if (!Files.isReadable(status)) {
      return 0;
    }
    // After the name of the program, in hundredths of a second.
    List<String> fields =
        Splitter.on(' ').splitToList(Files.readString(status).replaceFirst(".*\\) ", ""));
    return 10 * (Long.parseLong(fields.get(13)) + Long.parseLong(fields.get(14)));
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private static long run(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    int code = process.waitFor();
    if (code != 0) {
      throw new IllegalStateException(command + " ended with " + code);
    }
    return (System.nanoTime() - start) / 1_000_000;
  }

  private static long median(long[] times) {
    long[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
