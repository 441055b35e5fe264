package fingering.page.music;

import com.google.common.base.Joiner;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.EngravedSystem;
import fingering.engraving.drawing.Lane;
import fingering.engraving.drawing.Lane.Mark;
import fingering.engraving.ink.Canvas;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.live.BesideView;
import fingering.page.view.Templates;
import fingering.svg.Svg;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A few measures on one staff, and under it a row of fingers for each of several plans. Notes that
 * all of them finger alike are printed in light type.
 */
public final class FingerRows {
  /** Pixels in a staff space. */
  private static final double SPACE = 8;

  private static final double NAME = 1.5;
  private static final double POSITION = 1.45;
  private static final double NUMERAL = 1.4;
  private static final double FINGER = 1.6;
  private static final double GAP = 0.7;

  /** More white above a bracket, so that it belongs to the fingers below it. */
  private static final double ABOVE = 0.6;

  private static final double HOOK = 0.6;
  private static final int LONGEST_NAME = 14;

  private final Passage passage;
  private final PrintedPart printed;
  private final ImmutableList<Lane> lanes;
  private final ImmutableSet<NoteAddress> differing;
  private final Map<NoteAddress, Integer> moments;

  /**
   * Rows for plans.
   *
   * @param lanes the fingers of each plan, with the name that begins its row
   * @param differing the notes that the plans finger differently
   */
  public FingerRows(
      Passage passage,
      PrintedPart printed,
      ImmutableList<Lane> lanes,
      ImmutableSet<NoteAddress> differing) {
    this.passage = passage;
    this.printed = printed;
    this.lanes = lanes;
    this.differing = differing;
    moments = MusicPanel.moments(passage);
  }

  /** The notes of one moment in a plan, from the lowest up, and where they stand. */
  private record Spot(double x, ImmutableList<Mark> marks, boolean differs) {
    Mark mark() {
      return marks.get(0);
    }
  }

  /**
   * Draws some measures.
   *
   * @param first the index of the first measure
   * @param last the index of the last one
   * @param width the width of a line with the names before it, in staff spaces
   */
  public ImmutableList<BesideView.Excerpt> of(int first, int last, double width) {
    MusicPanel panel =
        MusicPanel.excerpt(passage, printed, first, last, Lanes.NONE, ImmutableList.of());
    MusicWords words = new MusicWords(passage, printed, new Lanes(ImmutableList.of(), lanes));
    double before =
        lanes.stream().mapToDouble(lane -> TextWidth.of(name(lane), NAME)).max().orElse(0) + 1;
    ImmutableList.Builder<BesideView.Excerpt> excerpts = ImmutableList.builder();
    for (EngravedSystem line : panel.lines(width - before)) {
      StringBuilder rows = new StringBuilder();
      double bottom = line.bottom() + GAP;
      for (Lane lane : lanes) {
        bottom = row(lane, line, bottom, before, rows);
      }
      double top = MusicPanel.top(line);
      double wide = before + MusicPanel.right(line);
      excerpts.add(
          new BesideView.Excerpt(
              Joiner.on(' ')
                  .join(Canvas.n(-before), Canvas.n(top), Canvas.n(wide), Canvas.n(bottom - top)),
              Svg.number(wide * SPACE),
              words.of(line),
              Templates.elements(line.svg() + rows)));
    }
    return excerpts.build();
  }

  private static String name(Lane lane) {
    String name = lane.name();
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "…";
  }

  /** Draws a row from its upper edge down, and returns its lower edge. */
  private double row(Lane lane, EngravedSystem line, double top, double before, StringBuilder out) {
    List<Spot> spots = spots(lane, line);
    boolean positions = spots.stream().anyMatch(spot -> !spot.mark().first());
    double fingers = top + FINGER + (positions ? POSITION + ABOVE : 0);
    if (positions) {
      brackets(spots, top + ABOVE + POSITION * 0.8, MusicPanel.right(line), out);
    }
    words(out, "name", "start", -before + 0.2, fingers, name(lane));
    for (Spot spot : spots) {
      words(
          out,
          spot.differs() ? "mark" : "agreed",
          "middle",
          spot.x(),
          fingers,
          spot.marks().stream().map(Mark::finger).collect(Collectors.joining("+")));
    }
    double bottom = fingers;
    List<Spot> numerals =
        spots.stream().filter(spot -> spot.marks().stream().anyMatch(Mark::showString)).toList();
    if (!numerals.isEmpty()) {
      bottom += NUMERAL;
      for (Spot spot : numerals) {
        String strings =
            spot.marks().stream().map(Mark::string).distinct().collect(Collectors.joining("/"));
        words(out, "numeral", "middle", spot.x(), bottom, strings);
      }
    }
    return bottom + GAP;
  }

  private List<Spot> spots(Lane lane, EngravedSystem line) {
    Map<Integer, List<Spot>> chords = new TreeMap<>();
    line.heads()
        .forEach(
            (note, box) -> {
              Optional<Mark> mark = Optional.ofNullable(lane.marks().get(note));
              Optional<Integer> moment = Optional.ofNullable(moments.get(note));
              if (mark.isPresent() && moment.isPresent()) {
                chords
                    .computeIfAbsent(moment.get(), key -> new ArrayList<>())
                    .add(
                        new Spot(
                            (box.left() + box.right()) / 2,
                            ImmutableList.of(mark.get()),
                            differing.contains(note)));
              }
            });
    return chords.values().stream().map(FingerRows::chord).toList();
  }

  private static Spot chord(List<Spot> notes) {
    return new Spot(
        notes.stream().mapToDouble(Spot::x).average().orElseThrow(),
        notes.stream().map(Spot::mark).collect(ImmutableList.toImmutableList()),
        notes.stream().anyMatch(Spot::differs));
  }

  /** A bracket over every stay of the hand in a position other than the first. */
  private static void brackets(List<Spot> spots, double y, double edge, StringBuilder out) {
    for (int i = 0; i < spots.size(); ) {
      int end = i;
      String position = spots.get(i).mark().position();
      while (end + 1 < spots.size() && spots.get(end + 1).mark().position().equals(position)) {
        end++;
      }
      if (!spots.get(i).mark().first()) {
        double left = spots.get(i).x() - 0.6;
        words(out, "position", "start", left, y, position);
        double from = left + TextWidth.boldSerif(position, POSITION) + 0.3;
        double right = Math.min(edge, spots.get(end).x() + 0.8);
        if (right - from > 0.4) {
          double middle = y - POSITION * 0.33;
          out.append("<path class=\"line\" d=\"M")
              .append(Canvas.point(from, middle))
              .append('H')
              .append(Canvas.n(right))
              .append('V')
              .append(Canvas.n(middle + HOOK))
              .append("\"/>");
        }
      }
      i = end + 1;
    }
  }

  private static void words(
      StringBuilder out, String style, String anchor, double x, double y, String words) {
    out.append("<text class=\"")
        .append(style)
        .append("\" text-anchor=\"")
        .append(anchor)
        .append("\" x=\"")
        .append(Canvas.n(x))
        .append("\" y=\"")
        .append(Canvas.n(y))
        .append("\">")
        .append(Svg.escaped(words))
        .append("</text>");
  }
}
