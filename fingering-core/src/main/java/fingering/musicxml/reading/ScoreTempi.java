package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Tempo;
import fingering.musicxml.element.Meter;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import fingering.musicxml.element.TempoWord;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.words.TempoWords.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Places the tempi of a score, printed in any of its parts, in the time of one part. Words count
 * only where there is no number: the number is what this composer or editor wants, the word is a
 * habit.
 */
final class ScoreTempi {

  /**
   * Playback tempi within this relative distance of the printed tempo are the printed one, rounded.
   */
  private static final double ROUNDING = 0.005;

  /** A number this close to words is for them: programs place one a little beside the other. */
  private static final BigFraction NEAR = BigFraction.ONE;

  private static final Comparator<PlacedTempo> IN_TIME =
      Comparator.comparing(PlacedTempo::start, Quarters.ORDER)
          .thenComparing(mark -> !mark.playback());

  private static final double PERCENT = 100;

  /** The fastest tempo that a change such as più mosso leads to. */
  private static final BigDecimal FASTEST = BigDecimal.valueOf(400);

  private record Placed(BigFraction start, TempoWord word) {}

  private final ImmutableList<Measure> measures;
  private final List<PlacedTempo> placed = new ArrayList<>();

  /** The first tempo of each movement, by the index of its first measure. */
  private final Map<Integer, Tempo> firstTempi = new HashMap<>();

  private final int[] movements;

  private ScoreTempi(ImmutableList<Measure> measures) {
    this.measures = measures;
    movements = movements(measures);
  }

  /**
   * Returns the tempi in order, one at each time.
   *
   * @param timelines all parts of the score
   * @param measures the measures of the part
   */
  static ImmutableList<PlacedTempo> of(
      List<PartTimeline> timelines, ImmutableList<Measure> measures) {
    ScoreTempi tempi = new ScoreTempi(measures);
    tempi.merge(numbers(timelines, measures), words(timelines, measures));
    return ImmutableList.copyOf(tempi.placed);
  }

  /** Returns the times at which words give a new tempo, whether a number is there too or not. */
  static ImmutableList<BigFraction> wordStarts(
      List<PartTimeline> timelines, ImmutableList<Measure> measures) {
    return words(timelines, measures).stream()
        .filter(each -> each.word().instruction().kind() != Kind.AGAIN)
        .map(Placed::start)
        .distinct()
        .collect(ImmutableList.toImmutableList());
  }

  private static List<Placed> words(List<PartTimeline> timelines, ImmutableList<Measure> measures) {
    return timelines.stream()
        .flatMap(timeline -> timeline.tempoWords().stream())
        .filter(word -> word.measure() < measures.size())
        .map(word -> new Placed(start(measures.get(word.measure()), word.onset()), word))
        .sorted(Comparator.comparing(Placed::start, Quarters.ORDER))
        .toList();
  }

  private static BigFraction start(Measure measure, BigFraction onset) {
    return measure
        .start()
        .add(Quarters.compare(onset, measure.length()) > 0 ? measure.length() : onset);
  }

  private static List<PlacedTempo> numbers(
      List<PartTimeline> timelines, ImmutableList<Measure> measures) {
    List<PlacedTempo> all = new ArrayList<>();
    for (PartTimeline timeline : timelines) {
      for (TempoMark mark : timeline.tempi()) {
        if (mark.measure() < measures.size()) {
          Measure measure = measures.get(mark.measure());
          all.add(
              new PlacedTempo(
                  start(measure, mark.onset()),
                  measure.index(),
                  measure.number(),
                  mark.tempo(),
                  mark.playback(),
                  "",
                  false));
        }
      }
    }
    all.sort(IN_TIME);
    List<PlacedTempo> single = new ArrayList<>();
    for (PlacedTempo mark : all) {
      PlacedTempo last = single.isEmpty() ? null : single.get(single.size() - 1);
      if (last == null || !last.start().equals(mark.start())) {
        single.add(mark);
      } else if (last.playback() && !mark.playback() && isSame(last, mark)) {
        single.set(single.size() - 1, mark);
      }
    }
    return single;
  }

