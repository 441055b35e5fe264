package fingering.page;

import static fingering.page.view.PageText.text;

import fingering.fingerboard.Placement;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.svg.Svg;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A picture of the fingerboard with the places that a plan uses, larger where it uses them more
 * often. The nut is at the left.
 */
final class FingerboardPicture {
  private static final int WIDTH = 320;
  private static final double LEFT = 40;
  private static final double RIGHT = 306;
  private static final double TOP = 34;
  private static final double STRING = 22;
  private static final double LARGEST = 9;
  private static final double LEAST = 3;
  private static final double FIGURE_FROM = 6;

  private record Place(int string, double millimetres) implements Comparable<Place> {
    @Override
    public int compareTo(Place other) {
      int byString = Integer.compare(string, other.string);
      return byString != 0 ? byString : Double.compare(millimetres, other.millimetres);
    }
  }

  private final Plan plan;
  private final String name;
  private final Instrument instrument;
  private final double furthest;

  /**
   * Creates a picture of one plan.
   *
   * @param name the name of the plan; empty if it is the only one
   * @param furthest millimetres from the nut that the picture must show
   */
  FingerboardPicture(Plan plan, String name, double furthest) {
    this.plan = plan;
    this.name = name;
    this.furthest = furthest;
    instrument = plan.passage().instrument();
  }

  /** The place furthest from the nut that a plan uses, in millimetres. */
  static double furthest(Plan plan) {
    return plan.notes().stream()
        .mapToDouble(note -> note.placement().millimetres())
        .max()
        .orElse(0);
  }

  private double x(double millimetres) {
    return LEFT + (RIGHT - LEFT) * Math.max(0, millimetres) / Math.max(1, furthest * 1.06);
  }

  String svg() {
    Map<Place, Integer> uses = new TreeMap<>();
    for (PlannedNote note : plan.notes()) {
      Placement placement = note.placement();
      uses.merge(new Place(placement.string(), placement.millimetres()), 1, Integer::sum);
    }
    int most = uses.values().stream().max(Integer::compare).orElse(1);
    int strings = instrument.strings().size();
    double bottom = TOP + STRING * (strings - 1);
    Svg svg = new Svg();
    if (!name.isEmpty()) {
      svg.text("head", 0, 11, name);
    }
    positions(svg, bottom);
    svg.rect("wood", LEFT, TOP - 10, RIGHT - LEFT, bottom - TOP + 20);
    svg.line("nut", LEFT, TOP - 10, LEFT, bottom + 10);
    for (OpenString string : instrument.strings()) {
      double y = y(string.number());
      svg.line("gut", LEFT, y, RIGHT, y);
      svg.text("axis", 14, y + 3.5, string.letterName());
    }
    List<String> words = new ArrayList<>();
    double free = 0;
    int before = 0;
    for (Map.Entry<Place, Integer> use : uses.entrySet()) {
      Place place = use.getKey();
      double radius = LEAST + (LARGEST - LEAST) * Math.sqrt((double) use.getValue() / most);
      boolean open = place.millimetres() <= 0;
      double x = open ? LEFT - 12 : x(place.millimetres());
      double y = y(place.string());
      svg.circle(open ? "open" : "place", x, y, radius);
      free = before == place.string() ? free : 0;
      if (radius >= FIGURE_FROM && x - 7 > free) {
        svg.text(open ? "times" : "times on", x, y + 3.2, Integer.toString(use.getValue()));
        free = x + 7;
      }
      before = place.string();
      words.add(
          text(
              "board.place",
              instrument.string(place.string()).letterName(),
              Math.round(place.millimetres()),
              use.getValue()));
    }
    int height = (int) bottom + 32;
    return svg.picture(
        "graph", WIDTH, height, text("board.title", plan.name()), String.join(" ", words));
  }

  private static double y(int string) {
    return TOP + STRING * (string - 1);
  }

  /** Labels the positions in use below the board, each at the place of its first finger. */
  private void positions(Svg svg, double bottom) {
    TreeMap<Double, String> frames = new TreeMap<>();
    for (PlannedNote note : plan.notes()) {
      if (note.placement().stopped()) {
        double place = note.placement().frame().share() * instrument.stringLength();
        frames.putIfAbsent(place, note.placement().frame().position().display());
      }
    }
    double free = 0;
    for (Map.Entry<Double, String> frame : frames.entrySet()) {
      double x = x(frame.getKey());
      if (x - 16 > free) {
        svg.line("grid", x, bottom + 10, x, bottom + 15);
        svg.text("number", Math.min(RIGHT - 16, x), bottom + 26, frame.getValue());
        free = x + 18;
      }
    }
  }
}
