package fingering.page;

import fingering.fingerboard.Frame;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.svg.Svg;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.OpenString;
import fingering.tables.RomanNumeral;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The hand over time, in panels of a few measures that wrap. Each plan has a step line for the
 * place of the first finger at rest, and its strings below. At the bottom are the costs of each
 * measure.
 */
final class HandGraph {
  private static final int WIDTH = 320;
  private static final double LEFT = 66;
  private static final double RIGHT = 314;
  private static final int MEASURES = 8;
  private static final double TITLE = 16;
  private static final double COST_TITLE = 24;
  private static final double HAND = 66;
  private static final double STRING = 11;
  private static final double FOOT = 17;
  private static final double COST = 36;
  private static final double LABEL = 11;

  private final Comparison comparison;
  private final Passage passage;
  private final List<BitSet> shown = new ArrayList<>();
  private final double furthest;
  private final long highestCost;
  private final List<Map<Integer, Long>> costs;

  HandGraph(Comparison comparison) {
    this.comparison = comparison;
    passage = comparison.passage();
    comparison.plans().forEach(plan -> shown.add(ShownMoments.of(plan)));
    furthest =
        comparison.plans().stream()
            .flatMap(plan -> plan.grips().stream())
            .mapToDouble(grip -> millimetres(grip.frame()))
            .max()
            .orElse(1);
    costs = comparison.plans().stream().map(CostTables::byMeasure).toList();
    highestCost =
        Math.max(
            1, costs.stream().flatMap(all -> all.values().stream()).max(Long::compare).orElse(1L));
  }

  private double millimetres(Frame frame) {
    return frame.share() * passage.instrument().stringLength();
  }

  /** Whether any plan has moments to shade, at which it shows a required skill. */
  boolean shades() {
    return shown.stream().anyMatch(moments -> !moments.isEmpty());
  }

  private double lane() {
    return TITLE + HAND + STRING * passage.instrument().strings().size() + FOOT;
  }

  private int height() {
    return (int) Math.ceil(lane() * comparison.plans().size() + COST_TITLE + COST + 18);
  }

  /** All panels as HTML. */
  String html() {
    StringBuilder html = new StringBuilder("<div class=\"panels\">\n");
    List<Measure> measures = passage.measures();
    int panels = (measures.size() + MEASURES - 1) / MEASURES;
    int each = (measures.size() + panels - 1) / panels;
    for (int from = 0; from < measures.size(); from += each) {
      html.append(panel(measures.subList(from, Math.min(measures.size(), from + each))));
    }
    return html.append("</div>\n").toString();
  }

