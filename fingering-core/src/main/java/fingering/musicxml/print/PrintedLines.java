package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.print.PrintedPart.OctaveLine;
import fingering.music.print.PrintedPart.TextLine;
import fingering.music.print.PrintedPart.TextLine.Style;
import fingering.music.print.PrintedPart.Wedge;
import fingering.music.print.Side;
import fingering.musicxml.element.Quarters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.audiveris.proxymusic.Bracket;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.LineEnd;
import org.audiveris.proxymusic.OctaveShift;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.WedgeType;
import org.jspecify.annotations.Nullable;

/** Collects hairpins, the lines after words, and octave lines. */
final class PrintedLines {
  /** The size of an octave line in steps, counted with both ends: 8 and 15. */
  private static final int OCTAVE = 8;

  private static final int TWO_OCTAVES = 15;

  private record Start<T>(T value, Position from) {}

  private record Line<T>(T value, Position from, Position to) {}

  private record Hairpin(boolean louder, Side side) {}

  private record Dashes(
      Style style, boolean startHook, boolean endHook, int direction, Side side) {}

  /**
   * Lines of one kind. Open lines have different numbers.
   *
   * @param <T> what is known at the start of a line
   */
  private static final class Lines<T> {
    private final List<Line<T>> closed = new ArrayList<>();
    private final Map<Integer, Start<T>> open = new HashMap<>();

    /**
     * Ends without a start: where the start is in a later voice, its end comes first in the file.
     */
    private final Map<Integer, Position> early = new HashMap<>();

    // The next line with the same number ends one that has no end.
    void start(@Nullable Integer number, T value, Position at) {
      Start<T> before = open.remove(key(number));
      if (before != null) {
        closed.add(new Line<>(before.value(), before.from(), at));
      }
      Position end = early.remove(key(number));
      if (end != null && end.measure() == at.measure() && end.onset().compareTo(at.onset()) > 0) {
        closed.add(new Line<>(value, at, end));
      } else {
        open.put(key(number), new Start<>(value, at));
      }
    }

    void stop(@Nullable Integer number, Position at) {
      Start<T> start = open.remove(key(number));
      if (start == null) {
        early.put(key(number), at);
      } else {
        closed.add(new Line<>(start.value(), start.from(), at));
      }
    }

    void replace(@Nullable Integer number, T value) {
      open.computeIfPresent(key(number), (key, start) -> new Start<>(value, start.from()));
    }

    Optional<T> value(@Nullable Integer number) {
      return Optional.ofNullable(open.get(key(number))).map(Start::value);
    }

    private static int key(@Nullable Integer number) {
      return number == null ? 1 : number;
    }

    /** All lines that have a length, in order of time; one without an end ends with its measure. */
    List<Line<T>> all(List<Measure> measures) {
      List<Line<T>> all = new ArrayList<>(closed);
      for (Start<T> start : open.values()) {
        Measure last = measures.get(start.from().measure());
        all.add(new Line<>(start.value(), start.from(), new Position(last.index(), last.length())));
      }
      return all.stream()
          .filter(
              line -> Quarters.compare(line.from().start(measures), line.to().start(measures)) < 0)
          .sorted(Comparator.comparing(line -> line.from().start(measures), Quarters.ORDER))
          .toList();
    }
  }

  private final Lines<Hairpin> hairpins = new Lines<>();
  private final Lines<Dashes> dashes = new Lines<>();
  private final Lines<Dashes> brackets = new Lines<>();
  private final Lines<Integer> octaves = new Lines<>();

