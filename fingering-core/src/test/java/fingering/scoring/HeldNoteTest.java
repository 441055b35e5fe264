package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Music;
import fingering.music.Passage;
import org.junit.jupiter.api.Test;

class HeldNoteTest {

  @Test
  void anotherFingerOnAHeldNoteTakesItOver() {
    TransitionRule rule =
        Rules.all().stream()
            .filter(r -> r.id().equals("held-note"))
            .map(TransitionRule.class::cast)
            .findFirst()
            .orElseThrow();
    Passage passage = Music.viola().notes("D3*2+B3/1 C4/1");
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    Passing passing = Passing.between(passage.moments().get(0), passage.moments().get(1));
    int letGo = 0;
    for (Grip before : finder.grips(passage.moments().get(0))) {
      for (Grip now : finder.grips(passage.moments().get(1))) {
        boolean kept =
            before.placements().get(0).string() == now.placements().get(0).string()
                && before.placements().get(0).finger() == now.placements().get(0).finger();
        assertThat(rule.amount(passing, before, now)).isEqualTo(kept ? 0 : 1);
        letGo += kept ? 0 : 1;
      }
    }
    assertThat(letGo).isPositive();
  }
}
