package fingering.engraving;

import com.google.common.collect.ImmutableList;
import fingering.engraving.drawing.Circled;
import fingering.engraving.drawing.Lane;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws a part as lines of music, with the fingers of plans at the notes.
 *
 * @param passage the music
 * @param part the same as printed, with as many measures
 * @param above the plans whose fingers stand above the staff; usually one
 * @param below the plans whose fingers stand below the staff
 * @param circles what to circle
 */
public record Engraver(
    Passage passage,
    PrintedPart part,
    ImmutableList<Lane> above,
    ImmutableList<Lane> below,
    ImmutableList<Circled> circles) {

  /** An engraver of a part without fingers. */
  public static Engraver of(Passage passage, PrintedPart part) {
    return new Engraver(passage, part, ImmutableList.of(), ImmutableList.of(), ImmutableList.of());
  }

  /** The same with the fingers of a plan above the staff. */
  public Engraver withAbove(Lane lane) {
    return new Engraver(passage, part, ImmutableList.of(lane), below, circles);
  }

  /** The same with the fingers of plans below the staff. */
  public Engraver withBelow(List<Lane> lanes) {
    return new Engraver(passage, part, above, ImmutableList.copyOf(lanes), circles);
  }

  /** The same with rings around some things. */
  public Engraver withCircles(List<Circled> circled) {
    return new Engraver(passage, part, above, below, ImmutableList.copyOf(circled));
  }

  /**
   * Draws the part.
   *
   * @param width of a line, in staff spaces
   */
  public ImmutableList<EngravedSystem> draw(double width) {
    return lines(width).collect(ImmutableList.toImmutableList());
  }

  /**
   * The lines of the part, each drawn when it is taken from the stream.
   *
   * @param width of a line, in staff spaces
   */
  public Stream<EngravedSystem> lines(double width) {
    LineLayout layout = LineLayout.of(passage, part, width);
    return IntStream.range(0, layout.lines())
        .mapToObj(line -> layout.draw(line, above, below, circles));
  }
}
