package fingering.practice;

import fingering.music.Tempo;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How small the steps of a ladder are: a twentieth of the tempo where the plan is at ease, half of
 * that near its highest comfortable tempo, a quarter above it; but never less than one setting of
 * the metronome, and such a step is held for more days instead (common practice, no source).
 *
 * @param metronome what the metronome can be set to
 * @param comfort the highest comfortable tempo, in the unit of the ladder; empty where nothing
 *     limits the plan
 */
public record StepSize(MetronomeScale metronome, Optional<Tempo> comfort) {
  /** From this share of the comfortable tempo on, steps are smaller. */
  private static final BigDecimal NEAR = new BigDecimal("0.85");

  private static final BigDecimal AT_EASE = new BigDecimal("0.05");
  private static final BigDecimal NEAR_COMFORT = new BigDecimal("0.025");
  private static final BigDecimal ABOVE_COMFORT = new BigDecimal("0.0125");
  private static final int DECIMALS = 6;

  /** Where the smaller steps begin; empty where nothing limits the plan. */
  public Optional<Tempo> smallerFrom() {
    return comfort.map(
        tempo ->
            new Tempo(
                tempo.unit(), tempo.perMinute().multiply(NEAR).setScale(2, RoundingMode.DOWN)));
  }

  /** The step that is small enough at a tempo, as a share of it. */
  public BigDecimal share(Tempo tempo) {
    if (comfort.isEmpty() || tempo.perMinute().compareTo(near()) < 0) {
      return AT_EASE;
    }
    boolean above = tempo.perMinute().compareTo(comfort.get().perMinute()) >= 0;
    return above ? ABOVE_COMFORT : NEAR_COMFORT;
  }

  private BigDecimal near() {
    return comfort.orElseThrow().perMinute().multiply(NEAR);
  }

  /** The tempo one step up: as far as is small enough, or the next setting. */
  public Tempo up(Tempo tempo) {
    BigDecimal far = tempo.perMinute().multiply(BigDecimal.ONE.add(share(tempo)));
    Tempo next = metronome.above(tempo);
    if (next.perMinute().compareTo(far) >= 0) {
      return next;
    }
    return metronome.atMost(new Tempo(tempo.unit(), far.setScale(DECIMALS, RoundingMode.DOWN)));
  }

  /** A tempo about one step down that is a setting, and lower. */
  public Tempo down(Tempo tempo) {
    BigDecimal less =
        tempo
            .perMinute()
            .divide(BigDecimal.ONE.add(share(tempo)), DECIMALS, RoundingMode.DOWN)
            .stripTrailingZeros();
    Tempo lower = metronome.atMost(new Tempo(tempo.unit(), less));
    // Rounded down it may lie more than a step away, and the next setting still be lower.
    Tempo next = metronome.above(lower);
    return next.perMinute().compareTo(tempo.perMinute()) < 0 ? next : lower;
  }

  /** For how many days a step to the next tempo is prepared, so that each gains little enough. */
  int days(Tempo from, Tempo to) {
    BigDecimal gain =
        to.perMinute()
            .subtract(from.perMinute())
            .divide(from.perMinute(), DECIMALS, RoundingMode.HALF_UP);
    return gain.divide(share(from), 0, RoundingMode.HALF_UP).max(BigDecimal.ONE).intValueExact();
  }
}
