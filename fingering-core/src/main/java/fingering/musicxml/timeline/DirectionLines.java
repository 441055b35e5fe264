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
 * The open lines, dashed or brackets, that are printed after words.
 *
 * @param <T> the owner of a line
 */
final class DirectionLines<T> {
  /** The kind and the number of a line. */
  record Line(boolean dashed, Optional<Integer> number) {}

  private final Map<Line, T> open = new HashMap<>();

  /**
   * Reads the lines of a direction.
   *
   * @param at quarter notes from the start of the part
   * @param ended receives the owner and the position of each line that ends here
   * @return the lines that start here
   */
  List<Line> read(Direction direction, BigFraction at, BiConsumer<T, BigFraction> ended) {
    List<Line> started = new ArrayList<>();
    for (DirectionType type : direction.getDirectionType()) {
      Dashes dashes = type.getDashes();
      Bracket bracket = type.getBracket();
      if (dashes != null) {
        Line line = new Line(true, Optional.ofNullable(dashes.getNumber()));
        read(line, dashes.getType(), at, started, ended);
      }
      if (bracket != null) {
        Line line = new Line(false, Optional.ofNullable(bracket.getNumber()));
        read(line, bracket.getType(), at, started, ended);
      }
    }
    return started;
  }

  private void read(
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

  /** Assigns lines that have started to an owner. */
  void attach(List<Line> started, T owner) {
    started.forEach(line -> open.put(line, owner));
  }
}
