package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.ShowPosition;
import fingering.demand.ShowStay;
import fingering.fingerboard.Finger;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BriefTest {
  /** Four measures on the viola, two of them playable in many positions. */
  private static final Passage LINE =
      Music.viola()
          .notes("D4/1 E4/1 F4/1 G4/1 A4/1 B4/1 C5/1 D5/1 C5/1 B4/1 A4/1 G4/1 F4/1 E4/1 D4/1 C4/1");

  private static final DemandParser TEXT = DemandParser.of(LINE.instrument());

  private static Plan plan(Demand... demands) {
    Brief.Builder brief = Brief.builder("asked");
    for (Demand demand : demands) {
      brief.addDemand(demand);
    }
    return Planner.of(LINE, StandardRules.commonPractice()).plan(brief.build());
  }

  private static boolean all(Plan plan, int measure, Predicate<PlannedNote> test) {
    return plan.notes().stream()
        .filter(note -> note.note().place().measureIndex() == measure)
        .allMatch(test);
  }

  @Test
  void aStayLastsFromTheFirstMeasureToTheEndOfTheLast() {
    Plan plan = plan(TEXT.stay("3@2-3"));
    assertThat(all(plan, 1, n -> n.placement().frame().position().equals(Position.THIRD))).isTrue();
    assertThat(all(plan, 2, n -> n.placement().frame().position().equals(Position.THIRD))).isTrue();
  }

  @Test
  void positionsAllowedInSomeMeasuresApplyOnlyThere() {
    Plan plan = plan(TEXT.allow("3@2"), TEXT.allow("1@1"));
    assertThat(
            all(plan, 0, n -> n.open() || n.placement().frame().position().equals(Position.FIRST)))
        .isTrue();
    assertThat(
            all(plan, 1, n -> n.open() || n.placement().frame().position().equals(Position.THIRD)))
        .isTrue();
  }

  @Test
  void aPhraseOnOneStringStaysOnIt() {
    assertThat(all(plan(TEXT.strings("III@4")), 3, n -> n.placement().string() == 3)).isTrue();
    assertThat(all(plan(TEXT.strings("sul G@4")), 3, n -> n.placement().string() == 3)).isTrue();
  }

  @Test
  void avoidedTechniquesDoNotOccur() {
    Plan plan =
        Planner.of(LINE, StandardRules.commonPractice())
            .plan(
                Brief.builder("asked")
                    .addDemand(TEXT.avoid("fourth-finger,open-strings").get(0))
                    .addDemand(TEXT.avoid("open-strings").get(0))
                    .build());
    assertThat(plan.fourthFingers()).isZero();
    assertThat(plan.openStrings()).isZero();
  }

  // The lowest string of the viola has no lower neighbour: tuning of the instrument
  @Test
  void theLowestNoteIsOpenEvenWhereOpenStringsAreAvoided() {
    Passage low = Music.viola().notes("C3/1 G3/1 C3/1");
    Plan plan =
        Planner.of(low, StandardRules.commonPractice())
            .plan(Brief.builder("asked").addDemand(TEXT.avoid("open-strings").get(0)).build());
    assertThat(plan.notes().stream().map(PlannedNote::finger)).first().isEqualTo("0");
    assertThat(plan.notes().get(1).open()).isFalse();
  }

  @Test
  void aFixedNoteHasItsFingering() {
    Plan plan = plan(TEXT.fix("2.1=II/4"), TEXT.fix("3.2=/1"), TEXT.fix("1.2=III@3"));
    PlannedNote fixed = plan.notes().get(4);
    assertThat(fixed.placement().string()).isEqualTo(2);
    assertThat(fixed.placement().finger()).isEqualTo(Finger.FOURTH);
    assertThat(plan.notes().get(9).placement().finger()).isEqualTo(Finger.FIRST);
    assertThat(plan.notes().get(1).placement().frame().position()).isEqualTo(Position.THIRD);
  }

  @Test
  void skillsAreShownInTheMomentsReported() {
    Plan plan = plan(new ShowPosition(Position.SECOND, 5), new ShowStay(Position.THIRD, 1));
    assertThat(plan.notesByPosition().get(Position.SECOND)).isGreaterThanOrEqualTo(5);
    ShowStay stay = new ShowStay(Position.THIRD, 1);
    assertThat(stay.shownIn(LINE, plan.grips()).cardinality()).isGreaterThanOrEqualTo(4);
    assertThat(plan.total()).isGreaterThan(plan().total());
  }

  @Test
  void theFewestConflictingDemandsAreNamedWithTheNote() {
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(
            () ->
                plan(TEXT.show("1=2"), TEXT.fix("2.1=II/1"), TEXT.strings("I@2"), TEXT.show("3=1")))
        .withMessage(
            "No fingering of A4 in measure 2, beat 1 can both play the note at 2.1 on"
                + " string II, with finger 1 and play on string I, m. 2; drop or relax one of these demands.");
  }

  @Test
  void aSkillAndThePositionsThatRuleItOutAreNamedTogether() {
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(TEXT.show("3=2"), TEXT.avoid("extensions").get(0), TEXT.allow("1")))
        .withMessage(
            "No fingering of this passage can both show 3rd position in 2 stopped notes and stay in"
                + " 1st position; drop or relax one of these demands.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "allow | 99 | position",
        "strings | Q | no string",
        "avoid | thumbs | 'thumbs' cannot be avoided or shown",
        "stay | 3 | does not say in which measures",
        "fix | 12=III | measure and beat",
        "fix | III/4 | does not say how to play a note",
        "fix | 1.1= | nothing is fixed",
        "show | 3 | write 3=8",
        "show | 3=0 | ask for 1 to 100",
        "show-stay | 3=99 | ask for 1 to 64",
        "show-technique | vibrato | 'vibrato' cannot be avoided or shown",
        "hide | 3 | 'hide' is not a demand"
      })
  void aTextThatIsNotADemandIsRefused(String key, String value, String said) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> TEXT.read(key.strip(), value == null ? "" : value.strip()))
        .withMessageContaining(said.strip());
  }

  @Test
  void measuresThatThePassageDoesNotHaveAreNamed() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> plan(TEXT.stay("3@7-9")))
        .withMessageContaining("no measure 7 in Viola")
        .withMessageContaining("measures 1 to 4");
  }

  @Test
  void tooManySkillsForTheSearchAreRefused() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> plan(TEXT.show("1=100"), TEXT.show("2=100"), TEXT.show("3=100")))
        .withMessageContaining("ask for fewer");
  }
}
