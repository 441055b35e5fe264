package fingering.plan.marks;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Music;
import fingering.musicxml.marking.NoteMarks;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How the strings of a plan are marked. */
class StringSignsTest {
  // A shift from the third string in 1st position to the second in 3rd, and back to the third.
  private static final String MUSIC = "F#4/1@2 G4/1@3 D5/1@1 E5/1@2 C5/1@4";

  private static Plan plan(String music, boolean keepPrinted) {
    return Planner.of(Music.violin().notes(music), StandardRules.commonPractice())
        .plan(Brief.free("free").withKeepPrinted(keepPrinted));
  }

  private static String strings(List<NoteMarks> marks, boolean numerals) {
    return marks.stream()
        .map(one -> numerals ? one.numeral() : one.string())
        .map(one -> one.isPresent() ? String.valueOf(one.getAsInt()) : "-")
        .reduce("", String::concat);
  }

  @ParameterizedTest
  @CsvSource({
    "ELEMENTS, -----, 3-2-3",
    "WORDS, --2--, -----",
    "BOTH, --2--, 3-2-3",
    "NONE, -----, -----"
  })
  void numeralsAreOnlyWhereTheHandWouldGuessWrongly(
      StringSigns signs, String numerals, String numbers) {
    Plan plan = plan(MUSIC, true);
    ImmutableList<NoteMarks> marks = PlanMarks.of(plan, false, signs);
    assertThat(strings(marks, true)).isEqualTo(numerals);
    assertThat(strings(marks, false)).isEqualTo(numbers);
  }

  @Test
  void aDoubleStopNeedsNoNumeral() {
    Plan plan = plan("F#4/1@2$3 G4/1@3$3 D5+B5/1", false);
    assertThat(strings(PlanMarks.of(plan, false, StringSigns.WORDS), true)).matches("-+");
  }

  @ParameterizedTest
  @EnumSource
  void aPrintedStringThatContradictsThePlanIsReplaced(StringSigns signs) {
    Plan plan = plan("B4/1 D5/1$3 C5/1", false);
    NoteMarks marks = PlanMarks.of(plan, false, signs).get(1);
    assertThat(marks.string()).hasValue(2);
  }

  @Test
  void withoutSignsFingersAndPositionsStay() {
    ImmutableList<NoteMarks> marks =
        PlanMarks.of(plan("B4/1 C5/1", false), false, StringSigns.NONE);
    assertThat(marks).hasSize(2).allMatch(one -> one.finger().isPresent());
    assertThat(strings(marks, false) + strings(marks, true)).isEqualTo("----");
  }
}
