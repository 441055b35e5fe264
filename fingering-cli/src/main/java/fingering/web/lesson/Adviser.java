package fingering.web.lesson;

import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.web.audition.SheetAdviser;

/** Reads scores and makes plans, as the commands do. */
public interface Adviser {

  /**
   * Reads the score of a lesson.
   *
   * @throws FingeringException if it cannot be read
   */
  ScoreFile read(StoredLesson lesson);

  /**
   * Compares plans of a passage, and prepares for more.
   *
   * @param file the score as read
   * @param score the same score, parsed
   * @param lesson part, measures, tempo and student
   * @param cancellation whether nobody waits for the plans any more
   * @throws FingeringException if the lesson does not fit the score
   */
  Advice advise(ScoreFile file, Score score, StoredLesson lesson, Cancellation cancellation);

  /** Plans audition sheets and scales. */
  SheetAdviser sheets();
}
