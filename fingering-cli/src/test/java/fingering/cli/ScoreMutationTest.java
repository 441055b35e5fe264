package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A damaged score gives a plan or one clear sentence. {@code -Dmutations=50000} sets the number of
 * scores, {@code -Dseed=7} or {@code -Dseed=random} the seed, and {@code -Dmutation=12} repeats a
 * single score.
 */
@Tag("mutations")
final class ScoreMutationTest {
  private static final int MUTATIONS = Integer.getInteger("mutations", 500);
  private static final long SEED = seed(System.getProperty("seed", "1"));
  private static final int ONLY = Integer.getInteger("mutation", -1);
  private static final int SECONDS = 20;
  private static final int MAX_FAULTS = 20;

  @TempDir Path folder;

  private final List<String> faults = new ArrayList<>();
  private ExecutorService runner = daemon();
  private volatile Thread running;
  private int plans;

  private static long seed(String text) {
    return text.equals("random") ? System.nanoTime() % 1_000_000 : Long.parseLong(text);
  }

  @Test
  void everyOutcomeIsAPlanOrOneClearSentence() throws IOException, InterruptedException {
    System.out.printf("%d damaged scores; to repeat them: -Dseed=%d%n", MUTATIONS, SEED);
    DamagedScores scores = DamagedScores.load();
    int first = ONLY < 0 ? 0 : ONLY;
    int end = ONLY < 0 ? MUTATIONS : ONLY + 1;
    for (int i = first; i < end && faults.size() < MAX_FAULTS; i++) {
      one(scores, i);
    }
    runner.shutdownNow();
    assertThat(faults).isEmpty();
    if (ONLY < 0) {
      // Scores that cannot be read at all would prove little.
      assertThat(plans).as("plans made").isGreaterThan(MUTATIONS / 4);
    }
  }

  private void one(DamagedScores scores, int number) throws IOException, InterruptedException {
    Random random = new Random(SEED * 1_000_003 + number);
    DamagedScores.Damaged score = scores.damaged(random);
    Path trialFolder = Files.createDirectory(folder.resolve(String.valueOf(number)));
    Future<ScoreTrial.Outcome> future =
        runner.submit(
            () -> {
              running = Thread.currentThread();
              return ScoreTrial.of(score, trialFolder, random);
            });
    try {
      ScoreTrial.Outcome outcome = future.get(SECONDS, TimeUnit.SECONDS);
      plans += outcome.plans();
      outcome.faults().forEach(fault -> report(number, fault));
    } catch (TimeoutException e) {
      StringBuilder where = new StringBuilder("not finished within %d seconds".formatted(SECONDS));
      Stream.of(running.getStackTrace())
          .limit(25)
          .forEach(l -> where.append("\n    at ").append(l));
      report(number, where.toString());
      runner.shutdownNow();
      runner = daemon();
    } catch (ExecutionException e) {
      report(number, String.valueOf(e.getCause()));
    }
    delete(trialFolder);
  }

  private void report(int number, String fault) {
    String line = "-Dseed=%d -Dmutation=%d: %s".formatted(SEED, number, fault);
    System.out.println(line);
    faults.add(line);
  }

  private static void delete(Path trialFolder) throws IOException {
    try (Stream<Path> all = Files.walk(trialFolder)) {
      for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(one);
      }
    }
  }

  private static ExecutorService daemon() {
    return Executors.newSingleThreadExecutor(
        action -> {
          Thread thread = new Thread(action, "damaged score");
          thread.setDaemon(true);
          return thread;
        });
  }
}
