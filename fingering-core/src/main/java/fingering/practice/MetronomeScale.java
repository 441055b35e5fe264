package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** The settings of a metronome, in beats a minute. */
public enum MetronomeScale {
  /** Every whole number; below 20 every tenth. */
  EXACT,

  /**
   * The marks of the traditional pendulum metronome, Maelzel's: from 40 by twos to 60, by threes to
   * 72, by fours to 120, by sixes to 144, by eights to 208 (common practice, from memory). Below 40
   * halves of the marks, for the clicks are subdivided there; above 208 the marks twice, for they
   * count a longer value.
   */
  TRADITIONAL;

  private static final BigDecimal FINE = BigDecimal.valueOf(20);
  private static final BigDecimal TENTH = new BigDecimal("0.1");
  private static final BigDecimal FASTEST = BigDecimal.valueOf(1000);
  private static final ImmutableList<Integer> MARKS =
      ImmutableList.of(
          40, 42, 44, 46, 48, 50, 52, 54, 56, 58, 60, 63, 66, 69, 72, 76, 80, 84, 88, 92, 96, 100,
          104, 108, 112, 116, 120, 126, 132, 138, 144, 152, 160, 168, 176, 184, 192, 200, 208);
  private static final ImmutableSortedSet<BigDecimal> SCALE = scale();

  private static ImmutableSortedSet<BigDecimal> scale() {
    ImmutableSortedSet.Builder<BigDecimal> scale = ImmutableSortedSet.naturalOrder();
    BigDecimal first = BigDecimal.valueOf(MARKS.get(0));
    BigDecimal last = BigDecimal.valueOf(MARKS.get(MARKS.size() - 1));
    for (int mark : MARKS) {
      scale.add(BigDecimal.valueOf(mark));
      for (String share : List.of("0.5", "0.25", "0.125")) {
        BigDecimal slow = new BigDecimal(share);
        BigDecimal perMinute = BigDecimal.valueOf(mark).multiply(slow);
        if (perMinute.compareTo(first.multiply(slow).multiply(BigDecimal.valueOf(2))) < 0) {
          scale.add(perMinute.stripTrailingZeros());
        }
      }
      for (int times : List.of(2, 4)) {
        BigDecimal perMinute = BigDecimal.valueOf((long) mark * times);
        if (perMinute.compareTo(last.multiply(BigDecimal.valueOf(times / 2))) > 0) {
          scale.add(perMinute);
        }
      }
    }
    return scale.build();
  }

  /** The marks of the traditional scale itself, 40 to 208. */
  public static ImmutableList<Integer> marks() {
    return MARKS;
  }

  /** The highest setting that is no faster; the tempo itself where there is none so slow. */
  public Tempo atMost(Tempo tempo) {
    BigDecimal perMinute = tempo.perMinute();
    return switch (this) {
      case TRADITIONAL ->
          Optional.ofNullable(SCALE.floor(perMinute)).map(found -> at(tempo, found)).orElse(tempo);
      case EXACT -> {
        BigDecimal grain = grain(perMinute);
        BigDecimal down = perMinute.divide(grain, 0, RoundingMode.DOWN).multiply(grain);
        yield down.signum() > 0 ? at(tempo, down) : tempo;
      }
    };
  }

  /** The lowest setting that is faster; the tempo itself where there is none so fast. */
  public Tempo above(Tempo tempo) {
    BigDecimal perMinute = tempo.perMinute();
    return switch (this) {
      case TRADITIONAL ->
          Optional.ofNullable(SCALE.higher(perMinute)).map(found -> at(tempo, found)).orElse(tempo);
      case EXACT -> {
        BigDecimal grain = grain(perMinute);
        BigDecimal down = perMinute.divide(grain, 0, RoundingMode.DOWN).multiply(grain);
        yield at(tempo, down.add(grain).min(FASTEST));
      }
    };
  }

  private static BigDecimal grain(BigDecimal perMinute) {
    return perMinute.compareTo(FINE) < 0 ? TENTH : BigDecimal.ONE;
  }

  private static Tempo at(Tempo tempo, BigDecimal perMinute) {
    return new Tempo(tempo.unit(), perMinute);
  }
}
