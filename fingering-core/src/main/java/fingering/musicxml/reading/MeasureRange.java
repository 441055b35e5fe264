package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.Ints;
import fingering.music.Measure;
import fingering.music.Movements;
import fingering.musicxml.SelectionException;
import fingering.musicxml.element.Meter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A range of measures.
 *
 * @param first index of the first measure
 * @param last index of the last measure
 * @param remark an assumption made in finding them
 */
record MeasureRange(int first, int last, Optional<String> remark) {

  private static final int MARKS_NAMED = 30;
  private static final int RUNS_NAMED = 12;

  /** Finds measures by printed numbers and rehearsal marks. */
  static final class Finder {
    // "9-24", "9 to 24", "9-". Numbers and marks may contain such characters, so every split is
    // tried.
    private static final Pattern SPLIT = Pattern.compile("\\s*[-–—]\\s*|\\s+to\\s+|\\s+to$");

    // "movement 2, 9-24"; "movement 2" is all of it.
    private static final Pattern MOVEMENT =
        Pattern.compile(
            "(?:movement|mvt\\.?)\\s*(\\d{1,4})\\s*[,:]?\\s*(.*)", Pattern.CASE_INSENSITIVE);

    private final ImmutableList<Measure> measures;
    private final ImmutableSet<Integer> implicit;
    private final String partName;

    Finder(ImmutableList<Measure> measures, ImmutableSet<Integer> implicit, String partName) {
      this.measures = measures;
      this.implicit = implicit;
      this.partName = partName;
    }

    /** Returns the range of the whole part. */
    MeasureRange whole() {
      return new MeasureRange(0, measures.size() - 1, Optional.empty());
    }

    /**
     * Returns the requested measures.
     *
     * @throws SelectionException if they do not exist
     */
    MeasureRange find(String wanted) {
      String text = wanted.strip();
      OptionalInt number = numbered(text, 0);
      if (number.isPresent()) {
        return range(number.getAsInt(), endOf(number.getAsInt()));
      }
      OptionalInt mark = marked(text, 0);
      if (mark.isPresent()) {
        return range(mark.getAsInt(), beforeMark(m -> !m.isEmpty(), mark.getAsInt() + 1));
      }
      Matcher movement = MOVEMENT.matcher(text);
      if (movement.matches()) {
        return inMovement(Integer.parseInt(movement.group(1)), movement.group(2));
      }
      Matcher split = SPLIT.matcher(text);
      while (split.find()) {
        Optional<MeasureRange> range =
            between(text.substring(0, split.start()), text.substring(split.end()));
        if (range.isPresent()) {
          return range.get();
        }
      }
      throw new SelectionException(
          "%s has no measures '%s': %s".formatted(partName, text, choices()));
    }

    /** Measures of a movement of this part; all of it if they are empty. */
    private MeasureRange inMovement(int number, String wanted) {
      Movements movements = Movements.of(measures);
      if (number < 1 || number > movements.count()) {
        throw new SelectionException(
            "%s has no movement %d: its measure numbers begin %s."
                .formatted(
                    partName,
                    number,
                    movements.count() == 1 ? "only once" : movements.count() + " times"));
      }
      int start = movements.start(number, measures.size());
      int end = movements.start(number + 1, measures.size());
      Finder finder = new Finder(measures.subList(start, end), implicit, partName);
      MeasureRange range = wanted.isEmpty() ? finder.whole() : finder.find(wanted);
      return new MeasureRange(
          start + range.first(),
          start + range.last(),
          Optional.of("movement %d of %d".formatted(number, movements.count())));
    }

    private Optional<MeasureRange> between(String from, String to) {
      OptionalInt first = numbered(from, 0);
      if (first.isEmpty()) {
        first = marked(from, 0);
      }
      if (first.isEmpty()) {
        return Optional.empty();
      }
      int start = first.getAsInt();
      if (to.isEmpty()) {
        return Optional.of(range(start, measures.size() - 1));
      }
      OptionalInt end = numbered(to, start);
      if (end.isPresent()) {
        return Optional.of(range(start, endOf(end.getAsInt())));
      }
      OptionalInt mark = marked(to, start + 1);
      if (mark.isPresent()) {
        return Optional.of(range(start, mark.getAsInt() - 1));
      }
      if (numbered(to, 0).isPresent() || marked(to, 0).isPresent()) {
        throw new SelectionException(
            "In %s, %s does not come after %s: name the earlier place first, as in 9-24 or B-D."
                .formatted(partName, to, from));
      }
      return Optional.empty();
    }

