package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.rules.StandardRules;
import fingering.search.RequiredStays;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AlternativesTest {
  private static final ImmutableSet<Position> FIRST = ImmutableSet.of(Position.FIRST);

  private static Planner planner(Passage passage) {
    return Planner.of(passage, StandardRules.commonPractice());
  }

  private static List<String> fingering(Plan plan, int moment) {
    return plan.notes().stream()
        .filter(note -> note.moment() == moment)
        .map(
            note ->
                note.placement().string()
                    + " "
                    + note.finger()
                    + (note.open() ? "" : " " + note.position()))
        .toList();
  }

  /** Compares with the list of all plans, best first. */
  @Property(tries = 40)
  void eachAlternativeHasTheCheapestPlan(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 2) int moment) {
    Passage passage = Music.viola().notes(new RandomMusic(seed).line(3, 48, 57));
    Planner planner = planner(passage);
    Brief brief = Brief.within("low", ImmutableSet.of(Position.HALF, Position.FIRST));
    Map<List<String>, Long> best = new LinkedHashMap<>();
    ImmutableList<Plan> plans = planner.plans(brief, 100);
    plans.forEach(plan -> best.putIfAbsent(fingering(plan, moment), plan.total()));
    ImmutableList<Alternative> found = planner.alternatives(brief, moment, 100);
    Map<List<String>, Long> actual = new LinkedHashMap<>();
    found.forEach(
        alternative ->
            actual.put(fingering(alternative.plan(), moment), alternative.plan().total()));
    assertThat(actual).hasSize(found.size());
    if (plans.size() < 100) {
      assertThat(actual).isEqualTo(best);
    } else {
      assertThat(actual).containsAllEntriesOf(best);
    }
    assertThat(found).extracting(alternative -> alternative.plan().total()).isSorted();
  }

  @Test
  void theFirstAlternativeIsThatOfTheBestPlan() {
    Passage passage = Music.viola().notes("C4/1 D4/1 E4/1 F4/1 G4/1 A4/1 B4/1 C5/1");
    Brief brief = Brief.free("third").withRequirement(RequiredStays.in(Position.THIRD, 4));
    Planner planner = planner(passage);
    ImmutableList<Alternative> alternatives = planner.alternatives(brief, 4, 5);
    assertThat(alternatives).hasSize(5);
    assertThat(alternatives.get(0).plan()).isEqualTo(planner.plan(brief));
  }

  // The open D of the violin can be played with the fourth finger in 1st position: common practice,
  // no source
  @Test
  void theAlternativeToAnOpenStringIsTheFourthFinger() {
    Passage passage = Music.violin().notes("G3/1 D4/1");
    Planner planner = planner(passage);
    ImmutableList<Alternative> alternatives =
        planner.alternatives(Brief.within("1st", FIRST), 1, 9);
    assertThat(alternatives)
        .extracting(alternative -> alternative.notes().get(0).finger())
        .containsExactlyInAnyOrder("0", "4");
    assertThat(planner.alternatives(Brief.within("1st", FIRST), 0, 9)).hasSize(1);
  }

  @Test
  void theDifferencesByRuleAddUpToThatOfTheTotals() {
    Passage passage =
        Music.violin().notes("A4/.5 B4/.5 C5/.5 D5/.5 E5/.5 F5/.5 G5/.5 A5/.5 B5/.5 C6/.5 B5/1");
    ImmutableList<Alternative> alternatives =
        planner(passage).alternatives(Brief.free("free"), 6, 6);
    assertThat(alternatives).hasSize(6);
    for (Alternative alternative : alternatives.subList(1, 6)) {
      MomentExplanation why = new MomentExplanation(alternatives.get(0), alternative);
      assertThat(why.byRule().stream().mapToLong(MomentExplanation.Difference::points).sum())
          .isEqualTo(why.extraCost());
      assertThat(why.byRule()).allMatch(difference -> difference.points() != 0);
      assertThat(why.changesElsewhere()).noneMatch(change -> change.chosen().moment() == 6);
      assertThat(why.changesElsewhere())
          .noneMatch(change -> change.chosen().sameFingering(change.other()));
      assertThat(alternative.plan().shifts() - alternatives.get(0).plan().shifts())
          .isEqualTo(why.shiftsAdded().size() - why.shiftsSaved().size());
    }
  }

  @Test
  void anAlternativeHasAllNotesOfAChord() {
    Passage passage = Music.viola().notes("B4/1 E3+C4/1 D4/1");
    for (Alternative alternative : planner(passage).alternatives(Brief.free("free"), 1, 3)) {
      assertThat(alternative.notes())
          .extracting(note -> note.note().midi())
          .containsExactly(52, 60);
    }
  }

  @Test
  void alternativesForDifferentMomentsAreNotCompared() {
    Planner planner = planner(Music.violin().notes("G3/1 D4/1"));
    List<Alternative> alternatives = new ArrayList<>();
    alternatives.addAll(planner.alternatives(Brief.free("free"), 0, 1));
    alternatives.addAll(planner.alternatives(Brief.free("free"), 1, 1));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new MomentExplanation(alternatives.get(0), alternatives.get(1)))
        .withMessageContaining("different moments");
  }

  @ParameterizedTest
  @CsvSource({"-1, 1", "2, 1", "0, 0"})
  void aMomentOrANumberOutOfRangeIsRefused(int moment, int k) {
    Planner planner = planner(Music.violin().notes("G3/1 D4/1"));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> planner.alternatives(Brief.free("free"), moment, k))
        .withMessageContaining(k + " alternatives at moment " + moment);
  }
}
