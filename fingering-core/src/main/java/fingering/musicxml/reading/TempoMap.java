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

/** Converts positions in a part to time, at the printed tempi or scaled to the requested tempo. */
final class TempoMap {
  private static final double MINUTE_MICROS = 60e6;

  /** A tempo mark up to this many measures after the beginning is read as the opening tempo. */
  private static final int OPENING_MEASURES = 1;

  /**
   * Playback tempi within this relative distance of the printed tempo are the printed one, rounded.
   */
  private static final double ROUNDING = 0.005;

  private static final Comparator<Mark> IN_TIME =
      Comparator.comparing(Mark::start, Quarters.ORDER).thenComparing(mark -> !mark.playback());

  private record Mark(BigFraction start, int measure, Tempo tempo, boolean playback) {
    double micros() {
      return MINUTE_MICROS / tempo.quartersPerMinute().doubleValue();
    }
  }

  /** A segment of constant tempo, in which a quarter note takes {@code quarter} microseconds. */
  private record Segment(double start, double startMicros, double quarter) {}

  /** Decimals of a scaled tempo. */
  private static final int DECIMALS = 2;

  /** The slowest and fastest tempo of a mark. */
  private static final BigDecimal SLOWEST = new BigDecimal("0.01");

  private static final BigDecimal FASTEST = BigDecimal.valueOf(1000);

  private final ImmutableList<TempoChange> tempi;
  private final Optional<String> remark;
  private final List<Segment> segments = new ArrayList<>();

  /**
   * Maps the tempi of a score to one of its parts.
   *
   * @param marks the tempo marks of all parts
   * @param measures the measures of the part
   * @param first the measure that begins at time 0
   * @param wanted the tempo at the beginning; later tempi change in proportion
   */
  TempoMap(
      List<TempoMark> marks,
      ImmutableList<Measure> measures,
      Measure first,
      Optional<Tempo> wanted) {
    List<Mark> placed = placed(marks, measures);
    Optional<Mark> opening = opening(placed, first);
    Tempo printed = opening.map(Mark::tempo).orElse(Tempo.DEFAULT);
    Tempo tempo = wanted.orElse(printed);
    remark =
        opening.isPresent() || wanted.isPresent()
            ? Optional.empty()
            : Optional.of(
                placed.isEmpty()
                    ? "no tempo in the score; %s assumed".formatted(printed)
                    : "no tempo in the score before measure %s; %s assumed"
                        .formatted(measures.get(placed.get(0).measure()).number(), printed));
    double scale =
        printed.quartersPerMinute().doubleValue() / tempo.quartersPerMinute().doubleValue();
    double quarter = MINUTE_MICROS / printed.quartersPerMinute().doubleValue() * scale;
    Segment last = new Segment(Quarters.value(first.start()), 0, quarter);
    segments.add(last);
    ImmutableList.Builder<TempoChange> changes = ImmutableList.builder();
    changes.add(new TempoChange(first.start(), tempo));
    for (Mark mark : placed) {
      if (Quarters.compare(mark.start(), first.start()) > 0) {
        changes.add(new TempoChange(mark.start(), faster(mark.tempo(), 1 / scale)));
        double start = Quarters.value(mark.start());
        last = new Segment(start, micros(last, start), mark.micros() * scale);
        segments.add(last);
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
        all.add(
            new Mark(measure.start().add(onset), measure.index(), mark.tempo(), mark.playback()));
      }
    }
    all.sort(IN_TIME);
    List<Mark> placed = new ArrayList<>();
    for (Mark mark : all) {
      Mark last = placed.isEmpty() ? null : placed.get(placed.size() - 1);
      if (last == null || !last.start().equals(mark.start())) {
        placed.add(mark);
      } else if (last.playback() && !mark.playback() && isSame(last, mark)) {
        placed.set(placed.size() - 1, mark);
      }
    }
    return placed;
  }

  private static boolean isSame(Mark playback, Mark printed) {
    return Math.abs(playback.micros() / printed.micros() - 1) < ROUNDING;
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

  /** Returns the tempi, scaled as requested; the first one is at the beginning. */
  ImmutableList<TempoChange> tempi() {
    return tempi;
  }

  /** Returns a remark on the tempo if none is printed; otherwise empty. */
  Optional<String> remark() {
    return remark;
  }

  /**
   * Returns the microseconds from the beginning to a position in quarter notes from the part's
   * start.
   */
  long micros(BigFraction place) {
    double at = Quarters.value(place);
    return Math.round(micros(segmentAt(at), at));
  }

  /** Returns the length of a quarter note at a position, in microseconds. */
  double quarterMicros(BigFraction place) {
    return segmentAt(Quarters.value(place)).quarter();
  }

  private Segment segmentAt(double place) {
    int low = 0;
    int high = segments.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (segments.get(middle).start() <= place) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return segments.get(low);
  }

  private static double micros(Segment segment, double place) {
    return segment.startMicros() + (place - segment.start()) * segment.quarter();
  }
}
