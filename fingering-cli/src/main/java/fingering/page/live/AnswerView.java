package fingering.page.live;

import com.google.common.base.Joiner;
import com.google.common.collect.ImmutableList;

/**
 * The answer to a choice: the verdict, the plans, and the lines of music whose drawing has changed.
 *
 * @param address the address of the lesson on the server
 * @param revision counts the changes of the lesson
 * @param remark a sentence about the request itself; empty if there is none
 * @param title the title of the music
 * @param verdict which of the usual plans to take, and why; a sentence each
 * @param about what the plans are made for
 * @param fields what is chosen
 * @param plans the plans to switch between
 * @param shown the plan that is shown, in one line; empty if it is the one of the verdict
 * @param remarks what to know about that plan; a sentence each
 * @param demands the demands on it
 * @param slurs the bowings that differ from the printed ones
 * @param below the plans to choose from for below the staff
 * @param signs what the signs in the music mean
 * @param care the warning about strain
 * @param saved the name of the file of the lesson; empty before it is saved
 * @param undo whether there is something to undo
 * @param redo whether there is something to do again
 * @param changed the moments whose fingering differs from what the page showed before
 * @param locked the moments whose fingering is fixed
 * @param whole the ids of all lines, if the page shows other music or none; else empty
 * @param later whether there are more lines to show, which the page asks for later
 * @param lines the lines of music, as far as they have changed and are on the screen
 */
public record AnswerView(
    String address,
    int revision,
    String remark,
    String title,
    ImmutableList<String> verdict,
    ImmutableList<String> about,
    Fields fields,
    ImmutableList<PlanChoice> plans,
    String shown,
    ImmutableList<String> remarks,
    DemandsView demands,
    ImmutableList<SlurView.Chip> slurs,
    ImmutableList<PlanChoice> below,
    String signs,
    String care,
    String saved,
    boolean undo,
    boolean redo,
    ImmutableList<Integer> changed,
    ImmutableList<Integer> locked,
    ImmutableList<String> whole,
    boolean later,
    ImmutableList<MusicLine> lines) {

  /**
   * What is chosen in the fields of the page.
   *
   * @param part the value of the part
   * @param instrument the id of the instrument; empty for that of the part
   * @param student the value of the student
   * @param measures the measures; empty for all
   * @param tempo the tempo; empty for the printed one
   */
  public record Fields(
      String part, String instrument, String student, String measures, String tempo) {}

  /**
   * A plan to choose.
   *
   * @param value what is sent
   * @param name its name
   * @param chosen whether it is shown
   */
  public record PlanChoice(String value, String name, boolean chosen) {}

  /** The moments whose fingering has changed, separated by spaces. */
  public String changedMoments() {
    return Joiner.on(' ').join(changed);
  }

  /** The moments whose fingering is fixed, separated by spaces. */
  public String lockedMoments() {
    return Joiner.on(' ').join(locked);
  }
}
