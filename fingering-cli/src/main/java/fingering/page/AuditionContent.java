package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedPart;
import fingering.plan.Comparison;

/**
 * The content of the page of an audition.
 *
 * @param title the title, not empty
 * @param heading the verdict, and what the plans are made for
 * @param columns the column heads of the table of what is asked for
 * @param rows its rows; empty if nothing is asked for
 * @param pieces the pieces
 * @param problems why the other pieces cannot be planned; may be empty
 * @param care the warnings about tempo and strain
 */
public record AuditionContent(
    String title,
    ImmutableList<String> heading,
    ImmutableList<String> columns,
    ImmutableList<ImmutableList<String>> rows,
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
