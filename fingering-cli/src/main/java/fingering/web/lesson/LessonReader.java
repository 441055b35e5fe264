package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import fingering.web.folder.FileStamp;
import fingering.web.folder.ScoreName;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads lessons with their scores, and reads again what has changed on disk. */
final class LessonReader {
  private final Adviser adviser;
  private final LessonKeeper keeper;
  private final HistoryKeeper histories;

  LessonReader(Adviser adviser, LessonKeeper keeper, HistoryKeeper histories) {
    this.adviser = adviser;
    this.keeper = keeper;
    this.histories = histories;
  }

  /**
   * Reads a score or lesson.
   *
   * @param id the id that it gets
   * @param name the name that messages give the file
   * @param dropped whether the file is only lent, and must be copied before it is used in a lesson
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  OpenLesson open(String id, Path file, String name, boolean dropped) {
    try {
      StoredLesson lesson = lesson(file, dropped);
      FileStamp stamp = FileStamp.of(lesson.scoreFile());
      ScoreFile read = adviser.read(lesson);
      Score score = ScoreReader.read(read);
      StoredLesson known = withPart(lesson, score);
      return new OpenLesson(
          id,
          0,
          name.substring(1 + Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'))),
          dropped ? Optional.of(file) : Optional.empty(),
          stamp,
          read,
          score,
          known,
          known.text().isEmpty() ? History.NONE : histories.read(known),
          Optional.empty());
    } catch (FingeringException e) {
      throw new FingeringException(
          String.valueOf(e.getMessage()).replace(file.toString(), name), e);
    }
  }

  private StoredLesson lesson(Path file, boolean dropped) {
    String name = String.valueOf(file.getFileName());
    return switch (ScoreName.of(name)) {
      case LESSON -> StoredLesson.read(file);
      // Whatever its name, the content may be a score.
      case SCORE, OTHER ->
          dropped
              ? keeper.of(file)
              : new StoredLesson(file.resolveSibling(name + ".yaml"), Lesson.of(name), "");
      case PDF, PICTURE, SOUND, NOTATION ->
          throw new FingeringException(ScoreName.of(name).advice());
    };
  }

  /** The first part for strings, if the lesson names none. */
  private static StoredLesson withPart(StoredLesson stored, Score score) {
    Lesson lesson = stored.lesson();
    Optional<String> part =
        lesson
            .part()
            .map(score::part)
            .or(
                () ->
                    score.parts().stream()
                        .filter(info -> info.isString() && score.hasNotes(info))
                        .findFirst())
            .or(
                () ->
                    score.parts().stream()
                        .filter(info -> info.instrument().isPresent() && score.hasNotes(info))
                        .findFirst())
            .or(() -> score.parts().stream().filter(score::hasNotes).findFirst())
            .or(() -> score.parts().stream().findFirst())
            .map(PartInfo::number)
            .map(String::valueOf);
    return new StoredLesson(stored.file(), lesson.withPart(part), stored.text());
  }

  /**
   * An open lesson as it is now on disk, where what is newer wins, and a sentence about what has
   * changed.
   *
   * @throws FingeringException if it cannot be read any more; the message is one sentence
   */
  OpenLessons.State fresh(OpenLesson known) {
    OpenLesson now = known;
    String remark = "";
    if (now.saved() && Files.exists(now.stored().file())) {
      String text = SmallFile.text(now.stored().file(), now.name());
      if (!text.equals(now.stored().text())) {
        StoredLesson read = StoredLesson.read(now.stored().file());
        boolean other = !read.lesson().score().equals(now.lesson().score());
        now =
            now.changed(
                other ? read : withPart(read, now.score()),
                now.history().after(now.lesson()),
                now.planned());
        remark = text("open.edited", now.name());
      }
    }
    FileStamp stamp = FileStamp.of(now.stored().scoreFile());
    if (!stamp.equals(now.stamp())) {
      ScoreFile file = adviser.read(now.stored());
      now = now.reread(stamp, file, ScoreReader.read(file));
      remark = remark.isEmpty() ? text("open.score-edited") : remark;
    }
    return new OpenLessons.State(now, remark);
  }
}
