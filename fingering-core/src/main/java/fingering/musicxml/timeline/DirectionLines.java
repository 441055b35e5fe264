package fingering.musicxml.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Bracket;
import org.audiveris.proxymusic.Dashes;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.StartStopContinue;

/**
 * The lines, dashed or brackets, that are printed behind words and are not ended yet.
 *
 * @param <T> what a line belongs to
 */
final class DirectionLines<T> {
  /** The sign of a line: dashed or bracket, and its number. */
  record Line(boolean dashed, Optional<Integer> number) {}

  private final Map<Line, T> open = new HashMap<>();

  /**
   * Takes the lines of a direction.
   *
   * @param at where it stands
   * @param ended is told what the lines that end here belong to, and where
   * @return the lines that start here
   */
  List<Line> take(Direction direction, BigFraction at, BiConsumer<T, BigFraction> ended) {
    List<Line> started = new ArrayList<>();
    for (DirectionType type : direction.getDirectionType()) {
      Dashes dashes = type.getDashes();
      Bracket bracket = type.getBracket();
      if (dashes != null) {
        Line line = new Line(true, Optional.ofNullable(dashes.getNumber()));
        take(line, dashes.getType(), at, started, ended);
      }
      if (bracket != null) {
        Line line = new Line(false, Optional.ofNullable(bracket.getNumber()));
        take(line, bracket.getType(), at, started, ended);
      }
    }
    return started;
  }

  private void take(
      Line line,
      StartStopContinue type,
      BigFraction at,
      List<Line> started,
      BiConsumer<T, BigFraction> ended) {
    if (type == StartStopContinue.START) {
      open.remove(line);
      started.add(line);
    } else if (type == StartStopContinue.STOP) {
      Optional.ofNullable(open.remove(line)).ifPresent(owner -> ended.accept(owner, at));
    }
  }

  /** Says what lines that have started belong to. */
  void belong(List<Line> started, T owner) {
    started.forEach(line -> open.put(line, owner));
  }
}
