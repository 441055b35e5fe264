package fingering.web;

import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.page.PageContent;
import fingering.page.view.HandoutContent;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;

/** Reads scores and makes plans, as the commands do. */
public interface Adviser {

  /**
   * Reads the score of a lesson.
   *
   * @throws FingeringException if it cannot be read
   */
  ScoreFile read(StoredLesson lesson);

  /**
   * Compares plans of a passage.
   *
   * @param file the score as read
   * @param score the same score, parsed
   * @param lesson part, measures, tempo and student
   * @param cancellation whether nobody waits for the plans any more
   * @throws FingeringException if the lesson does not fit the score
   */
  PageContent compare(ScoreFile file, Score score, StoredLesson lesson, Cancellation cancellation);

  /**
   * What the student of a lesson takes home: the plan that the lesson chooses, or else the one to
   * take.
   *
   * @param plans the plans of the lesson
   * @throws FingeringException if the lesson does not fit the score
   */
  HandoutContent handout(ScoreFile file, Score score, StoredLesson lesson, PageContent plans);
}