  private String panel(List<Measure> measures) {
    PanelTime time = new PanelTime(passage, measures, LEFT, RIGHT);
    Svg svg = new Svg();
    double y = 0;
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < comparison.plans().size(); i++) {
      words.append(lane(svg, i, time, y)).append(' ');
      y += lane();
    }
    cost(svg, time, y);
    String from = measures.get(0).number();
    String to = measures.get(measures.size() - 1).number();
    return """
        <svg class="graph" role="img" viewBox="0 0 %d %d" width="%d" height="%d"><title>The hand in measures %s to %s</title><desc>%s</desc>%s</svg>
        """
        .formatted(
            WIDTH,
            height(),
            WIDTH,
            height(),
            Svg.escaped(from),
            Svg.escaped(to),
            Svg.escaped(words.toString().strip()),
            svg);
  }

  private String lane(Svg svg, int index, PanelTime time, double top) {
    Plan plan = comparison.plans().get(index);
    double base = top + TITLE + HAND;
    String name = plan.name().length() > 30 ? plan.name().substring(0, 29) + "…" : plan.name();
    svg.text("head", 0, top + 11, Lanes.name(index, name));
    for (Measure measure : time.measures()) {
      double x = time.x(measure, 0);
      svg.line("grid", x, top + TITLE, x, base + STRING * passage.instrument().strings().size());
    }
    shade(svg, shown.get(index), time, top);
    Map<Double, String> places = new TreeMap<>();
    Map<Double, Integer> times = new TreeMap<>();
    StringBuilder path = new StringBuilder();
    List<Double> turns = new ArrayList<>();
    double before = Double.NaN;
    for (int i = 0; i < time.moments(); i++) {
      Frame frame = plan.grips().get(time.first() + i).frame();
      double place = millimetres(frame);
      places.putIfAbsent(place, frame.position().display());
      times.merge(place, 1, Integer::sum);
      double x = time.start(i);
      double y = hand(base, place);
      if (path.length() == 0) {
        path.append('M').append(Svg.point(x, y));
      } else if (place != before) {
        path.append('H').append(Svg.number(x)).append('V').append(Svg.number(y));
      }
      if (place != before && i > 0) {
        turns.add(x);
        svg.use(place > before ? "g-shift-u" : "g-shift-d", x + 5, top + TITLE + 4);
      }
      before = place;
    }
    if (path.length() > 0) {
      svg.path("hand", path + "H" + Svg.number(time.end()));
    }
    labels(svg, places, times, base);
    return strings(svg, plan, time, base + 4)
        + " %s: %d shifts, %s."
            .formatted(Lanes.key(index), turns.size(), String.join(", ", places.values()));
  }

  /** Shades the runs of moments at which the plan shows a required skill. */
  private static void shade(Svg svg, BitSet moments, PanelTime time, double top) {
    for (int i = 0; i < time.moments(); i++) {
      int last = i;
      while (last < time.moments() && moments.get(time.first() + last)) {
        last++;
      }
      if (last > i) {
        double from = time.start(i);
        svg.rect("shade", from, top + TITLE, time.end(last - 1) - from, HAND);
        i = last;
      }
    }
  }

  private double hand(double base, double place) {
    return base - 6 - (HAND - 16) * place / furthest;
  }

  /** Labels the positions at the left: the most used first, as many as fit. */
  private void labels(
      Svg svg, Map<Double, String> places, Map<Double, Integer> times, double base) {
    List<Double> labelled = new ArrayList<>();
    List<Double> byUse = new ArrayList<>(places.keySet());
    byUse.sort((a, b) -> Integer.compare(times.get(b), times.get(a)));
    for (double place : byUse) {
      double y = hand(base, place);
      svg.line("grid", LEFT, y, RIGHT, y);
    }
    for (double place : byUse) {
      double y = hand(base, place);
      if (labelled.stream().allMatch(other -> Math.abs(other - y) >= LABEL)) {
        svg.text("axis", LEFT - 4, y + 3.5, places.get(place) + " " + Math.round(place));
        labelled.add(y);
      }
    }
  }

  private String strings(Svg svg, Plan plan, PanelTime time, double top) {
    for (OpenString string : passage.instrument().strings()) {
      svg.text("axis", LEFT - 4, row(top, string.number()) + 3.5, RomanNumeral.of(string.number()));
    }
    int crossings = 0;
    double beforeRow = Double.NaN;
    Map<Integer, StringBuilder> bars = new TreeMap<>();
    StringBuilder lines = new StringBuilder();
    Bar bar = new Bar(0, 0, 0);
    for (PlannedNote note : plan.notes()) {
      int here = note.moment() - time.first();
      if (here < 0 || here >= time.moments()) {
        continue;
      }
      double x1 = time.start(here);
      double x2 = time.end(here);
      int string = note.placement().string();
      double y = row(top, string);
      if (bar.joins(string, x1, x2)) {
        bar = new Bar(string, bar.from(), x2);
      } else {
        bar.add(bars, top);
        bar = new Bar(string, x1, x2);
      }
      if (note.crossing() > 0 && !Double.isNaN(beforeRow)) {
        lines.append("M%sV%s".formatted(Svg.point(x1, beforeRow), Svg.number(y)));
        crossings++;
      }
      beforeRow = y;
    }
    bar.add(bars, top);
    bars.forEach((string, path) -> svg.path("string" + string, path.toString()));
    if (lines.length() > 0) {
      svg.path("cross", lines.toString());
    }
    return "%d string crossings;".formatted(crossings);
  }

  /** A note on its string, or several that are too short for visible gaps. */
  private record Bar(int string, double from, double to) {
    private static final double SHORT = 3;
    private static final double GAP = 0.8;

    boolean joins(int other, double x1, double x2) {
      return other == string && x2 - x1 < SHORT && x1 - to < GAP && to > from;
    }

    void add(Map<Integer, StringBuilder> bars, double top) {
      if (to > from) {
        String width = Svg.number(Math.max(1.5, to - from - GAP));
        bars.computeIfAbsent(Math.min(4, string), s -> new StringBuilder())
            .append("M%sh%sv6h-%sz".formatted(Svg.point(from, row(top, string) - 3), width, width));
      }
    }
  }

  private static double row(double top, int string) {
    return top + STRING * (string - 0.5);
  }

  private void cost(Svg svg, PanelTime time, double top) {
    double base = top + COST_TITLE + COST;
    svg.text("head", 0, top + 11, "Points by measure");
    svg.text("axis", LEFT - 4, top + COST_TITLE + 4, Long.toString(highestCost));
    svg.text("axis", LEFT - 4, base, "0");
    svg.line("grid", LEFT, base, RIGHT, base);
    int plans = comparison.plans().size();
    List<StringBuilder> bars = new ArrayList<>();
    comparison.plans().forEach(plan -> bars.add(new StringBuilder()));
    for (Measure measure : time.measures()) {
      double left = time.x(measure, 0);
      double width = (time.x(measure, 1) - left - 5) / plans;
      for (int i = 0; i < plans; i++) {
        long cost = Math.max(0, costs.get(i).getOrDefault(measure.index(), 0L));
        if (cost > 0) {
          bars.get(i)
              .append('M')
              .append(Svg.point(left + 2 + width * i, base))
              .append('V')
              .append(Svg.number(base - COST * cost / highestCost))
              .append('h')
              .append(Svg.number(Math.max(1, width - 1)))
              .append('V')
              .append(Svg.number(base))
              .append('z');
        }
      }
      svg.text("number", left + 2 + width * plans / 2, base + 12, measure.number());
    }
    for (int i = 0; i < plans; i++) {
      if (bars.get(i).length() > 0) {
        svg.path("plan" + i % 3, bars.get(i).toString());
      }
    }
  }
}
