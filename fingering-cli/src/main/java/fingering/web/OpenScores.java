package fingering.web;

import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.FingeringException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The scores that are open, the ones used last. Thread-safe. */
final class OpenScores {
  /** More are forgotten, the one not used for longest first. */
  private static final int MOST = 20;

  private final Adviser adviser;
  private final Map<String, OpenScore> open = new LinkedHashMap<>(MOST, 0.75f, true);

  OpenScores(Adviser adviser) {
    this.adviser = adviser;
  }

  /**
   * Opens a score or lesson.
   *
   * @param id the id that it gets
   * @param name the name that messages give the file
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  OpenScore open(String id, Path file, String name) {
    try {
      StoredLesson lesson = lesson(file);
      ScoreFile read = adviser.read(lesson);
      Score score = ScoreReader.read(read);
      OpenScore opened =
          new OpenScore(
              id,
              0,
              name,
              read,
              score,
              withPart(lesson, score),
              Optional.empty(),
              Optional.empty());
      put(opened);
      return opened;
    } catch (FingeringException e) {
      throw new FingeringException(
          String.valueOf(e.getMessage()).replace(file.toString(), name), e);
    }
  }

  private static StoredLesson lesson(Path file) {
    String name = String.valueOf(file.getFileName());
    return switch (ScoreName.of(name)) {
      case LESSON -> StoredLesson.read(file);
      // Whatever its name, the content may be a score.
      case SCORE, OTHER ->
          new StoredLesson(file.resolveSibling(name + ".yaml"), Lesson.of(name), "");
      case PDF, PICTURE, SOUND, NOTATION -> throw new FingeringException(ScoreName.of(name).advice());
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

  synchronized Optional<OpenScore> get(String id) {
    return Optional.ofNullable(open.get(id));
  }

  /** Forgets a score whose file has changed; it is read again when it is asked for. */
  synchronized void forget(String id) {
    open.remove(id);
  }

  /**
   * Puts a new state in place of an older one.
   *
   * @return whether nobody else changed the score meanwhile
   */
  synchronized boolean replace(OpenScore before, OpenScore after) {
    OpenScore now = open.get(before.id());
    if (now == null || now.revision() != before.revision()) {
      return false;
    }
    put(after);
    return true;
  }

  private synchronized void put(OpenScore score) {
    open.put(score.id(), score);
    if (open.size() > MOST) {
      open.remove(open.keySet().iterator().next());
    }
  }
}