  /**
   * Adds the lines that start and end in a direction.
   *
   * @param number number of the direction in the part
   */
  void direction(Direction direction, int number, Position at) {
    Side side = Sides.of(direction.getPlacement());
    for (DirectionType type : direction.getDirectionType()) {
      if (type.getWedge() != null && type.getWedge().getType() != null) {
        hairpin(type.getWedge(), side, at);
      }
      if (type.getDashes() != null) {
        org.audiveris.proxymusic.Dashes line = type.getDashes();
        if (line.getType() == StartStopContinue.START) {
          dashes.start(line.getNumber(), new Dashes(Style.DASHES, false, false, number, side), at);
        } else if (line.getType() == StartStopContinue.STOP) {
          dashes.stop(line.getNumber(), at);
        }
      }
      if (type.getBracket() != null) {
        bracket(type.getBracket(), number, side, at);
      }
      if (type.getOctaveShift() != null && type.getOctaveShift().getType() != null) {
        octave(type.getOctaveShift(), at);
      }
    }
  }

  private void hairpin(org.audiveris.proxymusic.Wedge wedge, Side side, Position at) {
    switch (wedge.getType()) {
      case CRESCENDO, DIMINUENDO ->
          hairpins.start(
              wedge.getNumber(), new Hairpin(wedge.getType() == WedgeType.CRESCENDO, side), at);
      case STOP -> hairpins.stop(wedge.getNumber(), at);
      default -> {}
    }
  }

  private void bracket(Bracket bracket, int number, Side side, Position at) {
    boolean hook = bracket.getLineEnd() != null && bracket.getLineEnd() != LineEnd.NONE;
    if (bracket.getType() == StartStopContinue.START) {
      Style style =
          bracket.getLineType() == null
              ? Style.SOLID
              : switch (bracket.getLineType()) {
                case DASHED -> Style.DASHED;
                case DOTTED -> Style.DOTTED;
                default -> Style.SOLID;
              };
      brackets.start(bracket.getNumber(), new Dashes(style, hook, false, number, side), at);
    } else if (bracket.getType() == StartStopContinue.STOP) {
      brackets
          .value(bracket.getNumber())
          .ifPresent(
              line ->
                  brackets.replace(
                      bracket.getNumber(),
                      new Dashes(
                          line.style(), line.startHook(), hook, line.direction(), line.side())));
      brackets.stop(bracket.getNumber(), at);
    }
  }

  // MusicXML 4.0: the type says how the print differs from the pitches in the file, so 8va is down.
  private void octave(OctaveShift shift, Position at) {
    int size = shift.getSize() == null ? OCTAVE : shift.getSize().intValue();
    int shifted = size == OCTAVE ? 1 : size == TWO_OCTAVES ? 2 : 0;
    switch (shift.getType()) {
      case DOWN -> octaves.start(shift.getNumber(), shifted, at);
      case UP -> octaves.start(shift.getNumber(), -shifted, at);
      case STOP -> octaves.stop(shift.getNumber(), at);
      default -> {}
    }
  }

  ImmutableList<Wedge> wedges(List<Measure> measures) {
    return hairpins.all(measures).stream()
        .map(
            line ->
                new Wedge(
                    line.from().place(measures),
                    line.to().place(measures),
                    line.from().start(measures),
                    line.to().start(measures),
                    line.value().louder(),
                    line.value().side()))
        .collect(ImmutableList.toImmutableList());
  }

  ImmutableList<TextLine> textLines(List<Measure> measures) {
    List<Line<Dashes>> all = new ArrayList<>(dashes.all(measures));
    all.addAll(brackets.all(measures));
    return all.stream()
        .map(
            line ->
                new TextLine(
                    line.from().place(measures),
                    line.to().place(measures),
                    line.from().start(measures),
                    line.to().start(measures),
                    line.value().style(),
                    line.value().startHook(),
                    line.value().endHook(),
                    line.value().direction(),
                    line.value().side()))
        .sorted(Comparator.comparing(TextLine::start, Quarters.ORDER))
        .collect(ImmutableList.toImmutableList());
  }

  ImmutableList<OctaveLine> octaveLines(List<Measure> measures) {
    return octaves.all(measures).stream()
        .filter(line -> line.value() != 0)
        .map(
            line ->
                new OctaveLine(
                    line.from().place(measures),
                    line.to().place(measures),
                    line.from().start(measures),
                    line.to().start(measures),
                    line.value()))
        .collect(ImmutableList.toImmutableList());
  }
}
