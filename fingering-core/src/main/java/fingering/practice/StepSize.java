package fingering.practice;

import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The size of the steps of a ladder: 5 % of the tempo well below the plan's highest comfortable
 * tempo, half of that near it, and a quarter above it. A step is at least one setting of the
 * metronome; one that is larger than it should be is prepared for several days (common practice, no
 * source).
 *
 * @param metronome the settings of the metronome
 * @param comfort the highest comfortable tempo, in any unit; empty if nothing limits the plan
 */
public record StepSize(MetronomeScale metronome, Optional<Tempo> comfort) {
  /** Above this share of the comfortable tempo, steps are smaller. */
  private static final BigFraction NEAR = BigFraction.of(85, 100);

  private static final BigDecimal AT_EASE = new BigDecimal("0.05");
  private static final BigDecimal NEAR_COMFORT = new BigDecimal("0.025");
  private static final BigDecimal ABOVE_COMFORT = new BigDecimal("0.0125");
  private static final BigDecimal FASTEST = BigDecimal.valueOf(1000);
  private static final int DECIMALS = 6;

  /**
   * Returns the tempo at which smaller steps begin, in the unit of the comfortable tempo; empty if
   * nothing limits the plan.
   */
  public Optional<Tempo> smallerFrom() {
    return comfort.map(
        tempo ->
            new Tempo(
                tempo.unit(),
                tempo.perMinute().multiply(NEAR.bigDecimalValue()).setScale(2, RoundingMode.DOWN)));
  }

  /** Returns the size of a step from a tempo, as a share of it. */
  public BigDecimal share(Tempo tempo) {
    if (comfort.isEmpty()) {
      return AT_EASE;
    }
    // Compared in quarters, because the two tempi may count different note values.
    BigFraction share = tempo.quartersPerMinute().divide(comfort.get().quartersPerMinute());
    if (share.compareTo(NEAR) < 0) {
      return AT_EASE;
    }
    return share.compareTo(BigFraction.ONE) >= 0 ? ABOVE_COMFORT : NEAR_COMFORT;
  }

  /** Returns the tempo one step up, at least the next setting of the metronome. */
  public Tempo up(Tempo tempo) {
    BigDecimal far = tempo.perMinute().multiply(BigDecimal.ONE.add(share(tempo))).min(FASTEST);
    Tempo next = metronome.above(tempo);
    if (next.perMinute().compareTo(far) >= 0) {
      return next;
    }
    Tempo further =
        metronome.atMost(new Tempo(tempo.unit(), far.setScale(DECIMALS, RoundingMode.DOWN)));
    // Above the fastest setting, rounding down to a setting would go back.
    return further.perMinute().compareTo(next.perMinute()) < 0 ? next : further;
  }

  /** Returns a setting about one step down; it is always slower. */
  public Tempo down(Tempo tempo) {
    BigDecimal less =
        tempo
            .perMinute()
            .divide(BigDecimal.ONE.add(share(tempo)), DECIMALS, RoundingMode.DOWN)
            .stripTrailingZeros();
    Tempo lower = metronome.atMost(new Tempo(tempo.unit(), less));
    // Rounding down may have gone further than one step: take the next setting if it is slower too.
    Tempo next = metronome.above(lower);
    return next.perMinute().compareTo(tempo.perMinute()) < 0 ? next : lower;
  }

  /** Returns how many days a step takes: more than one if it is larger than it should be. */
  int daysFor(Tempo from, Tempo to) {
    BigDecimal gain =
        to.perMinute()
            .subtract(from.perMinute())
            .divide(from.perMinute(), DECIMALS, RoundingMode.HALF_UP);
    return gain.divide(share(from), 0, RoundingMode.HALF_UP).max(BigDecimal.ONE).intValueExact();
  }
}
