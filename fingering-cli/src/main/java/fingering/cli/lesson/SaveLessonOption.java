package fingering.cli.lesson;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.WrittenFiles;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.files.FileProblem;
import fingering.lesson.Hearing;
import fingering.lesson.Lesson;
import fingering.lesson.LessonLadder;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonStore;
import fingering.lesson.LessonStore.Saved;
import fingering.lesson.StoredLesson;
import fingering.musicxml.UnwritableScoreException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/** Saves what was typed as a lesson. */
public final class SaveLessonOption {
  /** Typed options that a lesson does not hold, and that would change its plans. */
  private static final ImmutableList<String> LEFT_OUT =
      ImmutableList.of(
          "--tuning",
          "--size",
          "--hand",
          "--four-fingers",
          "--low-thumb",
          "--preset",
          "--weights",
          "--level",
          "--ignore-words",
          "--keep-printed",
          "--brief",
          "--briefs");

  @Option(
      names = "--save-lesson",
      paramLabel = "FILE",
      description =
          "Save what was typed as a lesson. A lesson of that name is replaced; with --lesson, it is changed. What it said before the first change of the day is kept beside it.")
  Optional<Path> file = Optional.empty();

  private final Clock clock = Clock.system(ZoneId.systemDefault());

  /** Whether a lesson is to be saved. */
  public boolean given() {
    return file.isPresent();
  }

  /** The file of the lesson to save. */
  public Optional<Path> file() {
    return file;
  }

  /**
   * Checks, before any work is done, that the lesson can be saved.
   *
   * @throws fingering.tables.FingeringException if the file is not a lesson, or its folder does not
   *     exist
   */
  public void check() {
    file.ifPresent(
        target -> {
          Path folder = target.toAbsolutePath().getParent();
          if (folder != null && !Files.isDirectory(folder)) {
            throw new UnwritableScoreException(FileProblem.noFolder(target, folder));
          }
          LessonStore.check(target);
        });
  }

  /**
   * The lesson with what is typed: the music and the student.
   *
   * @param base the lesson to start from; empty for a new one
   */
  public Lesson typed(
      Optional<StoredLesson> base,
      ScoreArgument score,
      ScoreOptions reading,
      PlayerOptions player) {
    Path target = file.orElseThrow();
    Lesson start = base.map(lesson -> moved(lesson, target)).orElseGet(() -> Lesson.of("score"));
    return player.addTo(reading.addTo(score.addTo(start, target)), target);
  }

  /** The files that a lesson names, as named from the folder of another one. */
  private static Lesson moved(StoredLesson lesson, Path target) {
    return lesson
        .lesson()
        .withPlans(
            LessonPlans.allHere(lesson).stream()
                .map(plan -> LessonPlans.there(target, plan))
                .collect(ImmutableList.toImmutableList()))
        .withJournal(lesson.journalFile().map(path -> StoredLesson.nameBeside(target, path)));
  }

  /** A lesson with the hearing, the ladder and the journal that are typed. */
  public Lesson with(Lesson lesson, Hearing hearing, LessonLadder ladder, Optional<Path> journal) {
    return lesson
        .withHearing(Optional.of(hearing))
        .withLadder(ladder)
        .withJournal(
            journal
                .map(path -> StoredLesson.nameBeside(file.orElseThrow(), path))
                .or(lesson::journal));
  }

  /** A lesson in which these plans come first. */
  public Lesson choosing(Lesson lesson, List<LessonPlan> plans) {
    Lesson chosen = lesson;
    for (LessonPlan plan : ImmutableList.copyOf(plans).reverse()) {
      chosen = chosen.choosing(LessonPlans.there(file.orElseThrow(), plan));
    }
    return chosen;
  }

  /** Saves a lesson, and says on the error stream what was written and what was left out. */
  public void save(Lesson lesson, Optional<StoredLesson> base, CommandSpec command) {
    Path target = file.orElseThrow();
    Saved saved =
        LessonStore.save(
            target,
            lesson,
            base.filter(before -> same(before.file(), target)),
            LocalDate.now(clock));
    WrittenFiles.report(command, target);
    saved.copy().ifPresent(copy -> WrittenFiles.report(command, copy));
    if (!saved.lostRemarks().isEmpty()) {
      note(
          command, "These remarks are no longer in it: " + String.join(" / ", saved.lostRemarks()));
    }
    List<String> leftOut =
        command.commandLine().getParseResult().matchedOptions().stream()
            .map(OptionSpec::longestName)
            .filter(LEFT_OUT::contains)
            .distinct()
            .toList();
    if (!leftOut.isEmpty()) {
      note(
          command,
          "A lesson does not hold "
              + String.join(", ", leftOut)
              + ": type it again next time, or write what belongs to the student into the player file.");
    }
  }

  private static boolean same(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private static void note(CommandSpec command, String sentence) {
    command.commandLine().getErr().println("Note: " + sentence);
  }
}
