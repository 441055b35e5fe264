package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.page.view.Templates;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanFigure;
import fingering.plan.PlannedNote;
import fingering.svg.Svg;
import fingering.tables.OpenString;
import fingering.tables.RomanNumeral;
import gg.jte.Content;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The hand over time where it moves, in panels of a few measures that wrap. Each plan has a step
 * line for the place of the first finger at rest, and its strings below.
 */
final class HandGraph {
  private static final int WIDTH = 320;
  private static final double LEFT = 66;
  private static final double RIGHT = 314;
  private static final int MEASURES = 8;
  private static final double TITLE = 16;
  private static final double HAND = 66;
  private static final double STRING = 11;
  private static final double FOOT = 17;
  private static final int LONGEST = 30;
  private static final int NUMBERS = 14;
  private static final double LABEL = 11;

  private final Passage passage;

  /** The plans in which the hand moves. */
  private final List<Plan> plans;

  private final boolean named;
  private final List<BitSet> shown = new ArrayList<>();
  private final double furthest;

  HandGraph(Comparison comparison) {
    passage = comparison.passage();
    plans = comparison.plans().stream().filter(plan -> plan.shifts() > 0).toList();
    named = comparison.plans().size() > 1;
    plans.forEach(plan -> shown.add(ShownMoments.of(plan)));
    furthest =
        plans.stream()
            .flatMap(plan -> plan.grips().stream())
            .mapToDouble(grip -> millimetres(grip.frame()))
            .max()
            .orElse(1);
  }

  private double millimetres(Frame frame) {
    return frame.share() * passage.instrument().stringLength();
  }

  /** Whether any plan has moments to shade, at which it shows a required skill. */
  boolean shades() {
    return shown.stream().anyMatch(moments -> !moments.isEmpty());
  }

  /** The height of the name of a plan, which is not drawn if it is the only one. */
  private double title() {
    return named ? TITLE : 0;
  }

  private double lane() {
    return title() + HAND + STRING * passage.instrument().strings().size() + FOOT;
  }

  private int height() {
    return (int) Math.ceil(lane() * plans.size()) + NUMBERS;
  }

  /** The panels; none if the hand never moves. */
  ImmutableList<Content> panels() {
    BitSet moving = moving();
    ImmutableList.Builder<Content> panels = ImmutableList.builder();
    for (int from = moving.nextSetBit(0); from >= 0; ) {
      int end = Math.min(moving.nextClearBit(from), from + MEASURES);
      panels.add(Templates.elements(panel(passage.measures().subList(from, end))));
      from = moving.nextSetBit(end);
    }
    return panels.build();
  }

  /** The measures in which the hand moves in any plan, and those from which it comes. */
  private BitSet moving() {
    int first = passage.measures().get(0).index();
    BitSet moving = new BitSet();
    for (Plan plan : plans) {
      for (PlannedNote note : plan.notes()) {
        if (note.shift() && note.moment() > 0) {
          int to = note.note().place().measureIndex() - first;
          int from = passage.moments().get(note.moment() - 1).place().measureIndex() - first;
          moving.set(Math.max(from, to - 1), to + 1);
        }
      }
    }
    return moving;
  }

  private String panel(List<Measure> measures) {
    PanelTime time = new PanelTime(passage, measures, LEFT, RIGHT);
    Svg svg = new Svg();
    double y = 0;
    List<String> words = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      words.add(lane(svg, i, time, y));
      y += lane();
    }
    for (Measure measure : measures) {
      svg.text("number", (time.x(measure, 0) + time.x(measure, 1)) / 2, y + 6, measure.number());
    }
    String from = measures.get(0).number();
    String to = measures.get(measures.size() - 1).number();
    return svg.picture(
        "graph", WIDTH, height(), text("hand.title", from, to), String.join(" ", words));
  }

  private String lane(Svg svg, int index, PanelTime time, double top) {
    Plan plan = plans.get(index);
    double hand = top + title();
    double base = hand + HAND;
    if (title() > 0) {
      svg.text("head", 0, top + 11, Ascii.truncate(plan.name(), LONGEST, "…"));
    }
    for (Measure measure : time.measures()) {
      double x = time.x(measure, 0);
      svg.line("grid", x, hand, x, base + STRING * passage.instrument().strings().size());
    }
    shade(svg, shown.get(index), time, hand);
    Map<Double, String> places = new TreeMap<>();
    Map<Double, Integer> times = new TreeMap<>();
    StringBuilder path = new StringBuilder();
    int turns = 0;
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
        turns++;
        svg.use(place > before ? "g-shift-u" : "g-shift-d", x + 5, hand + 4);
      }
      before = place;
    }
    if (path.length() > 0) {
      svg.path("hand", path + "H" + Svg.number(time.end()));
    }
    labels(svg, places, times, base);
    int crossings = strings(svg, plan, time, base + 4);
    return text(
        "hand.words",
        plan.name(),
        PlanFigure.CROSSINGS.counted(crossings),
        PlanFigure.SHIFTS.counted(turns),
        String.join(", ", places.values()));
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
        svg.rect("shade", from, top, time.end(last - 1) - from, HAND);
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

  private int strings(Svg svg, Plan plan, PanelTime time, double top) {
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
    return crossings;
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
}
