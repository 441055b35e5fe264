package fingering.page.view;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Multimaps;
import fingering.practice.Circle;
import java.util.List;

/**
 * Things of one kind to circle in the part.
 *
 * @param heading the kind
 * @param lines the things in score order
 */
public record CircleGroup(String heading, ImmutableList<Line> lines) {

  /**
   * A thing to circle.
   *
   * @param place where it is
   * @param text what it is, and what to do about it
   */
  public record Line(PlaceLink place, String text) {}

  /**
   * The groups, the most important first.
   *
   * @param linked whether the page contains the music, for links
   */
  public static ImmutableList<CircleGroup> of(List<Circle> circles, boolean linked) {
    ImmutableList.Builder<CircleGroup> groups = ImmutableList.builder();
    Multimaps.asMap(Multimaps.index(circles, Circle::kind))
        .forEach(
            (kind, all) ->
                groups.add(
                    new CircleGroup(
                        kind.heading(),
                        all.stream()
                            .map(
                                circle ->
                                    new Line(PlaceLink.beat(circle.place(), linked), circle.text()))
                            .collect(ImmutableList.toImmutableList()))));
    return groups.build();
  }
}
