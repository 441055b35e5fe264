package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonPlanner;
import fingering.lesson.StoredLesson;
import fingering.page.PageContent;
import fingering.page.live.PracticeNow;
import fingering.page.view.HandoutContent;
import fingering.page.view.Paper;
import fingering.plan.Plan;
import fingering.plan.marks.MarkedCopy;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import java.nio.file.Path;
import java.time.LocalDate;

/** What the program says about some music for a student. Immutable and thread-safe. */
public interface Advice {
  /** Makes the plans; keeps what it has computed. */
  LessonPlanner planner();

  /** The plans that a teacher compares anyway, and the verdict on them. */
  PageContent content();

  /**
   * A plan of the lesson.
   *
   * @param cancellation whether nobody waits for it any more
   * @throws fingering.plan.InfeasibleBriefException if no plan meets its demands
   * @throws FingeringException if a demand does not fit the music; the message is one sentence
   */
  Plan plan(LessonPlan wanted, Cancellation cancellation);

  /** A plan in one line: where the hand is, its shifts and the like, and its tempo. */
  String line(Plan plan);

  /** What to know about a plan, such as what is new to the student; a sentence each. */
  ImmutableList<String> remarks(Plan plan);

  /**
   * What to practise now.
   *
   * @param lesson the lesson with its hearing and its journal
   * @param today the day
   * @throws FingeringException if the journal cannot be read
   */
  PracticeNow practice(Plan plan, StoredLesson lesson, LocalDate today);

  /**
   * What the student takes home on paper.
   *
   * @param lesson the lesson with its hearing, its journal and its circles
   * @param today the day
   */
  HandoutContent handout(Plan plan, StoredLesson lesson, LocalDate today, Paper paper);

  /**
   * Writes a copy of the score with the fingers of a plan.
   *
   * @param target the file to write; a copy that the program wrote before, and nobody has changed
   *     since, is replaced
   * @return whether it was written: not if there is another file of that name
   * @throws FingeringException if the copy cannot be made or written
   */
  boolean write(Plan plan, MarkedCopy copy, Path target);
}
