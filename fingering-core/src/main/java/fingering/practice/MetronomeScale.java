package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** The tempi that a metronome can be set to, in beats a minute. */
public enum MetronomeScale {
  /** All whole numbers; below 20 all tenths. */
  EXACT,

  /**
   * The marks of the traditional pendulum metronome, Maelzel's: from 40 by twos to 60, by threes to
   * 72, by fours to 120, by sixes to 144, by eights to 208 (common practice, from memory). Below
   * 40, halves of the marks, because the metronome clicks a shorter value; above 208, doubles of
   * the marks, because it clicks a longer one.
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

  /** Returns the marks of the traditional metronome, 40 to 208. */
  public static ImmutableList<Integer> marks() {
    return MARKS;
  }

  /** Returns the fastest setting that is not above the tempo; the tempo itself if all are above. */
  public Tempo atMost(Tempo tempo) {
    BigDecimal perMinute = tempo.perMinute();
    return switch (this) {
      case TRADITIONAL ->
          Optional.ofNullable(SCALE.floor(perMinute)).map(found -> at(tempo, found)).orElse(tempo);
      case EXACT -> {
        BigDecimal down = roundedDown(perMinute);
        yield down.signum() > 0 ? at(tempo, down) : tempo;
      }
    };
  }

  /** Returns the slowest setting above the tempo; if there is none, the fastest or the tempo. */
  public Tempo above(Tempo tempo) {
    BigDecimal perMinute = tempo.perMinute();
    return switch (this) {
      case TRADITIONAL ->
          Optional.ofNullable(SCALE.higher(perMinute)).map(found -> at(tempo, found)).orElse(tempo);
      case EXACT -> {
        BigDecimal up = roundedDown(perMinute).add(grain(perMinute));
        yield at(tempo, up.min(FASTEST));
      }
    };
  }

  private static BigDecimal roundedDown(BigDecimal perMinute) {
    BigDecimal grain = grain(perMinute);
    return perMinute.divide(grain, 0, RoundingMode.DOWN).multiply(grain);
  }

  private static BigDecimal grain(BigDecimal perMinute) {
    return perMinute.compareTo(FINE) < 0 ? TENTH : BigDecimal.ONE;
  }

  private static Tempo at(Tempo tempo, BigDecimal perMinute) {
    return new Tempo(tempo.unit(), perMinute);
  }
}
