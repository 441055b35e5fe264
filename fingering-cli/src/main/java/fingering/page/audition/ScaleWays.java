package fingering.page.audition;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.page.audition.ScaleResult.Way;
import fingering.page.live.ScalesView;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.plan.Plan;
import java.util.Optional;

/** The fingerings of a scale in words and music. */
public final class ScaleWays {
  private ScaleWays() {}

  /**
   * The fingerings.
   *
   * @param wanted the demand of the one to draw; the easiest is drawn if there is no such
   * @param student for whom they are made
   */
  public static ScalesView.Ways of(ScaleResult result, String wanted, String student) {
    Way shown = shown(result, wanted);
    Plan plan = shown.planned().plan();
    Lanes lanes = Lanes.of(plan);
    return new ScalesView.Ways(
        shown.planned().exercise().request().title(),
        student,
        result.ways().stream()
            .map(
                way ->
                    new ScalesView.Way(
                        way.demand(), name(way, result), about(way), way.equals(shown)))
            .collect(ImmutableList.toImmutableList()),
        shown.remarks(),
        new MusicPanel(
                plan.passage(),
                shown.planned().score().printed(plan.passage(), Optional.empty()),
                lanes)
            .html(),
        lanes.signs(),
        result.care());
  }

  /** The fingering with a demand; the easiest if there is none. */
  public static Way shown(ScaleResult result, String wanted) {
    return result.ways().stream()
        .filter(way -> way.demand().equals(wanted))
        .findFirst()
        .orElseGet(() -> result.ways().get(0));
  }

  /** What a fingering asks; without the position if its name says that. */
  private static String about(Way way) {
    return way.throughout()
        ? way.line().substring(way.line().indexOf(';') + 1).strip()
        : way.line();
  }

  private static String name(Way way, ScaleResult result) {
    String from = way.planned().exercise().from().display();
    if (way.position().isEmpty()) {
      return text("scale.easiest", from);
    }
    boolean easiest =
        way.planned().exercise().equals(result.ways().get(0).planned().exercise())
            && way.planned().plan().sameFingering(result.ways().get(0).planned().plan());
    String name =
        way.throughout()
            ? text("scale.throughout", way.position(), from)
            : text("scale.begins", way.position(), from);
    return easiest ? text("scale.same", name) : name;
  }
}
