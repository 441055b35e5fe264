package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.practice.RepeatedCells.Cell;
import fingering.practice.RepeatedCells.Ended;
import fingering.practice.RepeatedCells.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The order in which a passage is played: with its repeats and their endings, with da capo and dal
 * segno. A repeat whose beginning is outside the passage is played once. After a da capo or dal
 * segno, repeats are not played again (MusicXML 4.0, {@code repeat}, attribute {@code after-jump}).
 *
 * @param spans what is played, one after another; where one ends, the next does not begin
 */
public record PlayingOrder(ImmutableList<Span> spans) {

  /**
   * Music that is played as it is written, from left to right.
   *
   * @param from its start in quarter notes from the start of the part
   * @param to its end, exclusive
   */
  public record Span(BigFraction from, BigFraction to) {

    /** Whether a time in quarter notes from the start of the part is in it. */
    boolean contains(BigFraction at) {
      return from.compareTo(at) <= 0 && to.compareTo(at) > 0;
    }
  }

  /**
   * Reads the order from the signs and words of the part, and from what the score says for its
   * playback where nothing is printed.
   *
   * @param printed what is printed in the passage
   */
  public static PlayingOrder of(Passage passage, PrintedPart printed) {
    RepeatedCells cells = RepeatedCells.of(passage, printed);
    Walk walk = new Walk(cells);
    int from = 0;
    boolean again = false;
    for (Jump jump : Jump.all(passage, printed)) {
      walk.play(from, Optional.of(cells.last(jump.after())), again);
      // After its end, whether at a Fine or where the jump was, the next movement begins.
      Optional<Integer> until = jump.until().or(() -> Optional.of(jump.after())).map(cells::last);
      walk.play(cells.first(jump.target()), until, true);
      from = jump.coda().map(cells::first).orElse(cells.last(jump.after()) + 1);
      again = jump.coda().isPresent();
    }
    walk.play(from, Optional.empty(), again);
    return new PlayingOrder(ImmutableList.copyOf(walk.spans));
  }

  private static final class Walk {
    private final RepeatedCells music;
    private final List<Span> spans = new ArrayList<>();

    Walk(RepeatedCells music) {
      this.music = music;
    }

    /**
     * Plays from a cell on.
     *
     * @param until the last cell; empty for that of the passage
     * @param again whether repeats are played once, with their last ending
     */
    void play(int from, Optional<Integer> until, boolean again) {
      Optional<Section> section = Optional.empty();
      int pass = 1;
      int at = from;
      while (at < music.cells().size()) {
        Optional<Section> here = music.section(at);
        if (!here.equals(section)) {
          section = here;
          pass = again ? here.map(Section::passes).orElse(1) : 1;
        }
        Optional<Ended> ending = music.ending(at);
        if (ending.isPresent() && !ending.get().passes().contains(pass)) {
          at = ending.get().last() + 1;
          continue;
        }
        Cell cell = music.cells().get(at);
        add(cell);
        boolean last = section.isEmpty() || pass == section.get().passes();
        if (last && until.equals(Optional.of(at))) {
          return;
        }
        if (cell.back() && !last) {
          pass++;
          at = section.orElseThrow().first();
        } else {
          at++;
        }
      }
    }

    private void add(Cell cell) {
      int last = spans.size() - 1;
      if (last >= 0 && spans.get(last).to().equals(cell.from())) {
        spans.set(last, new Span(spans.get(last).from(), cell.to()));
      } else {
        spans.add(new Span(cell.from(), cell.to()));
      }
    }
  }
}
