package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The ways between the grips of two moments, against trying every one of them. */
class EdgeCostViewTest {
  private static final long NONE = ForwardPass.NONE;

  private static CostMatrix table(Random random, int before, int now) {
    CostMatrix table = new CostMatrix(before, now);
    for (int i = 0; i < before; i++) {
      for (int j = 0; j < now; j++) {
        table.put(i, j, random.nextInt(30));
      }
    }
    return table;
  }

  private static long[] sums(Random random, int many) {
    return random.longs(many, 0, 60).map(sum -> sum < 15 ? NONE : sum).toArray();
  }

  private static EdgeCostView ways(Random random, int before, int now, int slowness) {
    Optional<CostMatrix> paced =
        random.nextInt(3) == 0 ? Optional.empty() : Optional.of(table(random, before, now));
    return new EdgeCostView(new EdgeCosts(table(random, before, now), paced), slowness);
  }

  @Property(tries = 500)
  void everyGripIsReachedAtTheLeastSumHoweverSlowTheMusic(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 6) int before,
      @ForAll @IntRange(min = 1, max = 6) int now,
      @ForAll @IntRange(min = 0, max = 3) int slowness) {
    Random random = new Random(seed);
    EdgeCostView ways = ways(random, before, now, slowness);
    long[] left = sums(random, before);
    long[] least = new long[now];
    Arrays.fill(least, NONE);
    for (int i = 0; i < before; i++) {
      for (int j = 0; j < now && left[i] != NONE; j++) {
        least[j] = Math.min(least[j], left[i] + ways.cost(i, j));
      }
    }
    long[] reached = new long[now];
    Arrays.fill(reached, NONE);
    assertThat(ways.reach(left, reached))
        .isEqualTo(Arrays.stream(left).anyMatch(sum -> sum != NONE));
    assertThat(reached).isEqualTo(least);
  }

  @Property(tries = 500)
  void theLeastSumOnwardIsThatOfTheBestWayThatLeadsToTheEnd(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 6) int now,
      @ForAll @IntRange(min = 0, max = 3) int slowness) {
    Random random = new Random(seed);
    EdgeCostView ways = ways(random, 2, now, slowness);
    long[] sums = sums(random, now);
    long least = NONE;
    for (int j = 0; j < now; j++) {
      least = sums[j] == NONE ? least : Math.min(least, sums[j] + ways.cost(1, j));
    }
    assertThat(ways.onward(1, sums)).isEqualTo(least);
  }

  @Test
  void theSlowerTheMusicTheMoreAWayCosts() {
    CostMatrix points = new CostMatrix(1, 1);
    points.put(0, 0, 7);
    CostMatrix paced = new CostMatrix(1, 1);
    paced.put(0, 0, 2);
    assertThat(new EdgeCosts(points, Optional.of(paced)).cost(0, 0, 10)).isEqualTo(27);
    assertThat(new EdgeCosts(points, Optional.empty()).cost(0, 0, 10)).isEqualTo(7);
  }
}
