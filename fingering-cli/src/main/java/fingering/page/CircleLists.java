package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.svg.Svg;
import fingering.practice.Circle;
import java.util.Optional;

/** Lists of what to circle in the part, with links to the music. */
final class CircleLists {
  private CircleLists() {}

  /**
   * A list for each kind, the most important first.
   *
   * @param linked whether the page contains the music, for links
   */
  static String html(ImmutableList<Circle> circles, boolean linked) {
    if (circles.isEmpty()) {
      return "<p>Only the notes are printed. Choose your own dynamics, and write them in.</p>\n";
    }
    StringBuilder html = new StringBuilder("<h3>Circle these before you play</h3>\n");
    Optional<Circle.Kind> kind = Optional.empty();
    for (Circle circle : circles) {
      if (kind.filter(circle.kind()::equals).isEmpty()) {
        html.append(kind.isEmpty() ? "" : "</ul>\n");
        html.append("<h4>").append(Svg.escaped(circle.kind().heading()));
        html.append("</h4>\n<ul class=\"circles\">");
        kind = Optional.of(circle.kind());
      }
      html.append("<li>").append(MeasureLinks.beat(circle.place(), linked)).append(": ");
      html.append(Svg.escaped(circle.text())).append("</li>");
    }
    return html.append("</ul>\n").toString();
  }
}
