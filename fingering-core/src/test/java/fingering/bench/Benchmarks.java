package fingering.bench;

import fingering.bench.Figures.Figure;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks in rounds and prints how they compare with each other. */
public final class Benchmarks {
  private static final int WARM_UPS = 5;

  /** The measurements in one round, of one second each. Their median counts. */
  private static final int MEASUREMENTS = 5;

  private final Figures figures = new Figures();

  private Benchmarks() {}

  /**
   * Runs the benchmarks.
   *
   * @param arguments the number of rounds; a regular expression for the classes and methods to run;
   *     an uncompressed score with one part, to read and plan; and a folder of compressed scores,
   *     to read and check, or an empty text
   */
  public static void main(String[] arguments) throws RunnerException {
    int rounds = Integer.parseInt(arguments[0]);
    String folder = arguments.length > 3 ? arguments[3] : "";
    Benchmarks benchmarks = new Benchmarks();
    for (int round = 1; round <= rounds; round++) {
      System.out.printf("round %d of %d%n", round, rounds);
      if (!folder.isEmpty()) {
        benchmarks.run(options("Checking\\..*", "-Xmx512m").param("folder", folder));
      }
      benchmarks.run(options("(?!Checking)" + arguments[1], "-Xmx6g").param("score", arguments[2]));
    }
    benchmarks.print();
  }

  /** Runs each benchmark once, in a JVM of its own. */
  private void run(ChainedOptionsBuilder options) throws RunnerException {
    for (RunResult result : new Runner(options.build()).run()) {
      StringBuilder name = new StringBuilder(result.getPrimaryResult().getLabel());
      for (String key : List.copyOf(result.getParams().getParamsKeys())) {
        String value = result.getParams().getParam(key);
        name.append(' ').append(value.substring(value.lastIndexOf('/') + 1));
      }
      figures.add(name.toString(), result.getPrimaryResult().getStatistics().getPercentile(50));
      result
          .getSecondaryResults()
          .forEach((counter, sum) -> figures.add(name + " " + counter, sum.getScore()));
    }
  }

  private static ChainedOptionsBuilder options(String benchmarks, String heap) {
    return new OptionsBuilder()
        .include("fingering\\.bench\\." + benchmarks)
        .mode(Mode.AverageTime)
        .timeUnit(TimeUnit.MICROSECONDS)
        .forks(1)
        .warmupIterations(WARM_UPS)
        .warmupTime(TimeValue.seconds(1))
        .measurementIterations(MEASUREMENTS)
        .measurementTime(TimeValue.seconds(1))
        .shouldDoGC(true)
        .shouldFailOnError(true)
        .verbosity(VerboseMode.SILENT)
        .jvmArgs(heap, "-XX:+UseParallelGC");
  }

  private void print() {
    Set<String> names = figures.names();
    names.forEach(name -> line(title(name) + ", us", figures.time(name, 1)));
    System.out.println();
    for (String name : names) {
      if (name.startsWith("reading ")) {
        ratio("reading : planning", name, name.replace("reading", "planning"));
        ratio("reading : planning from scratch", name, name.replace("reading", "planningAfresh"));
      }
      if (name.endsWith(" checking")) {
        ratio("checking : only reading", name, name.replace(" checking", " bareReading"));
      }
      if (name.startsWith("searchOfLength ")) {
        int notes = Integer.parseInt(name.substring(name.indexOf(' ') + 1));
        line("search of " + notes + " notes, us per note", figures.time(name, 1.0 / notes));
      }
    }
    ratio("Dijkstra : search", "dijkstra 1000", "search 1000");
    ratio("three skills : free plan", "threeSkills 1000", "freePlan 1000");
  }

  private static String title(String name) {
    return name.startsWith("drawing ")
        ? "drawing of " + name.substring(name.indexOf(' ') + 1) + " measures"
        : name;
  }

  /** Prints the ratio of two benchmarks, if both have run. */
  private void ratio(String what, String of, String to) {
    if (figures.names().containsAll(List.of(of, to))) {
      line(what + ", " + of.substring(of.indexOf(' ') + 1), figures.ratio(of, to));
    }
  }

  private static void line(String what, Figure figure) {
    System.out.printf("%-60s %s%n", what, figure);
  }
}
