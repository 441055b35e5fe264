package fingering.page.student;

import fingering.page.live.BesideView;
import fingering.page.live.LiveFrame;
import fingering.page.live.StudentView;
import fingering.page.live.StudentsView;
import fingering.page.template.JtebesideGenerated;
import fingering.page.template.JtebesiderowsGenerated;
import fingering.page.template.JtestudentGenerated;
import fingering.page.template.JtestudentformGenerated;
import fingering.page.template.JtestudentsGenerated;
import fingering.page.view.Templates;
import fingering.player.Player;

/** The pages of students, and the pieces that replace parts of them. */
public final class StudentsPage {
  private StudentsPage() {}

  /** A student in a line: instrument, level and what is learned. */
  public static String about(Player player) {
    return StudentWords.about(player);
  }

  /** The list of students. */
  public static String list(LiveFrame frame, StudentsView view) {
    return Templates.filled(
        output -> JtestudentsGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The page of a student. */
  public static String page(LiveFrame frame, StudentView view) {
    return Templates.filled(
        output -> JtestudentGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The form of a student, which takes the place of the one that was sent. */
  public static String form(StudentView view) {
    return Templates.filled(
        output -> JtestudentformGenerated.render(output, Templates.PLAIN, view, true));
  }

  /** The page that shows one excerpt for several students. */
  public static String beside(LiveFrame frame, BesideView view) {
    return Templates.filled(
        output -> JtebesideGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The plans of the students that are ticked. */
  public static String rows(BesideView.Rows rows) {
    return Templates.filled(output -> JtebesiderowsGenerated.render(output, Templates.PLAIN, rows));
  }
}