  private static boolean isSame(PlacedTempo playback, PlacedTempo printed) {
    double ratio =
        playback.tempo().quartersPerMinute().doubleValue()
            / printed.tempo().quartersPerMinute().doubleValue();
    return Math.abs(ratio - 1) < ROUNDING;
  }

  /** The first measure of the movement of each measure: one numbered 1, or a pickup before it. */
  private static int[] movements(ImmutableList<Measure> measures) {
    int[] movements = new int[measures.size()];
    for (int i = 1; i < movements.length; i++) {
      boolean pickup = measures.get(i).number().equals("0");
      boolean first =
          measures.get(i).number().equals("1") && !measures.get(i - 1).number().equals("0");
      movements[i] = pickup || first ? i : movements[i - 1];
    }
    return movements;
  }

  private void merge(List<PlacedTempo> numbers, List<Placed> words) {
    Optional<PlacedTempo> opening =
        numbers.stream()
            .findFirst()
            .filter(number -> number.measure() <= TempoMap.OPENING_MEASURES);
    Optional<PlacedTempo> lastNumber = Optional.empty();
    int next = 0;
    for (Placed each : words) {
      while (next < numbers.size()
          && Quarters.compare(numbers.get(next).start(), each.start()) <= 0) {
        lastNumber = Optional.of(numbers.get(next));
        add(numbers.get(next++));
      }
      boolean numbered =
          lastNumber.filter(number -> isNear(number, each)).isPresent()
              || (next < numbers.size() && isNear(numbers.get(next), each))
              // A number after the pickup is for words over the pickup too.
              || (each.word().measure() == 0 && opening.isPresent());
      boolean doubled =
          last().filter(one -> one.worded() && one.start().equals(each.start())).isPresent();
      if (!numbered && !doubled) {
        tempo(each.word()).ifPresent(tempo -> add(placed(each, tempo)));
      }
    }
    numbers.subList(next, numbers.size()).forEach(this::add);
  }

  private static boolean isNear(PlacedTempo number, Placed word) {
    return Quarters.compare(number.start().subtract(word.start()).abs(), NEAR) <= 0;
  }

  private PlacedTempo placed(Placed each, Tempo tempo) {
    TempoWord word = each.word();
    boolean change = word.instruction().kind() == Kind.PERCENT;
    return new PlacedTempo(
        each.start(),
        word.measure(),
        measures.get(word.measure()).number(),
        tempo,
        false,
        word.words(),
        change);
  }

  private void add(PlacedTempo tempo) {
    placed.add(tempo);
    firstTempi.putIfAbsent(movements[tempo.measure()], tempo.tempo());
  }

  private Optional<PlacedTempo> last() {
    return placed.isEmpty() ? Optional.empty() : Optional.of(placed.get(placed.size() - 1));
  }

  private Optional<Tempo> tempo(TempoWord word) {
    int number = word.instruction().number();
    Measure measure = measures.get(word.measure());
    return switch (word.instruction().kind()) {
      case BEATS ->
          Optional.of(TempoWord.tempo(number, new Meter(measure.beats(), measure.beatType())));
      case PERCENT -> last().map(before -> times(before.tempo(), number / PERCENT));
      case FIRST -> Optional.ofNullable(firstTempi.get(movements[word.measure()]));
      case AGAIN -> beforeChange();
    };
  }

  /** The tempo before the words that changed it; empty if no words did. */
  private Optional<Tempo> beforeChange() {
    int at = placed.size() - 1;
    while (at >= 0 && placed.get(at).change()) {
      at--;
    }
    return at < 0 || at == placed.size() - 1
        ? Optional.empty()
        : Optional.of(placed.get(at).tempo());
  }

  private static Tempo times(Tempo tempo, double factor) {
    BigDecimal changed =
        BigDecimal.valueOf(tempo.perMinute().doubleValue() * factor)
            .setScale(0, RoundingMode.HALF_UP);
    return new Tempo(tempo.unit(), changed.max(BigDecimal.ONE).min(FASTEST));
  }
}
