package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Relaxing edges with pruning, against trying every edge. */
class EdgeCostsTest {
  private static final long UNREACHABLE = ForwardPass.UNREACHABLE;

  private static CostMatrix matrix(Random random, int before, int now) {
    CostMatrix matrix = new CostMatrix(before, now);
    for (int i = 0; i < before; i++) {
      matrix.put(i, random.longs(now, 0, 30).toArray());
    }
    return matrix;
  }

  private static long[] scores(Random random, int many) {
    return random.longs(many, 0, 60).map(score -> score < 15 ? UNREACHABLE : score).toArray();
  }

  private static EdgeCosts edges(Random random, int before, int now) {
    return new EdgeCosts(matrix(random, before, now));
  }

  @Property(tries = 500)
  void everyGripIsReachedAtTheLowestScore(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 6) int before,
      @ForAll @IntRange(min = 1, max = 6) int now) {
    Random random = new Random(seed);
    EdgeCosts edges = edges(random, before, now);
    long[] left = scores(random, before);
    long[] lowest = new long[now];
    Arrays.fill(lowest, UNREACHABLE);
    for (int i = 0; i < before; i++) {
      for (int j = 0; j < now && left[i] != UNREACHABLE; j++) {
        lowest[j] = Math.min(lowest[j], left[i] + edges.cost(i, j));
      }
    }
    long[] reached = new long[now];
    Arrays.fill(reached, UNREACHABLE);
    edges.relax(left, reached);
    assertThat(reached).isEqualTo(lowest);
  }
}
