package fingering.page.music;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
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
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;

/**
 * Draws the lines of music that a page replaces one by one. What stands in a line is known before
 * it is drawn, so that a page is sent only the lines that it lacks. A line that has not changed
 * since it was drawn last is not drawn again. Thread-safe.
 */
public final class LineDrawer {
  private final MusicPanel panel;
  private final double width;
  private final LineLayout layout;
  private final ImmutableList<String> ids;
  private final ImmutableList<ImmutableSet<NoteAddress>> notes;
  private final ImmutableList<Range<Double>> times;
  private final AtomicReferenceArray<Drawn> drawn;

  /**
   * What stands in a line. Two lines of one drawer that are equal look the same.
   *
   * @param number its number, from 0
   * @param id names its element in the page
   * @param above the fingers above the staff
   * @param below the fingers below the staff
   * @param circles what is circled
   */
  public record Line(
      int number,
      String id,
      ImmutableList<Lane> above,
      ImmutableList<Lane> below,
      ImmutableList<Circled> circles) {}

  /** A line as it was drawn last. */
  private record Drawn(Line line, MusicLine picture) {}

  /**
   * A drawer of music at a width.
   *
   * @param width of a line, in staff spaces
   */
  public LineDrawer(Passage passage, PrintedPart printed, double width) {
    panel = new MusicPanel(passage, printed, Lanes.NONE);
    this.width = width;
    layout = LineLayout.of(passage, printed, width);
    ImmutableList.Builder<String> named = ImmutableList.builder();
    Map<Integer, Integer> seen = new HashMap<>();
    for (int line = 0; line < layout.lines(); line++) {
      int measure = layout.firstMeasure(line);
      int times = seen.merge(measure, 1, Integer::sum);
      named.add("s-" + measure + (times == 1 ? "" : "-" + times));
    }
    ids = named.build();
    times = times(passage, layout);
    notes = notes(layout);
    drawn = new AtomicReferenceArray<>(layout.lines());
  }

  /** All notes of the measures of each line, also of those that go on in the next line. */
  private static ImmutableList<ImmutableSet<NoteAddress>> notes(LineLayout layout) {
    List<ImmutableSet<NoteAddress>> lines =
        IntStream.range(0, layout.lines()).mapToObj(layout::notes).toList();
    ImmutableListMultimap<Integer, NoteAddress> measures =
        lines.stream()
            .flatMap(Set::stream)
            .collect(
                ImmutableListMultimap.toImmutableListMultimap(NoteAddress::measure, note -> note));
    return lines.stream()
        .map(
            line ->
                line.stream()
                    .map(NoteAddress::measure)
                    .distinct()
                    .flatMap(measure -> measures.get(measure).stream())
                    .collect(ImmutableSet.toImmutableSet()))
        .collect(ImmutableList.toImmutableList());
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

  /** The ids of the lines, in order. */
  public ImmutableList<String> ids() {
    return ids;
  }

  /** The lines with the fingers of plans, and rings around some signs. */
  public ImmutableList<Line> lines(Lanes lanes, ImmutableList<Circled> circles) {
    ImmutableList.Builder<Line> lines = ImmutableList.builder();
    for (int i = 0; i < layout.lines(); i++) {
      Range<Double> time = times.get(i);
      lines.add(
          new Line(
              i,
              ids.get(i),
              // Only the plan below the staff is named in a line.
              only(lanes.above(), notes.get(i)).stream()
                  .map(lane -> new Lane("", lane.marks()))
                  .collect(ImmutableList.toImmutableList()),
              only(lanes.below(), notes.get(i)),
              circles.stream()
                  .filter(circle -> time.contains(circle.time()))
                  .collect(ImmutableList.toImmutableList())));
    }
    return lines.build();
  }

  /** The pictures of some of its lines. */
  public ImmutableList<MusicLine> draw(List<Line> lines) {
    return lines.stream().map(this::draw).collect(ImmutableList.toImmutableList());
  }

  private MusicLine draw(Line line) {
    Drawn last = drawn.get(line.number());
    if (last != null && last.line().equals(line)) {
      return last.picture();
    }
    EngravedSystem system = layout.draw(line.number(), line.above(), line.below(), line.circles());
    MusicLine picture = panel.line(system, new Lanes(line.above(), line.below()), width, line.id());
    drawn.set(line.number(), new Drawn(line, picture));
    return picture;
  }

  /** The marks of plans at some notes; plans without any are left out. */
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
      ImmutableMap<NoteAddress, Lane.Mark> found = marks.buildOrThrow();
      if (!found.isEmpty()) {
        some.add(new Lane(lane.name(), found));
      }
    }
    return some.build();
  }
}
