package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Taken;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.Collections;
import org.junit.jupiter.api.Test;

/** What counts as a stay in a position: common practice, no source. */
class RequiredStaysTest {
  private static final Grip FIRST_IN_THIRD = Taken.on("viola").by("D5", 1, "1", "3rd");
  private static final Grip SECOND_IN_THIRD = Taken.on("viola").by("E5", 1, "2", "3rd");
  private static final Grip FIRST_IN_FIRST = Taken.on("viola").by("B4", 1, "1", "1st");
  private static final Grip OPEN_IN_THIRD = Taken.on("viola").by("D4", 2, "0", "3rd");
  private static final Grip OPEN_IN_FIRST = Taken.on("viola").by("D4", 2, "0", "1st");

  private static boolean shown(RequiredStays stays, Grip... path) {
    int state = 0;
    for (Grip grip : path) {
      long symbol = stays.symbol(1, grip, grip);
      assertThat(symbol).isBetween(0L, stays.symbols() - 1);
      state = stays.next(state, symbol);
      assertThat(state).isBetween(0, stays.states() - 1);
    }
    return stays.satisfied(state);
  }

  @Test
  void enoughStoppedNotesInOnePositionAreAStay() {
    RequiredStays two = RequiredStays.in(Position.THIRD, 2);
    assertThat(shown(two, FIRST_IN_THIRD)).isFalse();
    assertThat(shown(two, FIRST_IN_THIRD, SECOND_IN_THIRD)).isTrue();
  }

  @Test
  void aStayOnceShownStaysShown() {
    RequiredStays two = RequiredStays.in(Position.THIRD, 2);
    assertThat(shown(two, FIRST_IN_THIRD, SECOND_IN_THIRD, FIRST_IN_FIRST)).isTrue();
    assertThat(shown(two, FIRST_IN_THIRD, SECOND_IN_THIRD, FIRST_IN_THIRD)).isTrue();
  }

  @Test
  void openStringsNeitherCountNorInterruptAStay() {
    RequiredStays two = RequiredStays.in(Position.THIRD, 2);
    assertThat(shown(two, FIRST_IN_THIRD, OPEN_IN_THIRD)).isFalse();
    assertThat(shown(two, FIRST_IN_THIRD, OPEN_IN_THIRD, SECOND_IN_THIRD)).isTrue();
  }

  @Test
  void leavingThePositionStartsTheStayAgain() {
    RequiredStays two = RequiredStays.in(Position.THIRD, 2);
    assertThat(shown(two, FIRST_IN_THIRD, OPEN_IN_FIRST, SECOND_IN_THIRD)).isFalse();
    assertThat(shown(two, FIRST_IN_THIRD, FIRST_IN_FIRST, SECOND_IN_THIRD)).isFalse();
  }

  @Test
  void aDoubleStopCountsBothItsNotes() {
    Grip sixth =
        new Grip(
            ImmutableList.of(
                Taken.on("viola").by("F4", 2, "1", "2nd").top(), SECOND_IN_THIRD.top()),
            SECOND_IN_THIRD.frame(),
            false);
    assertThat(shown(RequiredStays.in(Position.THIRD, 2), sixth)).isTrue();
    assertThat(shown(RequiredStays.in(Position.THIRD, 3), sixth)).isFalse();
  }

  @Test
  void aStayInEachOfTwoPositionsIsShownInEitherOrder() {
    RequiredStays both = new RequiredStays(ImmutableList.of(Position.FIRST, Position.THIRD), 2);
    assertThat(shown(both, FIRST_IN_FIRST, FIRST_IN_FIRST, FIRST_IN_THIRD, FIRST_IN_THIRD))
        .isTrue();
    assertThat(shown(both, FIRST_IN_THIRD, FIRST_IN_THIRD, FIRST_IN_FIRST, FIRST_IN_FIRST))
        .isTrue();
    assertThat(shown(both, FIRST_IN_FIRST, FIRST_IN_FIRST, FIRST_IN_THIRD)).isFalse();
    assertThat(shown(both, FIRST_IN_FIRST, FIRST_IN_THIRD, FIRST_IN_FIRST, FIRST_IN_THIRD))
        .isFalse();
  }

  @Test
  void notesInOnePositionDoNotCountForAnother() {
    RequiredStays both = new RequiredStays(ImmutableList.of(Position.FIRST, Position.THIRD), 3);
    Grip first = FIRST_IN_FIRST;
    Grip third = FIRST_IN_THIRD;
    assertThat(shown(both, first, first, third, third, third, first, first, first)).isTrue();
    assertThat(shown(both, first, first, first, third, third)).isFalse();
    assertThat(shown(both, third, third, third, first, first)).isFalse();
  }

  private static ImmutableList<Position> positions(int many) {
    return ImmutableList.copyOf(Collections.nCopies(many, Position.THIRD));
  }

  @Test
  void aStayOfNoNotesOrNoPositionsIsRefused() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> RequiredStays.in(Position.THIRD, 0));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new RequiredStays(ImmutableList.of(), 1));
  }

  @Test
  void eightPositionsAndAHundredNotesAreTheMaximum() {
    assertThat(new RequiredStays(positions(8), 1).positions()).hasSize(8);
    assertThat(RequiredStays.in(Position.THIRD, 100).notes()).isEqualTo(100);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new RequiredStays(positions(9), 1));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> RequiredStays.in(Position.THIRD, 101));
  }
}
