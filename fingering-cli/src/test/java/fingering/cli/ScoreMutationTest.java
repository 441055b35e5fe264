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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Good scores, each with a few things wrong: whatever comes of them is a plan or one clear
 * sentence. {@code -Dmutations=50000} sets how many, {@code -Dseed=7} or {@code -Dseed=random} the
 * seed, and {@code -Dmutation=12} repeats a single one.
 */
final class ScoreMutationTest {
  private static final int MUTATIONS = Integer.getInteger("mutations", 500);
  private static final long SEED = seed(System.getProperty("seed", "1"));
  private static final int ONLY = Integer.getInteger("mutation", -1);
  private static final int SECONDS = 20;
  private static final int MOST_TOLD = 20;

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
    System.out.printf("%d spoilt scores; to repeat them: -Dseed=%d%n", MUTATIONS, SEED);
    SpoiltScores scores = SpoiltScores.load();
    int first = ONLY < 0 ? 0 : ONLY;
    int behind = ONLY < 0 ? MUTATIONS : ONLY + 1;
    for (int i = first; i < behind && faults.size() < MOST_TOLD; i++) {
      one(scores, i);
    }
    runner.shutdownNow();
    assertThat(faults).isEmpty();
    if (ONLY < 0) {
      // Scores spoilt beyond reading would prove little.
      assertThat(plans).as("plans made").isGreaterThan(MUTATIONS / 4);
    }
  }

  private void one(SpoiltScores scores, int number) throws IOException, InterruptedException {
    Random random = new Random(SEED * 1_000_003 + number);
    SpoiltScores.Spoilt score = scores.spoilt(random);
    Path place = Files.createDirectory(folder.resolve(String.valueOf(number)));
    Future<Mishap.Outcome> future =
        runner.submit(
            () -> {
              running = Thread.currentThread();
              return Mishap.of(score, place, random);
            });
    try {
      Mishap.Outcome outcome = future.get(SECONDS, TimeUnit.SECONDS);
      plans += outcome.plans();
      outcome.faults().forEach(fault -> tell(number, fault));
    } catch (TimeoutException e) {
      StringBuilder where = new StringBuilder("not done within %d seconds".formatted(SECONDS));
      Stream.of(running.getStackTrace())
          .limit(25)
          .forEach(l -> where.append("\n    at ").append(l));
      tell(number, where.toString());
      runner.shutdownNow();
      runner = daemon();
    } catch (ExecutionException e) {
      tell(number, String.valueOf(e.getCause()));
    }
    delete(place);
  }

  private void tell(int number, String fault) {
    String told = "-Dseed=%d -Dmutation=%d: %s".formatted(SEED, number, fault);
    System.out.println(told);
    faults.add(told);
  }

  private static void delete(Path place) throws IOException {
    try (Stream<Path> all = Files.walk(place)) {
      for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(one);
      }
    }
  }

  private static ExecutorService daemon() {
    return Executors.newSingleThreadExecutor(
        action -> {
          Thread thread = new Thread(action, "spoilt score");
          thread.setDaemon(true);
          return thread;
        });
  }
}
