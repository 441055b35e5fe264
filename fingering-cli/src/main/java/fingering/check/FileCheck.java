package fingering.check;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.file.MeasureLines;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.ScoreReader;
import fingering.playability.CheckRequest;
import fingering.playability.ScoreCheck;
import fingering.playability.check.Checker;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Checks files. A failure becomes a sentence about that file, so one file never stops the others.
 * All threads share one checker, created only here, so each uses the results that another has
 * cached.
 */
public final class FileCheck {

  /**
   * The settings of a check.
   *
   * @param checkers creates checkers
   * @param reading reads a file
   * @param request what to check
   * @param lines whether to find the lines of the measures
   * @param sentences describes a failure in one sentence
   */
  public record Settings(
      Supplier<Checker> checkers,
      Function<Path, ScoreFile> reading,
      CheckRequest request,
      boolean lines,
      Function<Throwable, String> sentences) {}

  private final Settings settings;
  private final AtomicReference<Checker> checker;

  /** Creates a check. */
  public FileCheck(Settings settings) {
    this.settings = settings;
    checker = new AtomicReference<>(settings.checkers().get());
  }

  /** Checks a file. */
  public CheckedFile of(Path file) {
    Checker known = checker.get();
    try {
      return checked(file);
    } catch (OutOfMemoryError e) {
      // A new checker frees the caches of earlier scores, unless another thread has replaced it.
      checker.compareAndSet(known, settings.checkers().get());
      return again(file);
    } catch (Throwable e) {
      return CheckedFile.refused(file, settings.sentences().apply(e));
    }
  }

  private CheckedFile again(Path file) {
    try {
      return checked(file);
    } catch (Throwable e) {
      return CheckedFile.refused(file, settings.sentences().apply(e));
    }
  }

  /** Says why no part was checked: all string parts rest throughout, or there are none. */
  private static String nothingChecked(ImmutableList<PartInfo> parts) {
    String resting =
        parts.stream()
            .filter(PartInfo::isString)
            .map(PartInfo::name)
            .collect(Collectors.joining(", "));
    return resting.isEmpty()
        ? "no part is known to be for violin, viola, cello or bass, so nothing was checked; choose a part with --part, and give its instrument with --instrument: %s."
            .formatted(PartInfo.withReasons(parts))
        : "nothing was checked, because the string parts have no notes to finger: %s."
            .formatted(resting);
  }

  private CheckedFile checked(Path file) {
    ScoreFile score = settings.reading().apply(file);
    ScoreCheck check = checker.get().check(ScoreReader.read(score), settings.request());
    if (check.parts().isEmpty()) {
      return CheckedFile.refused(file, nothingChecked(check.leftOut()));
    }
    return CheckedFile.of(
        file,
        check,
        settings.lines() && score.asOnDisk()
            ? Optional.of(MeasureLines.of(score.text()))
            : Optional.empty());
  }
}
