package fingering.cli.option;

import com.google.common.collect.ImmutableList;
import fingering.cli.student.Student;
import fingering.cli.student.Students;
import fingering.fingerboard.LeftHand;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.SelectionException;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The player: the hand, the weights of the rules, and the player files of students. */
public final class PlayerOptions {
  @Mixin HandOptions hand = new HandOptions();

  public @Mixin WeightsOptions weights = new WeightsOptions();

  @Option(
      names = "--player",
      paramLabel = "FILE",
      description =
          "A player file: what the student has learned, with preset, hand and instrument. Options on the command line override it. Repeat for a section that shares one plan.")
  List<Path> files = List.of();

  /** Takes the student of a lesson, unless a player file is typed. */
  public void from(StoredLesson lesson) {
    from(lesson::studentFile);
  }

  /** Takes a player file, unless one is typed. */
  public void from(Supplier<Optional<Path>> student) {
    if (files.isEmpty()) {
      files = student.get().stream().toList();
    }
  }

  /**
   * Adds the student to a lesson.
   *
   * @param target the file of the lesson
   * @throws SelectionException if there are several
   */
  public Lesson addTo(Lesson lesson, Path target) {
    if (files.size() > 1) {
      throw new SelectionException(
          "A lesson has one student, and %d player files are given: save one lesson for each."
              .formatted(files.size()));
    }
    return lesson.withStudent(
        files.stream().findFirst().map(player -> StoredLesson.studentName(target, player)));
  }

  /** Reads the player files. */
  public Students students() {
    return new Students(files.stream().map(Student::read).collect(ImmutableList.toImmutableList()));
  }

  /** The hand of the options, else the smallest hand among the students. */
  public LeftHand hand(Students students, Instrument instrument, InstrumentOptions build) {
    return hand.hand(students.smallestHand(instrument, build.hasSize()));
  }
}
