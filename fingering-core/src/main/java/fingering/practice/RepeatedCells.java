package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedMeasure.InnerBar;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.Ending;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A passage divided at its repeat signs.
 *
 * @param cells the measures, or what stands between the repeat signs of one, in order
 * @param sections the sections that are repeated, in order
 */
record RepeatedCells(ImmutableList<Cell> cells, ImmutableList<Section> sections) {
  /** Who repeats more often is not practising any more: the number is a mistake of the score. */
  private static final int MOST = 9;

  private static final int USUAL = 2;

  private static final Pattern NUMBERS = Pattern.compile("(\\d{1,3})(?:\\s*[-–]\\s*(\\d{1,3}))?");

  /**
   * A measure, or a part of one.
   *
   * @param from its start in quarter notes from the start of the part
   * @param to its end, exclusive
   * @param measure index of the measure in the part
   * @param forward whether a repeat starts here
   * @param back whether a repeat ends here
   * @param times how often that repeat is played
   * @param closing whether a movement ends here
   */
  record Cell(
      BigFraction from,
      BigFraction to,
      int measure,
      boolean forward,
      boolean back,
      int times,
      boolean closing) {}

  /**
   * Cells that are repeated.
   *
   * @param first the cell to go back to
   * @param last the last cell, of the last ending if there are any
   * @param passes how often they are played
   * @param endings the endings, which are played in some passes only
   */
  record Section(int first, int last, int passes, ImmutableList<Ended> endings) {}

  /**
   * An ending.
   *
   * @param first its first cell
   * @param last its last cell
   * @param passes the passes in which it is played, from 1
   */
  record Ended(int first, int last, ImmutableSet<Integer> passes) {}

  static RepeatedCells of(Passage passage, PrintedPart printed) {
    ImmutableList<Cell> cells = cut(passage, printed);
    boolean opening = passage.measures().get(0).index() == 0;
    return new RepeatedCells(cells, sections(cells, printed, opening));
  }

  /** The repeated section of a cell. */
  Optional<Section> section(int cell) {
    return sections.stream()
        .filter(section -> section.first() <= cell && section.last() >= cell)
        .findFirst();
  }

  /** The ending of a cell. */
  Optional<Ended> ending(int cell) {
    return section(cell).stream()
        .flatMap(section -> section.endings().stream())
        .filter(ending -> ending.first() <= cell && ending.last() >= cell)
        .findFirst();
  }

  /** The first cell of a measure. */
  int first(int measure) {
    return (int) cells.stream().filter(cell -> cell.measure() < measure).count();
  }

  /** The last cell of a measure. */
  int last(int measure) {
    return first(measure + 1) - 1;
  }

  private static ImmutableList<Cell> cut(Passage passage, PrintedPart printed) {
    Map<Integer, PrintedMeasure> signs =
        printed.measures().stream()
            .collect(Collectors.toMap(PrintedMeasure::index, Function.identity()));
    ImmutableList.Builder<Cell> cells = ImmutableList.builder();
    for (Measure measure : passage.measures()) {
      BigFraction from = measure.start();
      BigFraction end = measure.start().add(measure.length());
      Optional<PrintedMeasure> sign = Optional.ofNullable(signs.get(measure.index()));
      boolean forward = sign.filter(PrintedMeasure::repeatStart).isPresent();
      for (InnerBar bar : sign.map(PrintedMeasure::bars).orElse(ImmutableList.of())) {
        BigFraction at = measure.start().add(bar.onset());
        boolean back = bar.bar() == Bar.REPEAT;
        boolean inside = at.compareTo(from) > 0 && at.compareTo(end) < 0;
        if (inside && (back || bar.repeatStart())) {
          cells.add(new Cell(from, at, measure.index(), forward, back, USUAL, false));
          from = at;
          forward = bar.repeatStart();
        }
      }
      Bar bar = sign.map(PrintedMeasure::end).orElse(Bar.SINGLE);
      int times = sign.map(PrintedMeasure::repeatTimes).orElse(USUAL);
      cells.add(
          new Cell(
              from,
              end,
              measure.index(),
              forward,
              bar == Bar.REPEAT,
              Math.min(times, MOST),
              bar == Bar.FINAL));
    }
    return cells.build();
  }

  /** A section begins at a sign, after the section before, or with the movement. */
  private static ImmutableList<Section> sections(
      List<Cell> cells, PrintedPart printed, boolean opening) {
    ImmutableList.Builder<Section> sections = ImmutableList.builder();
    Optional<Integer> start = opening ? Optional.of(0) : Optional.empty();
    int at = 0;
    while (at < cells.size()) {
      if (cells.get(at).forward()) {
        start = Optional.of(at);
      }
      int last = at;
      if (cells.get(at).closing()) {
        start = Optional.of(at + 1);
      }
      if (cells.get(at).back()) {
        if (start.isPresent()) {
          Section section = section(cells, printed, start.get(), at);
          sections.add(section);
          last = section.last();
        }
        start = Optional.of(last + 1);
      }
      at = last + 1;
    }
    return sections.build();
  }

  /** The section that is repeated at the end of a cell. */
  private static Section section(List<Cell> cells, PrintedPart printed, int first, int back) {
    List<Ended> endings = new ArrayList<>();
    int last = back;
    for (Ending ending : printed.endings()) {
      int[] own =
          IntStream.range(first, cells.size())
              .filter(cell -> cells.get(cell).measure() >= ending.first())
              .filter(cell -> cells.get(cell).measure() <= ending.last())
              .toArray();
      boolean next = own.length > 0 && !endings.isEmpty() && own[0] == last + 1;
      if (own.length > 0 && (own[0] <= back || next)) {
        int end = own[own.length - 1];
        endings.add(new Ended(own[0], end, numbers(ending, endings.size() + 1)));
        last = Math.max(last, end);
      }
    }
    int passes = cells.get(back).times();
    if (!endings.isEmpty()) {
      passes =
          endings.stream().mapToInt(ending -> Collections.max(ending.passes())).max().orElse(1);
      if (endings.size() == 1 && cells.get(last).back() && last + 1 < cells.size()) {
        // The last time has no bracket of its own.
        passes++;
      }
    }
    return new Section(first, last, passes, ImmutableList.copyOf(endings));
  }

  /** The printed numbers of an ending; without any, its place among the endings. */
  private static ImmutableSet<Integer> numbers(Ending ending, int place) {
    ImmutableSet.Builder<Integer> numbers = ImmutableSet.builder();
    Matcher found = NUMBERS.matcher(ending.number());
    while (found.find()) {
      int from = Integer.parseInt(found.group(1));
      int to = Optional.ofNullable(found.group(2)).map(Integer::parseInt).orElse(from);
      IntStream.rangeClosed(Math.max(1, from), Math.min(to, MOST)).forEach(numbers::add);
    }
    ImmutableSet<Integer> all = numbers.build();
    return all.isEmpty() ? ImmutableSet.of(place) : all;
  }
}
