package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.music.Measure;
import fingering.music.print.PrintedPart;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import java.util.Optional;

/**
 * The content of a page of plans.
 *
 * @param title the title, not empty
 * @param verdict the answer: which plan to take, and why; a sentence each
 * @param about what the plans are made for: instrument, measures, preset, assumptions; at least one
 *     line
 * @param comparison the plans, one or several
 * @param main the plan to take, whose fingers stand above the staff
 * @param rival the plan that it is compared with, whose fingers stand below the staff where it
 *     differs; empty if there is none
 * @param decisive the measures in which the plan to take differs from the rival
 * @param printed what is printed in the part
 * @param remarks remarks on the plans, a sentence each; may be empty
 * @param notes further remarks by heading, for example what is new to a player
 * @param demands a line for each demand, by the name of its plan; may be empty
 * @param tempi the comfortable tempo of each plan
 * @param limits the measures that limit the tempo, a line for each plan that has any
 * @param care the warning about strain
 */
public record PageContent(
    String title,
    ImmutableList<String> verdict,
    ImmutableList<String> about,
    Comparison comparison,
    Plan main,
    Optional<Plan> rival,
    ImmutableList<Measure> decisive,
    PrintedPart printed,
    ImmutableList<String> remarks,
    ImmutableListMultimap<String, String> notes,
    ImmutableListMultimap<String, String> demands,
    ImmutableList<String> tempi,
    ImmutableList<String> limits,
    String care) {

  /** The same content with other lines on what the plans are made for. */
  public PageContent withAbout(ImmutableList<String> newAbout) {
    return new PageContent(
        title,
        verdict,
        newAbout,
        comparison,
        main,
        rival,
        decisive,
        printed,
        remarks,
        notes,
        demands,
        tempi,
        limits,
        care);
  }
}
