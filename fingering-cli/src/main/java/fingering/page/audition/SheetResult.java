package fingering.page.audition;

import com.google.common.collect.ImmutableList;
import fingering.page.AuditionContent;
import fingering.sheet.SheetContent;
import fingering.verdict.PlanFigures;
import java.util.Optional;

/**
 * An audition sheet with its plans.
 *
 * @param content what the page of the command shows
 * @param asked what is required, and where it is shown
 * @param planned the number of each piece of the content in the sheet, from 1
 * @param problems the pieces that cannot be planned
 */
public record SheetResult(
    AuditionContent content,
    ImmutableList<Asked> asked,
    ImmutableList<Integer> planned,
    ImmutableList<Problem> problems) {

  /**
   * A required skill.
   *
   * @param what a skill with its amount: 3rd position in 8 stopped notes
   * @param met whether the plans show it
   * @param easiest whether the easiest fingerings show it too
   * @param shown the pieces that show it
   * @param offers the pieces that can show it alone, the easiest first; empty if the easiest
   *     fingerings show it
   * @param advice a scale that would show it; empty if it is shown, or none is known
   */
  public record Asked(
      String what,
      boolean met,
      boolean easiest,
      ImmutableList<Shown> shown,
      ImmutableList<Offer> offers,
      Optional<Advice> advice) {

    /** A copy with a scale that would show it. */
    public Asked with(Advice scale) {
      return new Asked(what, met, easiest, shown, offers, Optional.of(scale));
    }
  }

  /**
   * A piece that shows a skill.
   *
   * @param number its number in the sheet
   * @param name its name
   * @param amount how much of the skill
   * @param measures in which measures
   */
  public record Shown(int number, String name, String amount, String measures) {}

  /**
   * A piece that can show a skill alone.
   *
   * @param number its number in the sheet
   * @param name its name
   * @param measures in which measures
   * @param more how much harder it then is than its easiest fingering
   */
  public record Offer(int number, String name, String measures, PlanFigures more) {}

  /**
   * A scale that would show a skill.
   *
   * @param name its name
   * @param position the position in which all of it is played: 3rd
   * @param scale the scale
   */
  public record Advice(String name, String position, SheetContent.Piece scale) {}

  /**
   * A piece that cannot be planned.
   *
   * @param number its number in the sheet
   * @param sentence why
   */
  public record Problem(int number, String sentence) {}
}
