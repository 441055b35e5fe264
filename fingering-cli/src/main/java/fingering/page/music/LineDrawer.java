package fingering.page.music;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Range;
import fingering.engraving.EngravedSystem;
import fingering.engraving.LineLayout;
import fingering.engraving.drawing.Circled;
import fingering.engraving.drawing.Lane;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.live.MusicLine;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Draws the lines of music that a page replaces one by one. A line whose fingers have not changed
 * since it was drawn last is not drawn again. Thread-safe.
 */
public final class LineDrawer {
  private final Passage passage;
  private final PrintedPart printed;
  private final double width;
  private final LineLayout layout;
  private final ImmutableList<String> ids;
  private final ImmutableList<ImmutableSet<NoteAddress>> notes;
  private final ImmutableList<Range<Double>> times;
  private final AtomicReferenceArray<Drawn> drawn;

  /** A line as it was drawn last. */
  private record Drawn(
      ImmutableList<Lane> above,
      ImmutableList<Lane> below,
      ImmutableList<Circled> circles,
      MusicLine line) {}

  /**
   * A drawer of music at a width.
   *
   * @param width of a line, in staff spaces
   */
  public LineDrawer(Passage passage, PrintedPart printed, double width) {
    this.passage = passage;
    this.printed = printed;
    this.width = width;
    layout = LineLayout.of(passage, printed, width);
    ImmutableList.Builder<String> named = ImmutableList.builder();
    ImmutableList.Builder<ImmutableSet<NoteAddress>> lines = ImmutableList.builder();
    Map<Integer, Integer> seen = new HashMap<>();
    for (int line = 0; line < layout.lines(); line++) {
      int measure = layout.firstMeasure(line);
      int times = seen.merge(measure, 1, Integer::sum);
      named.add("s-" + measure + (times == 1 ? "" : "-" + times));
      lines.add(layout.notes(line));
    }
    ids = named.build();
    times = times(passage, layout);
    notes = lines.build();
    drawn = new AtomicReferenceArray<>(layout.lines());
  }

  /** The time from the first measure of each line to that of the next one, in quarter notes. */
  private static ImmutableList<Range<Double>> times(Passage passage, LineLayout layout) {
    ImmutableList.Builder<Range<Double>> times = ImmutableList.builder();
    for (int line = 0; line < layout.lines(); line++) {
      Range<Double> from = Range.atLeast(start(passage, layout.firstMeasure(line)));
      int next = line + 1;
      times.add(
          next == layout.lines()
              ? from
              // The last measure of a line may go on in the next one.
              : from.intersection(Range.lessThan(start(passage, layout.firstMeasure(next) + 1))));
    }
    return times.build();
  }

  private static double start(Passage passage, int measure) {
    return passage.measure(measure).map(m -> m.start().doubleValue()).orElse(Double.MAX_VALUE);
  }

  /** The lines with the fingers of plans, and rings around some signs. */
  public ImmutableList<MusicLine> draw(Lanes lanes, ImmutableList<Circled> circles) {
    MusicPanel panel = new MusicPanel(passage, printed, lanes, circles);
    ImmutableList.Builder<MusicLine> lines = ImmutableList.builder();
    for (int i = 0; i < layout.lines(); i++) {
      ImmutableList<Lane> above = only(lanes.above(), notes.get(i));
      ImmutableList<Lane> below = only(lanes.below(), notes.get(i));
      Range<Double> time = times.get(i);
      ImmutableList<Circled> rings =
          circles.stream()
              .filter(circle -> time.contains(circle.time()))
              .collect(ImmutableList.toImmutableList());
      Drawn last = drawn.get(i);
      if (last == null
          || !last.above().equals(above)
          || !last.below().equals(below)
          || !last.circles().equals(rings)) {
        EngravedSystem system = layout.draw(i, above, below, rings);
        last = new Drawn(above, below, rings, panel.line(system, width, ids.get(i)));
        drawn.set(i, last);
      }
      lines.add(last.line());
    }
    return lines.build();
  }

  /** The marks of plans at some notes. */
  private static ImmutableList<Lane> only(List<Lane> lanes, ImmutableSet<NoteAddress> notes) {
    ImmutableList.Builder<Lane> some = ImmutableList.builder();
    for (Lane lane : lanes) {
      ImmutableMap.Builder<NoteAddress, Lane.Mark> marks = ImmutableMap.builder();
      for (NoteAddress note : notes) {
        Lane.Mark mark = lane.marks().get(note);
        if (mark != null) {
          marks.put(note, mark);
        }
      }
      some.add(new Lane(lane.name(), marks.buildOrThrow()));
    }
    return some.build();
  }
}
