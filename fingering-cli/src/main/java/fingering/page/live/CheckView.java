package fingering.page.live;

import com.google.common.collect.ImmutableList;
import fingering.page.view.CheckedScore;
import fingering.page.view.Term;
import gg.jte.Content;

/**
 * The page that says what players cannot play in an open score.
 *
 * @param address its address
 * @param score the address of the score
 * @param players the levels of players to choose from
 * @param forces who plays each part
 */
public record CheckView(
    String address,
    String score,
    ImmutableList<StudentView.Choice> players,
    ImmutableList<StudentView.Choice> forces) {

  /**
   * What was found.
   *
   * @param verdict the answer in a sentence
   * @param score the checked parts
   * @param shapes the shapes of notation that the music uses, as SVG
   * @param terms what the words mean
   */
  public record Found(
      String verdict, CheckedScore score, Content shapes, ImmutableList<Term> terms) {}
}
