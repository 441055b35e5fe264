package fingering.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.file.ScoreFile;
import fingering.playability.CheckLevel;
import fingering.playability.CheckRequest;
import fingering.playability.check.Checker;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FileCheckTest {
  private static final String SCORE =
      "<score-partwise><part-list><score-part id=\"P1\"><part-name>Viola</part-name></score-part>"
          + "</part-list><part id=\"P1\"><measure number=\"1\"><attributes><divisions>1</divisions>"
          + "<clef><sign>C</sign><line>3</line></clef></attributes><note><pitch><step>D</step>"
          + "<octave>4</octave></pitch><duration>4</duration><type>whole</type></note></measure>"
          + "</part></score-partwise>";

  private static FileCheck.Settings settings(Function<Path, ScoreFile> reading) {
    return new FileCheck.Settings(
        () -> Checker.of(CheckLevel.preset("intermediate")),
        reading,
        CheckRequest.WHOLE,
        false,
        failure -> "failed with " + failure.getClass().getSimpleName() + ".");
  }

  private static ScoreFile fine() {
    return ScoreFile.of(SCORE, ImmutableList.of());
  }

  @Test
  void everyFailureBecomesASentenceThatNamesTheFile() {
    for (Throwable failure :
        List.of(
            new StackOverflowError(),
            new IllegalStateException(),
            new AssertionError("impossible"))) {
      FileCheck check = new FileCheck(settings(path -> thrown(failure)));
      assertThat(check.of(Path.of("a.xml")).problem())
          .isEqualTo("a.xml: failed with " + failure.getClass().getSimpleName() + ".");
    }
  }

  private static ScoreFile thrown(Throwable failure) {
    if (failure instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) failure;
  }

  private static String problem(String score) {
    return new FileCheck(settings(path -> ScoreFile.of(score, ImmutableList.of())))
        .of(Path.of("a.xml"))
        .problem();
  }

  @Test
  void withoutAStringPartEachPartIsNamedWithItsReason() {
    assertThat(problem(SCORE.replace("Viola", "Tenor")))
        .isEqualTo(
            "a.xml: no part is known to be for violin, viola, cello or bass, so nothing was checked; choose a part with --part, and give its instrument with --instrument: 1 Tenor (another instrument or a voice).");
  }

  @Test
  void aStringPartThatRestsThroughoutHasNoNotesToFinger() {
    assertThat(problem(SCORE.replaceAll("<pitch>.*</pitch>", "<rest/>")))
        .isEqualTo(
            "a.xml: nothing was checked, because the string parts have no notes to finger: Viola.");
  }

  @Test
  void outOfMemoryIsRetriedOnceWithANewChecker() {
    AtomicInteger asked = new AtomicInteger();
    FileCheck once =
        new FileCheck(
            settings(
                path -> asked.incrementAndGet() == 1 ? thrown(new OutOfMemoryError()) : fine()));
    assertThat(once.of(Path.of("a.xml")).check()).isPresent();
    FileCheck always = new FileCheck(settings(path -> thrown(new OutOfMemoryError())));
    assertThat(always.of(Path.of("a.xml")).problem()).contains("OutOfMemoryError");
  }

  @Test
  void orderIsKeptWhenFilesFailAndTheQueueIsBounded() {
    List<Path> files = IntStream.range(0, 300).mapToObj(i -> Path.of(i + ".xml")).toList();
    AtomicInteger finished = new AtomicInteger();
    List<Integer> ahead = new ArrayList<>();
    List<CheckedFile> results = new ArrayList<>();
    ParallelChecks.check(
        files,
        3,
        new FileCheck(
            settings(
                path ->
                    path.toString().startsWith("7") ? thrown(new StackOverflowError()) : fine())),
        finished::incrementAndGet,
        result -> {
          ahead.add(finished.get() - results.size());
          results.add(result);
        });
    assertThat(results).extracting(CheckedFile::file).isEqualTo(files);
    assertThat(results)
        .allMatch(one -> one.check().isPresent() != one.file().toString().startsWith("7"));
    assertThat(ahead).allMatch(waiting -> waiting <= 3 * ParallelChecks.AHEAD);
  }
}
