package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.verdict.PlanFigures;
import org.junit.jupiter.api.Test;

/** What is counted in plans, in words and numbers. */
class PlanFigureTest {
  @Test
  void nounsFollowTheNumber() {
    assertThat(PlanFigure.CROSSINGS.counted(0)).isEqualTo("0 string crossings");
    assertThat(PlanFigure.CROSSINGS.counted(1)).isEqualTo("1 string crossing");
    assertThat(PlanFigure.SHIFTS.counted(2)).isEqualTo("2 shifts");
    assertThat(PlanFigure.FOURTH_FINGERS.heading()).isEqualTo("Fourth fingers");
  }

  @Test
  void everyFigureHasItsOwnNumber() {
    PlanFigures figures = new PlanFigures(1, 2, 3);
    assertThat(PlanFigure.values()).extracting(figures::count).containsExactly(1, 2, 3);
  }
}
