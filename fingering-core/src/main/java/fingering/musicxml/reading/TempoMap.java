package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tells the time of every place in a part, at the printed tempi or scaled to the one asked for. */
final class TempoMap {
  private static final double MINUTE_MICROS = 60e6;

  /** A mark up to this many measures behind the beginning is taken for the opening tempo. */
  private static final int OPENING_MEASURES = 1;

  /** Playback data that differ from the print by less than this are the print, rounded. */
  private static final double ROUNDING = 0.005;

  private static final Comparator<Mark> IN_TIME =
      Comparator.comparing(Mark::start, Quarters.ORDER).thenComparing(mark -> !mark.heard());

  private record Mark(BigFraction start, int measure, Tempo tempo, boolean heard) {
    double micros() {
      return MINUTE_MICROS / tempo.quartersPerMinute().doubleValue();
    }
  }

  /** From {@code start} on a quarter note takes {@code quarter} microseconds. */
  private record Stretch(double start, double startMicros, double quarter) {}

  /** A metronome mark that was scaled is told to so many decimals ... */
  private static final int DECIMALS = 2;

  /** ... and within what a mark can say. */
  private static final BigDecimal SLOWEST = new BigDecimal("0.01");

  private static final BigDecimal FASTEST = BigDecimal.valueOf(1000);

  private final ImmutableList<TempoChange> tempi;
  private final Optional<String> remark;
  private final List<Stretch> stretches = new ArrayList<>();

  /**
   * Lays the tempi of a score out along one of its parts.
   *
   * @param marks the tempi of all parts
   * @param measures the measures of the part
   * @param first the measure at which time 0 is
   * @param asked the tempo to begin with; the others change in proportion
   */
  TempoMap(
      List<TempoMark> marks,
      ImmutableList<Measure> measures,
      Measure first,
      Optional<Tempo> asked) {
    List<Mark> placed = placed(marks, measures);
    Optional<Mark> opening = opening(placed, first);
    Tempo printed = opening.map(Mark::tempo).orElse(Tempo.DEFAULT);
    Tempo tempo = asked.orElse(printed);
    remark =
        opening.isPresent() || asked.isPresent()
            ? Optional.empty()
            : Optional.of(
                placed.isEmpty()
                    ? "no tempo in the score; %s assumed".formatted(printed)
                    : "no tempo in the score before measure %s; %s assumed"
                        .formatted(measures.get(placed.get(0).measure()).number(), printed));
    double scale =
        printed.quartersPerMinute().doubleValue() / tempo.quartersPerMinute().doubleValue();
    double quarter = MINUTE_MICROS / printed.quartersPerMinute().doubleValue() * scale;
    Stretch last = new Stretch(Quarters.value(first.start()), 0, quarter);
    stretches.add(last);
    ImmutableList.Builder<TempoChange> changes = ImmutableList.builder();
    changes.add(new TempoChange(first.start(), tempo));
    for (Mark mark : placed) {
      if (Quarters.compare(mark.start(), first.start()) > 0) {
        changes.add(new TempoChange(mark.start(), faster(mark.tempo(), 1 / scale)));
        double start = Quarters.value(mark.start());
        last = new Stretch(start, micros(last, start), mark.micros() * scale);
        stretches.add(last);
      }
    }
    tempi = changes.build();
  }

  private static Tempo faster(Tempo tempo, double times) {
    if (times == 1) {
      return tempo;
    }
    BigDecimal scaled =
        BigDecimal.valueOf(tempo.perMinute().doubleValue() * times)
            .setScale(DECIMALS, RoundingMode.HALF_UP);
    return new Tempo(tempo.unit(), scaled.max(SLOWEST).min(FASTEST));
  }

  private static List<Mark> placed(List<TempoMark> marks, ImmutableList<Measure> measures) {
    List<Mark> all = new ArrayList<>();
    for (TempoMark mark : marks) {
      if (mark.measure() < measures.size()) {
        Measure measure = measures.get(mark.measure());
        BigFraction onset =
            Quarters.compare(mark.onset(), measure.length()) > 0 ? measure.length() : mark.onset();
        all.add(new Mark(measure.start().add(onset), measure.index(), mark.tempo(), mark.heard()));
      }
    }
    all.sort(IN_TIME);
    List<Mark> placed = new ArrayList<>();
    for (Mark mark : all) {
      Mark last = placed.isEmpty() ? null : placed.get(placed.size() - 1);
      if (last == null || !last.start().equals(mark.start())) {
        placed.add(mark);
      } else if (last.heard() && !mark.heard() && alike(last, mark)) {
        placed.set(placed.size() - 1, mark);
      }
    }
    return placed;
  }

  private static boolean alike(Mark heard, Mark printed) {
    return Math.abs(heard.micros() / printed.micros() - 1) < ROUNDING;
  }

  private static Optional<Mark> opening(List<Mark> placed, Measure first) {
    Optional<Mark> inEffect = Optional.empty();
    for (Mark mark : placed) {
      if (Quarters.compare(mark.start(), first.start()) <= 0) {
        inEffect = Optional.of(mark);
      }
    }
    return inEffect.or(
        () ->
            placed.stream()
                .findFirst()
                .filter(mark -> mark.measure() - first.index() <= OPENING_MEASURES));
  }

  /** The tempi, the first of them at the beginning, as they are asked for. */
  ImmutableList<TempoChange> tempi() {
    return tempi;
  }

  /** What was assumed where no tempo is printed. */
  Optional<String> remark() {
    return remark;
  }

  /** Whole microseconds from the beginning to a place, in quarter notes from the part's start. */
  long micros(BigFraction place) {
    double at = Quarters.value(place);
    return Math.round(micros(stretchAt(at), at));
  }

  /** How long a quarter note takes at a place, in microseconds. */
  double quarterMicros(BigFraction place) {
    return stretchAt(Quarters.value(place)).quarter();
  }

  private Stretch stretchAt(double place) {
    int low = 0;
    int high = stretches.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (stretches.get(middle).start() <= place) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return stretches.get(low);
  }

  private static double micros(Stretch stretch, double place) {
    return stretch.startMicros() + (place - stretch.start()) * stretch.quarter();
  }
}
