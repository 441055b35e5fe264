package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.player.Extension;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.scoring.Charge;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.SkillGap;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans for players, on random music and on scales. */
class PlayerPlansTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);

  private static Passage passage(int seed, int which, int notes) {
    RandomMusic random = new RandomMusic(seed);
    Music music = Music.on(INSTRUMENTS.get(which)).tempo(random.tempo());
    int lowest = LOWEST.get(which);
    return music.notes(
        which < 2
            ? random.withDoubleStops(notes, lowest, lowest + 28)
            : random.line(notes, lowest, lowest + 26));
  }

  /** A player who has learned the things that pass a test. */
  private static Player learned(Predicate<Object> kept) {
    return Player.UNKNOWN
        .withPositions(some(Position.range(Position.HALF, Position.THUMB).stream(), kept))
        .withPatterns(set(Arrays.stream(FingerPattern.values()).filter(kept)))
        .withExtensions(set(Arrays.stream(Extension.values()).filter(kept)))
        .withShifts(set(Arrays.stream(ShiftKind.values()).filter(kept)));
  }

  private static ImmutableSet<Position> some(Stream<Position> positions, Predicate<Object> kept) {
    return set(positions.filter(kept));
  }

  private static <T> ImmutableSet<T> set(Stream<T> all) {
    return all.collect(ImmutableSet.toImmutableSet());
  }

  private static Plan plan(Passage passage, Player player, String preset) {
    Scoring scoring = Scoring.of(StandardRules.forPlayer(player), Weights.preset(preset));
    return Planner.of(passage, scoring).plan(Brief.free("free"));
  }

  @Property(tries = 60)
  void aPlayerWhoHasLearnedEverythingGetsThePlanWithoutAPlayer(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 20) int notes) {
    Passage passage = passage(seed, which, notes);
    for (String preset : Weights.presets()) {
      Plan everything = plan(passage, learned(skill -> true), preset);
      assertThat(everything).isEqualTo(plan(passage, Player.UNKNOWN, preset));
      assertThat(PlanSkillGap.of(everything, learned(skill -> true))).isEmpty();
    }
  }

  @Property(tries = 60)
  void thereIsAPlanForAPlayerWhoHasLearnedNothing(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 20) int notes) {
    Passage passage = passage(seed, which, notes);
    Plan plan = plan(passage, learned(skill -> false), "beginner");
    assertThat(plan.notes()).hasSize(passage.notes().size());
    boolean stopped = plan.notes().stream().anyMatch(note -> note.placement().stopped());
    assertThat(PlanSkillGap.of(plan, learned(skill -> false)).isEmpty()).isEqualTo(!stopped);
  }

  @Property(tries = 80)
  void everySkillGapIsChargedExactlyOnce(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 20) int notes) {
    Passage passage = passage(seed, which, notes);
    Random dice = new Random(seed);
    Player player = learned(skill -> dice.nextBoolean());
    Plan plan = plan(passage, player, "intermediate");
    List<String> actual =
        SkillGap.of(player, passage.moments(), plan.grips()).stream()
            .map(skill -> skill.moment() + " " + skill.rule())
            .toList();
    List<String> charged =
        plan.charges().stream()
            .filter(charge -> charge.rule().startsWith("new-"))
            .flatMap(PlayerPlansTest::units)
            .toList();
    assertThat(actual).containsExactlyInAnyOrderElementsOf(charged);
  }

  private static Stream<String> units(Charge charge) {
    return Stream.generate(() -> charge.moment() + " " + charge.rule()).limit(charge.amount());
  }

  @Property(tries = 60)
  void learningMoreNeverMakesAPlanMoreExpensive(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 15) int notes) {
    Passage passage = passage(seed, which, notes);
    Random dice = new Random(seed);
    Player less = learned(skill -> dice.nextInt(3) == 0);
    Random again = new Random(seed);
    Player more = learned(skill -> again.nextInt(3) < 2);
    assertThat(plan(passage, more, "beginner").total())
        .isLessThanOrEqualTo(plan(passage, less, "beginner").total());
  }

  // Where the half steps of a scale lie under the fingers in 1st position: common practice, no
  // source. D major: E, F sharp and G, A on the D string; G major: B, C and E, F sharp on the
  // upper strings; E flat major from the D string: E flat low, and F, G, A flat.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          D4 E4 F#4 G4 A4 B4 C#5 D5 | 2-3           |
          A4 B4 C#5 D5 E5 F#5 G#5 A5 | 2-3          |
          G4 A4 B4 C5 D5 E5 F#5 G5  | 2-3, 1-2      |
          G4 A4 B4 C5 D5 E5 F#5 G5  | 2-3           | a low second finger
          E4 F#4 G#4 A4 B4 C#5 D#5 E5 | 3-4, 2-3    |
          D4 E4 F4 G4 A4 B4 C5 D5   | 1-2           |
          D4 E4 F4 G4 A4 Bb4 C5 D5  | 1-2           | a low first finger
          """)
  void aScaleInFirstPositionNeedsTheHandPatternsOfItsHalfSteps(
      String scale, String patterns, String expected) {
    Player player = Player.parse("p", "patterns: " + patterns);
    Passage passage = Music.violin().notes(scale.replace(" ", "/1 ") + "/1");
    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    Plan plan = planner.plan(Brief.within("1st", ImmutableSet.of(Position.FIRST)));
    List<String> news = PlanSkillGap.of(plan, player).stream().map(PlanSkillGap::skill).toList();
    assertThat(news).isEqualTo(expected == null ? List.of() : List.of(expected));
  }

  @Test
  void consecutiveMeasuresOfASkillGapAreListedAsARange() {
    Passage passage = Music.violin().meter(2, 4).notes("B4/1 C5/1 C5/1 B4/1 B4/2 C5/2 A4/2 C5/2");
    Player player = Player.parse("p", "positions: 1\npatterns: 2-3");
    Plan plan =
        Planner.of(passage, StandardRules.commonPractice())
            .plan(Brief.within("1st", ImmutableSet.of(Position.FIRST)));
    assertThat(PlanSkillGap.of(plan, player))
        .containsExactly(
            new PlanSkillGap(
                "new-finger-pattern",
                "a low second finger",
                ImmutableList.of(1, 2, 5, 7),
                ImmutableList.of("1–2", "4", "6")));
  }

  @Test
  void aStudentOfFirstPositionStaysThereWhereThirdWouldBeCheaper() {
    Passage passage =
        Music.violin()
            .tempo("quarter=100")
            .notes("D5/0.5 F#5/0.5 E5/0.5 D5/0.5 F#5/0.5 D5/0.5 E5/0.5 F#5/0.5 D5/0.5 F#5/0.5");
    Plan usual = plan(passage, Player.UNKNOWN, "common-practice");
    assertThat(usual.highestPosition()).contains(Position.THIRD);
    Player first = Player.parse("p", "positions: 1");
    assertThat(plan(passage, first, "common-practice").highestPosition()).contains(Position.FIRST);
  }
}
