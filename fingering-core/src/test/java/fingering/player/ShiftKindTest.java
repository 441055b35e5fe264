package fingering.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.fingerboard.Grip;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.scoring.Transition;
import fingering.tables.FingeringException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Kinds of shift: common practice, no source. */
class ShiftKindTest {
  private static final Grip FIRST = Taken.on("violin").by("B4", 2, "1", "1st");
  private static final Grip THIRD = Taken.on("violin").by("D5", 2, "1", "3rd");

  private static Transition transition(String events) {
    List<Moment> moments = Music.violin().notes(events).moments();
    return Transition.between(moments.get(0), moments.get(1));
  }

  @Test
  void aKindIsReadWithOrWithoutHyphens() {
    assertThat(ShiftKind.named(" First-Finger ")).isEqualTo(ShiftKind.FIRST_FINGER);
    assertThat(ShiftKind.named("open string")).isEqualTo(ShiftKind.OPEN_STRING);
  }

  @Test
  void anUnknownKindIsRefusedWithTheKnownOnes() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> ShiftKind.named("thumb"))
        .withMessage(
            "'thumb' is not a kind of shift; choose one of rest, open-string, same-finger, first-finger,"
                + " another-finger, another-string, slur");
  }

  @Test
  void aShiftUnderASlurIsOfTwoKinds() {
    Transition slurred = transition("B4/1 ~D5/1");
    assertThat(ShiftKind.values())
        .filteredOn(kind -> kind.matches(slurred, FIRST, THIRD))
        .containsExactly(ShiftKind.SAME_FINGER, ShiftKind.SLUR);
  }

  @Test
  void aDetachedShiftIsOfOneKind() {
    Transition detached = transition("B4/1 D5/1");
    assertThat(ShiftKind.values())
        .filteredOn(kind -> kind.matches(detached, FIRST, THIRD))
        .containsExactly(ShiftKind.SAME_FINGER);
  }

  @Test
  void aFirstFingerThatTakesOverTheSameNoteIsNoStep() {
    Grip second = Taken.on("violin").by("G5", 1, "2", "1st");
    Grip first = Taken.on("violin").by("G5", 1, "1", "2nd");
    assertThat(ShiftKind.of(transition("G5/1 G5/1"), second, first))
        .isEqualTo(ShiftKind.ANOTHER_FINGER);
  }
}
