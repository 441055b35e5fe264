package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.xml.XmlText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Converts positions in a part to time, at the printed tempi or scaled to the requested tempo. */
final class TempoMap {
  private static final double MINUTE_MICROS = 60e6;

  /** A remark lists this many tempi from words. */
  private static final int LISTED = 4;

  /** A tempo mark up to this many measures after the beginning is read as the opening tempo. */
  static final int OPENING_MEASURES = 1;

  /** A segment of constant tempo, in which a quarter note takes {@code quarter} microseconds. */
  private record Segment(double start, double startMicros, double quarter) {}

  /** Decimals of a scaled tempo. */
  private static final int DECIMALS = 2;

  /** The slowest and fastest tempo of a mark. */
  private static final BigDecimal SLOWEST = new BigDecimal("0.01");

  private static final BigDecimal FASTEST = BigDecimal.valueOf(1000);

  private final ImmutableList<TempoChange> tempi;
  private final ImmutableList<String> remarks;
  private final List<Segment> segments = new ArrayList<>();

  /**
   * Maps the tempi of a score to one of its parts.
   *
   * @param placed the tempi, in order of time
   * @param passage the measures to map, at least one; the first begins at time 0
   * @param wanted the tempo at the beginning; later tempi change in proportion
   */
  TempoMap(List<PlacedTempo> placed, List<Measure> passage, Optional<Tempo> wanted) {
    Measure first = passage.get(0);
    int lastMeasure = passage.get(passage.size() - 1).index();
    Optional<PlacedTempo> opening = opening(placed, first);
    Tempo printed = opening.map(PlacedTempo::tempo).orElse(Tempo.DEFAULT);
    Tempo tempo = wanted.orElse(printed);
    double scale =
        printed.quartersPerMinute().doubleValue() / tempo.quartersPerMinute().doubleValue();
    double quarter = MINUTE_MICROS / printed.quartersPerMinute().doubleValue() * scale;
    Segment last = new Segment(Quarters.value(first.start()), 0, quarter);
    segments.add(last);
    ImmutableList.Builder<TempoChange> changes = ImmutableList.builder();
    changes.add(new TempoChange(first.start(), tempo));
    List<String> worded = new ArrayList<>();
    if (wanted.isEmpty()) {
      opening
          .filter(PlacedTempo::worded)
          .filter(mark -> Quarters.compare(mark.start(), first.start()) <= 0)
          .ifPresent(mark -> worded.add(described(mark, tempo)));
    }
    for (PlacedTempo mark : placed) {
      if (Quarters.compare(mark.start(), first.start()) > 0) {
        Tempo scaled = faster(mark.tempo(), 1 / scale);
        changes.add(new TempoChange(mark.start(), scaled));
        if (mark.worded() && mark.measure() <= lastMeasure) {
          worded.add(described(mark, scaled));
        }
        double start = Quarters.value(mark.start());
        double length = MINUTE_MICROS / mark.tempo().quartersPerMinute().doubleValue();
        last = new Segment(start, micros(last, start), length * scale);
        segments.add(last);
      }
    }
    tempi = changes.build();
    ImmutableList.Builder<String> found = ImmutableList.builder();
    if (opening.isEmpty() && wanted.isEmpty()) {
      found.add(assumed(placed));
    }
    if (!worded.isEmpty()) {
      found.add(fromWords(worded));
    }
    remarks = found.build();
  }

  private static String assumed(List<PlacedTempo> placed) {
    return placed.isEmpty()
        ? "no tempo in the score; %s assumed".formatted(Tempo.DEFAULT)
        : "no tempo in the score before measure %s; %s assumed"
            .formatted(placed.get(0).number(), Tempo.DEFAULT);
  }

  private static String fromWords(List<String> worded) {
    int more = worded.size() - LISTED;
    return (worded.size() == 1 ? "tempo from words: " : "tempi from words: ")
        + worded.stream().limit(LISTED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + (more == 1 ? " more place" : " more places") : "");
  }

  private static String described(PlacedTempo mark, Tempo tempo) {
    return "'%s' in m. %s is %s".formatted(XmlText.printable(mark.words()), mark.number(), tempo);
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

  private static Optional<PlacedTempo> opening(List<PlacedTempo> placed, Measure first) {
    Optional<PlacedTempo> inEffect = Optional.empty();
    for (PlacedTempo mark : placed) {
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

  /** Returns remarks on tempi that are assumed, or come from words. */
  ImmutableList<String> remarks() {
    return remarks;
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