    private OptionalInt numbered(String number, int from) {
      return find(m -> m.number().equals(number), from);
    }

    private OptionalInt marked(String mark, int from) {
      if (mark.isEmpty()) {
        return OptionalInt.empty();
      }
      OptionalInt exact = find(m -> m.rehearsal().equals(mark), from);
      return exact.isPresent() ? exact : find(m -> m.rehearsal().equalsIgnoreCase(mark), from);
    }

    private OptionalInt find(Predicate<Measure> wanted, int from) {
      return IntStream.range(from, measures.size())
          .filter(i -> wanted.test(measures.get(i)))
          .findFirst();
    }

    private int beforeMark(Predicate<String> mark, int from) {
      return find(m -> mark.test(m.rehearsal()), from).orElse(measures.size()) - 1;
    }

    /** The last section of a measure that a repeat or double bar divides. */
    private int endOf(int index) {
      Measure whole = measures.get(index);
      BigFraction full = new Meter(whole.beats(), whole.beatType()).length();
      BigFraction length = whole.length();
      int last = index;
      while (last + 1 < measures.size()) {
        Measure next = measures.get(last + 1);
        length = length.add(next.length());
        boolean completes = implicit.contains(next.index()) && length.compareTo(full) <= 0;
        if (!completes && !next.number().equals(whole.number())) {
          return last;
        }
        last++;
      }
      return last;
    }

    private MeasureRange range(int first, int last) {
      String number = measures.get(first).number();
      long times =
          IntStream.range(0, measures.size())
              .filter(i -> measures.get(i).number().equals(number) && !continues(i))
              .count();
      if (times <= 1 || first != numbered(number, 0).orElse(-1)) {
        return new MeasureRange(first, last, Optional.empty());
      }
      String remark =
          "measure %s occurs %d times in the part; the first one is used".formatted(number, times);
      int movements = Movements.of(measures).count();
      return new MeasureRange(
          first,
          last,
          Optional.of(
              movements > 1
                  ? remark
                      + "; for another, write its movement: movement %d, 9-24".formatted(movements)
                  : remark));
    }

    private boolean continues(int place) {
      return place > 0 && measures.get(place - 1).number().equals(measures.get(place).number());
    }

    private String choices() {
      ImmutableList<String> marks =
          measures.stream()
              .map(Measure::rehearsal)
              .filter(mark -> !mark.isEmpty())
              .distinct()
              .limit(MARKS_NAMED)
              .collect(ImmutableList.toImmutableList());
      String numbers = "it has measures " + runs();
      return marks.isEmpty()
          ? numbers + "; choose some of them, as in 9-24."
          : numbers
              + marks.stream()
                  .collect(
                      Collectors.joining(
                          ", ",
                          " and rehearsal marks ",
                          "; choose some of them, as in 9-24 or B-D."));
    }

    /** The ranges of numbers, which start again for each movement of the part. */
    private String runs() {
      List<String> runs = new ArrayList<>();
      int from = 0;
      OptionalInt before = OptionalInt.empty();
      for (int i = 0; i < measures.size(); i++) {
        OptionalInt number = integer(measures.get(i).number());
        if (number.isPresent()) {
          if (before.isPresent() && number.getAsInt() < before.getAsInt()) {
            runs.add(run(from, i - 1));
            from = i;
          }
          before = number;
        }
      }
      runs.add(run(from, measures.size() - 1));
      return String.join(", ", runs.subList(0, Math.min(runs.size(), RUNS_NAMED)));
    }

    private String run(int from, int to) {
      return "%s to %s".formatted(measures.get(from).number(), measures.get(to).number());
    }

    private static OptionalInt integer(String number) {
      Integer value = Ints.tryParse(number);
      return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
  }
}
