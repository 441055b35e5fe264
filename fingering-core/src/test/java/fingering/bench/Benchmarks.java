package fingering.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs the benchmarks and prints how they compare with each other. */
public final class Benchmarks {
  private Benchmarks() {}

  /**
   * Runs the benchmarks.
   *
   * @param arguments an uncompressed score with one part, to read and plan; and optionally a folder
   *     of compressed scores, to read and check
   */
  public static void main(String[] arguments) throws RunnerException {
    List<RunResult> results = new ArrayList<>();
    if (arguments.length > 1 && !arguments[1].isEmpty()) {
      results.addAll(
          new Runner(
                  options("Checking", "-Xmx512m")
                      .param("folder", arguments[1])
                      .warmupIterations(5)
                      .build())
              .run());
    }
    results.addAll(
        new Runner(
                options("(ReadingAndPlanning|Searching)", "-Xmx6g")
                    .param("score", arguments[0])
                    .warmupIterations(3)
                    .build())
            .run());
    TreeMap<String, Double> micros = new TreeMap<>();
    for (RunResult result : results) {
      List<String> keys = List.copyOf(result.getParams().getParamsKeys());
      StringBuilder name = new StringBuilder(result.getPrimaryResult().getLabel());
      for (String key : keys) {
        String value = result.getParams().getParam(key);
        name.append(' ').append(value.substring(value.lastIndexOf('/') + 1));
      }
      micros.put(name.toString(), result.getPrimaryResult().getScore());
      result
          .getSecondaryResults()
          .forEach((counter, sum) -> micros.put(name.toString() + ' ' + counter, sum.getScore()));
    }
    micros.forEach((name, time) -> System.out.printf("%-60s %14.1f us%n", name, time));
    System.out.println();
    micros.keySet().stream()
        .filter(name -> name.startsWith("reading "))
        .forEach(
            name -> {
              ratio(micros, "reading : planning", name, name.replace("reading", "planning"));
              ratio(
                  micros,
                  "reading : planning afresh",
                  name,
                  name.replace("reading", "planningAfresh"));
            });
    micros.keySet().stream()
        .filter(name -> name.endsWith(" checking"))
        .forEach(
            name ->
                ratio(
                    micros,
                    "checking : bare reading",
                    name,
                    name.replace(" checking", " bareReading")));
    ratio(micros, "Dijkstra : search", "dijkstra 1000", "search 1000");
    ratio(micros, "three skills : free", "threeSkills 1000", "freePlan 1000");
    for (int notes = 1_000; notes <= 1_000_000; notes *= 10) {
      System.out.printf(
          "search, %d notes: %.3f us a note%n",
          notes, micros.getOrDefault("searchOfLength " + notes, Double.NaN) / notes);
    }
  }

  private static ChainedOptionsBuilder options(String benchmarks, String heap) {
    return new OptionsBuilder()
        .include("fingering\\.bench\\." + benchmarks + "\\.")
        .mode(Mode.AverageTime)
        .timeUnit(TimeUnit.MICROSECONDS)
        .forks(1)
        .warmupTime(TimeValue.seconds(1))
        .measurementIterations(5)
        .measurementTime(TimeValue.seconds(1))
        .jvmArgs(heap, "-XX:+UseParallelGC");
  }

  private static void ratio(Map<String, Double> micros, String what, String of, String to) {
    System.out.printf(
        "%s = %.2f (%s)%n",
        what,
        micros.getOrDefault(of, Double.NaN) / micros.getOrDefault(to, Double.NaN),
        of.substring(of.indexOf(' ') + 1));
  }
}
