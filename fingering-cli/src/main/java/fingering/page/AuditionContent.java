package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedPart;
import fingering.page.view.SkillTable;
import fingering.plan.Comparison;

/**
 * The content of the page of an audition.
 *
 * @param title the title, not empty
 * @param answer the verdict, a sentence each
 * @param about what the plans are made for
 * @param asked what is required
 * @param pieces the pieces
 * @param problems why the other pieces cannot be planned; may be empty
 * @param care the warnings about tempo and strain
 */
public record AuditionContent(
    String title,
    ImmutableList<String> answer,
    ImmutableList<String> about,
    SkillTable asked,
    ImmutableList<Piece> pieces,
    ImmutableList<String> problems,
    String care) {

  /**
   * A piece.
   *
   * @param title its number and name
   * @param lines its positions, and remarks on it
   * @param plan its plan
   * @param printed what is printed in it
   */
  public record Piece(
      String title, ImmutableList<String> lines, Comparison plan, PrintedPart printed) {}
}
