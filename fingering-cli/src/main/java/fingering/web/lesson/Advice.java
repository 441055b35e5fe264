package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonPlanner;
import fingering.lesson.StoredLesson;
import fingering.page.PageContent;
import fingering.page.view.HandoutContent;
import fingering.plan.Plan;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;

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

  /** A plan in one line: where the hand is, what it asks of hand and bow, and its tempo. */
  String line(Plan plan);

  /**
   * What the student takes home.
   *
   * @param lesson the lesson, whose hearing and journal may have changed meanwhile
   * @param plan a plan of the lesson
   */
  HandoutContent handout(StoredLesson lesson, Plan plan);

  /** What to know about a plan, such as what is new to the student; a sentence each. */
  ImmutableList<String> remarks(Plan plan);
}
