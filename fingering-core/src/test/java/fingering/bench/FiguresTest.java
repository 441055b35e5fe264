package fingering.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The figures of benchmarks. */
final class FiguresTest {
  @Test
  void timesOfTheSameRoundAreCompared() {
    Figures figures = new Figures();
    for (double load : new double[] {1, 5, 1, 2}) { // on a machine that is not equally fast
      figures.add("reading", 30 * load);
      figures.add("planning", 10 * load);
    }
    assertThat(figures.ratio("reading", "planning").median()).isEqualTo(3);
    assertThat(figures.ratio("reading", "planning").disagreement()).isZero();
    assertThat(figures.time("planning", 1).median()).isEqualTo(15);
  }

  @Test
  void oddAndEvenRoundsAreTwoRuns() {
    Figures figures = new Figures();
    for (double time : new double[] {10, 12, 10, 12, 50}) {
      figures.add("search", time);
    }
    assertThat(figures.time("search", 0.001).median()).isEqualTo(0.012);
    assertThat(figures.time("search", 1).disagreement()).isEqualTo(0.2, within(1e-9));
  }
}
