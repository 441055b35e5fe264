package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.page.view.PlaceLink;
import fingering.page.view.StrainLine;
import fingering.plan.Plan;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The measures in which a plan strains the hand: stretches and thumb position. */
final class Strain {
  private static final String STRETCH = "extension";
  private static final int MOST = 12;

  private Strain() {}

  /**
   * Lines for stretches and for thumb position; empty if the plan has neither.
   *
   * @param alone whether it is the only plan, which need not be named
   */
  static ImmutableList<StrainLine> of(Plan plan, boolean alone) {
    List<PlaceLink> stretches =
        measures(
            plan,
            m -> plan.chargesAt(m).stream().anyMatch(charge -> charge.rule().equals(STRETCH)));
    List<PlaceLink> thumb = measures(plan, m -> plan.grips().get(m).frame().thumb().isPresent());
    ImmutableList.Builder<StrainLine> lines = ImmutableList.builder();
    if (!stretches.isEmpty()) {
      lines.add(
          line(alone ? text("strain.stretch") : text("strain.stretch-of", plan.name()), stretches));
    }
    if (!thumb.isEmpty()) {
      lines.add(line(alone ? text("strain.thumb") : text("strain.thumb-of", plan.name()), thumb));
    }
    return lines.build();
  }

  private static StrainLine line(String text, List<PlaceLink> measures) {
    return new StrainLine(
        text,
        measures.stream().limit(MOST).collect(ImmutableList.toImmutableList()),
        Math.max(0, measures.size() - MOST));
  }

  private static List<PlaceLink> measures(Plan plan, IntPredicate strains) {
    return IntStream.range(0, plan.passage().moments().size())
        .filter(strains)
        .mapToObj(plan.passage().moments()::get)
        .map(Moment::place)
        .map(PlaceLink::measure)
        .distinct()
        .toList();
  }
}
