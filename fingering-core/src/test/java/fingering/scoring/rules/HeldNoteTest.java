package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import java.util.HashSet;
import java.util.Set;
import java.util.function.ToLongBiFunction;
import org.junit.jupiter.api.Test;

/** A note held while another begins: common practice, no source. */
class HeldNoteTest {
  private static final TransitionRule RULE =
      StandardRules.all().stream()
          .filter(r -> r.id().equals("held-note"))
          .map(TransitionRule.class::cast)
          .findFirst()
          .orElseThrow();

  /** Compares the charges for all pairs of grips at a moment and the one before. */
  private static void assertCharged(
      String events, int moment, ToLongBiFunction<Grip, Grip> expected, Long... seen) {
    Passage passage = Music.viola().notes(events);
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    Moment left = passage.moments().get(moment - 1);
    Moment reached = passage.moments().get(moment);
    Transition transition = Transition.between(left, reached);
    assertThat(RULE.appliesTo(transition)).isTrue();
    Set<Long> charged = new HashSet<>();
    for (Grip before : finder.grips(left)) {
      for (Grip now : finder.grips(reached)) {
        long amount = RULE.amount(transition, before, now);
        assertThat(amount).isEqualTo(expected.applyAsLong(before, now));
        charged.add(amount);
      }
    }
    assertThat(charged).containsExactlyInAnyOrder(seen);
  }

  private static long takenOver(Grip before, Grip now) {
    return before.placements().get(0).finger() == now.placements().get(0).finger() ? 0 : 1;
  }

  @Test
  void anotherFingerTakesOverAHeldNote() {
    assertCharged("D3*2+B3/1 C4/1", 1, HeldNoteTest::takenOver, 0L, 1L);
  }

  @Test
  void aHeldNoteThatMovesToAnotherStringIsReleased() {
    assertCharged(
        "D4*2+A4/1 B4/1",
        1,
        (before, now) ->
            before.placements().get(0).string() == now.placements().get(0).string()
                ? takenOver(before, now)
                : 10,
        0L,
        1L,
        10L);
  }

  @Test
  void aHeldNoteWhoseStringIsNeededIsReleased() {
    assertCharged("D3*2+G3/1 C3/1", 1, (before, now) -> 10, 10L);
  }

  @Test
  void aReleasedNoteCannotBeHeldLater() {
    assertCharged("D3*3+G3/1 C3/1 A3/1", 2, (before, now) -> 10, 10L);
  }

  @Test
  void aHeldNoteIsReleasedIfTheStruckNoteTakesItsString() {
    assertCharged("C3*2+A3/1 D3/1", 1, (before, now) -> 10, 10L);
  }
}
