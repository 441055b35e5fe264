package fingering.check;

import fingering.musicxml.file.MeasureLines;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.ScoreReader;
import fingering.playability.CheckRequest;
import fingering.playability.ScoreCheck;
import fingering.playability.check.Checker;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Checks one file after another. Whatever happens becomes a sentence on that file, so that one
 * never stops the others. All threads check with one checker, which is made here and nowhere else,
 * so that what one has found serves the others.
 */
public final class FileCheck {
  private static final String NO_STRING_PART =
      "no part shows that it is for violin, viola, cello or bass, so nothing was checked: name one"
          + " with --part and its instrument with --instrument.";

  /**
   * How files are checked.
   *
   * @param checkers makes a checker
   * @param reading reads a file
   * @param request what to check of it
   * @param lines whether the lines of its measures are wanted
   * @param sentences what to say of a failure, one sentence
   */
  public record Manner(
      Supplier<Checker> checkers,
      Function<Path, ScoreFile> reading,
      CheckRequest request,
      boolean lines,
      Function<Throwable, String> sentences) {}

  private final Manner manner;
  private final AtomicReference<Checker> checker;

  /** A check in this manner. */
  public FileCheck(Manner manner) {
    this.manner = manner;
    checker = new AtomicReference<>(manner.checkers().get());
  }

  /** Checks a file. */
  public CheckedFile of(Path file) {
    Checker known = checker.get();
    try {
      return checked(file);
    } catch (OutOfMemoryError e) {
      // What earlier scores left behind makes room, unless another thread has made it already.
      checker.compareAndSet(known, manner.checkers().get());
      return again(file);
    } catch (Throwable e) {
      return CheckedFile.refused(file, manner.sentences().apply(e));
    }
  }

  private CheckedFile again(Path file) {
    try {
      return checked(file);
    } catch (Throwable e) {
      return CheckedFile.refused(file, manner.sentences().apply(e));
    }
  }

  private CheckedFile checked(Path file) {
    ScoreFile score = manner.reading().apply(file);
    ScoreCheck check = checker.get().check(ScoreReader.read(score), manner.request());
    if (check.parts().isEmpty()) {
      return CheckedFile.refused(file, NO_STRING_PART);
    }
    return CheckedFile.of(
        file,
        check,
        manner.lines() && score.asOnDisk()
            ? Optional.of(MeasureLines.of(score.text()))
            : Optional.empty());
  }
}
