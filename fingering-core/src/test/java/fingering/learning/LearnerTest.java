package fingering.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Maps;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.fingerboard.LeftHand;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.plan.Brief;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.Habit;
import fingering.scoring.HabitNetwork;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LearnerTest {
  /** The same points for every kind of hand, and no habit. */
  private static final Weights START =
      new Weights(
          ImmutableMap.copyOf(
              Maps.filterKeys(
                  Weights.commonPractice().points(),
                  key -> !key.contains(".") && !key.equals(Habit.ID))));

  /** A player who avoids the fourth finger and open strings, and likes to shift. */
  private static final Weights SECRET =
      with(ImmutableMap.of("fourth-finger", 160L, "open-string", 80L, "shift", 6L, "position", 1L));

  private static Weights with(ImmutableMap<String, Long> other) {
    ImmutableMap.Builder<String, Long> points = ImmutableMap.builder();
    return new Weights(points.putAll(START.points()).putAll(other).buildKeepingLast());
  }

  private static Scoring by(Weights weights) {
    return Scoring.of(StandardRules.all(), weights);
  }

  private static ImmutableList<TrainingExample> played(Weights weights, int from, int to) {
    return IntStream.range(from, to)
        .mapToObj(seed -> Marked.by(by(weights), "piece " + seed, Marked.violin(seed, 80)))
        .collect(ImmutableList.toImmutableList());
  }

  private static Learner learner(ImmutableList<TrainingExample> examples) {
    return Learner.of(examples, StandardRules.all(), START, LeftHand.MEDIUM);
  }

  private static double agreement(Weights weights, ImmutableList<TrainingExample> examples) {
    return Agreement.mean(
            examples.stream()
                .map(
                    example ->
                        Agreement.of(
                            Planner.of(example.passage(), by(weights)).plan(Brief.free("free")),
                            example.passage()))
                .collect(ImmutableList.toImmutableList()))
        .stringAndFinger();
  }

  @Test
  void preferencesAreLearnedAndHoldForUnseenMusic() {
    LearnedWeights learned =
        learner(played(SECRET, 0, 16)).learn(LearningMethod.rules(1), LearningProgress.SILENT);
    ImmutableList<TrainingExample> unseen = played(SECRET, 100, 106);

    double before = agreement(START, unseen);
    double after = agreement(learned.weights(), unseen);

    assertThat(before).isLessThan(0.75);
    assertThat(after).isGreaterThan(0.93);
    assertThat(learned.pieces()).isEqualTo(16);
    assertThat(learned.after().stringAndFinger()).isGreaterThan(learned.before().stringAndFinger());
    assertThat(learned.leftOut().orElseThrow().stringAndFinger()).isGreaterThan(0.9);
  }

  @Test
  void theSameExamplesGiveTheSameWeights() {
    ImmutableList<TrainingExample> examples = played(SECRET, 0, 3);

    LearnedWeights once =
        learner(examples).learn(LearningMethod.rules(10), LearningProgress.SILENT);

    assertThat(learner(examples).learn(LearningMethod.rules(10), LearningProgress.SILENT))
        .isEqualTo(once);
  }

  @Test
  void crossingsAndRulesThatNeverOccurKeepTheirWeights() {
    Weights learned =
        learner(played(SECRET, 0, 2))
            .learn(LearningMethod.rules(10), LearningProgress.SILENT)
            .weights();

    assertThat(learned.points().keySet()).isEqualTo(START.points().keySet());
    assertThat(learned.points()).containsEntry("crossing", START.points().get("crossing"));
    assertThat(learned.points()).containsEntry("trill", START.points().get("trill"));
    assertThat(learned.points().values()).allMatch(points -> points >= 0 && points <= 999_999);
  }

  @Test
  void aHighStrengthKeepsTheStartWeights() {
    LearnedWeights learned =
        learner(played(SECRET, 0, 2))
            .learn(LearningMethod.rules(LearningMethod.MAX_STRENGTH), LearningProgress.SILENT);

    assertThat(learned.weights()).isEqualTo(START);
    assertThat(learned.after()).isEqualTo(learned.before());
  }

  @Test
  void aRuleThatIsSwitchedOffStaysOff() {
    Learner learner =
        Learner.of(
            played(SECRET, 0, 2),
            StandardRules.all(),
            with(ImmutableMap.of("fourth-finger", 0L)),
            LeftHand.MEDIUM);

    assertThat(learner.learn(LearningMethod.rules(10), LearningProgress.SILENT).weights().points())
        .containsEntry("fourth-finger", 0L);
  }

  @Test
  void theSameMusicUnderTwoNamesIsOnePieceAndCannotBeLeftOut() {
    Passage passage = Marked.violin(1, 40);
    LearnedWeights learned =
        learner(
                ImmutableList.of(
                    Marked.by(by(SECRET), "a", passage), Marked.by(by(START), "b", passage)))
            .learn(LearningMethod.rules(100), LearningProgress.SILENT);

    assertThat(learned.pieces()).isEqualTo(1);
    assertThat(learned.leftOut()).isEmpty();
  }

  @Test
  void anotherBowingIsTheSamePiece() {
    String notes = "A4/1@0 B4/1@1 C5/1@2 %sD5/1@3 E5/1@4 D5/1@3 C5/1@2 B4/1@1";
    LearnedWeights learned =
        learner(
                ImmutableList.of(
                    new TrainingExample("a", Music.violin().notes(notes.formatted(""))),
                    new TrainingExample("b", Music.violin().notes(notes.formatted("~")))))
            .learn(LearningMethod.rules(100), LearningProgress.SILENT);

    assertThat(learned.pieces()).isEqualTo(1);
  }

  @Test
  void unplayableMarksAreIgnored() {
    String notes = "A4/1@2$1 B4/1@1 C5/1@2 D5/1@3 E5/1@4 D5/1@3 C5/1@2 G3/1@4";

    LearnedWeights learned =
        learner(ImmutableList.of(new TrainingExample("a", Music.violin().notes(notes))))
            .learn(LearningMethod.rules(100), LearningProgress.SILENT);

    assertThat(learned.after().stringAndFinger()).isBetween(0.7, 0.99);
  }

  @Test
  void aPartWithFewFingersIsRefusedByName() {
    TrainingExample bare =
        new TrainingExample("bare.musicxml", Music.violin().notes("A4/1@0 B4/1 C5/1"));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> learner(ImmutableList.of(bare)))
        .withMessageStartingWith("bare.musicxml has 1 note with a printed finger in Violin");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> learner(ImmutableList.of()));
  }

  @Test
  void aRuleWithoutAStartWeightIsRefusedByName() {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(
            () ->
                Learner.of(
                    played(START, 0, 1),
                    StandardRules.all(),
                    Weights.parse("w", "shift: 1"),
                    LeftHand.MEDIUM))
        .withMessageContaining("no weight is given for the rule");
  }

  /** The habit of a violinist: an inclination by finger, string and place, and by the line. */
  private static Habit planted(HandKind hand) {
    Random random = new Random(4);
    double[] numbers = random.doubles(HabitNetwork.SIZE, -1, 1).toArray();
    HabitNetwork.scale(numbers, 100);
    return new Habit(ImmutableMap.of(hand, ImmutableDoubleArray.copyOf(numbers)));
  }

  private static Weights withHabit(Habit habit) {
    return new Weights(with(ImmutableMap.of(Habit.ID, 1L)).points(), habit);
  }

  /** Learns a habit from one long piece, without cross-validation. */
  private static LearningMethod freely(boolean habit) {
    return new LearningMethod(1, habit, 1, 0.3, ImmutableList.of(1.0));
  }

  @Test
  void aHabitIsLearnedAndHoldsForUnseenMusic() {
    Weights player = withHabit(planted(HandKind.VIOLIN));
    ImmutableList<TrainingExample> examples =
        ImmutableList.of(Marked.by(by(player), "long", Marked.violin(1, 900)));
    ImmutableList<TrainingExample> unseen = played(player, 100, 106);

    Weights rules = learner(examples).learn(freely(false), LearningProgress.SILENT).weights();
    Weights habit = learner(examples).learn(freely(true), LearningProgress.SILENT).weights();

    assertThat(habit.habit().networks()).containsOnlyKeys(HandKind.VIOLIN);
    assertThat(rules.habit()).isEqualTo(Habit.NONE);
    assertThat(agreement(habit, unseen)).isGreaterThan(agreement(rules, unseen) + 0.1);
  }

  @Test
  void aHabitIsTheSameEveryTime() {
    ImmutableList<TrainingExample> examples = played(withHabit(planted(HandKind.VIOLIN)), 0, 1);

    LearnedWeights once =
        learner(examples).learn(LearningMethod.rulesAndHabit(30), LearningProgress.SILENT);

    assertThat(learner(examples).learn(LearningMethod.rulesAndHabit(30), LearningProgress.SILENT))
        .isEqualTo(once);
  }

  private static ImmutableList<TrainingExample> cello(Weights player, int from, int to) {
    return IntStream.range(from, to)
        .mapToObj(
            seed ->
                Marked.by(
                    by(player),
                    "cello " + seed,
                    Music.cello().notes(new RandomMusic(seed).line(40, 36, 62)))) // C2 to D4
        .collect(ImmutableList.toImmutableList());
  }

  @Test
  void eachKindOfHandIsLearnedByItself() {
    ImmutableList<TrainingExample> violins = played(SECRET, 0, 3);
    ImmutableList<TrainingExample> cellos = cello(START, 0, 2);
    ImmutableList<TrainingExample> both =
        ImmutableList.<TrainingExample>builder().addAll(violins).addAll(cellos).build();

    Weights learned =
        learner(both).learn(LearningMethod.rules(10), LearningProgress.SILENT).weights();
    Weights violin =
        learner(violins).learn(LearningMethod.rules(10), LearningProgress.SILENT).weights();
    Weights cello =
        learner(cellos).learn(LearningMethod.rules(10), LearningProgress.SILENT).weights();

    for (CostRule rule : StandardRules.all()) {
      assertThat(learned.points())
          .containsEntry("violin." + rule.id(), violin.points().get(rule.id()))
          .containsEntry("cello." + rule.id(), cello.points().get(rule.id()))
          .containsEntry(rule.id(), START.points().get(rule.id()));
    }
    assertThat(learned.points().keySet()).noneMatch(key -> key.startsWith("bass."));
    assertThat(violin.points().keySet()).isEqualTo(START.points().keySet());
  }

  @Test
  void eachKindOfHandHasAHabitOfItsOwn() {
    ImmutableList<TrainingExample> both =
        ImmutableList.<TrainingExample>builder()
            .addAll(played(START, 0, 1))
            .addAll(cello(START, 0, 1))
            .build();

    Weights learned =
        learner(both).learn(LearningMethod.rulesAndHabit(30), LearningProgress.SILENT).weights();

    assertThat(learned.habit().networks()).containsOnlyKeys(HandKind.VIOLIN, HandKind.CELLO);
    assertThat(learned.points()).containsEntry(Habit.ID, 1L);
  }

  @Test
  void anotherStyleIsAnotherVersionOfThePiece() {
    String notes = "A4/1@0 B4/1@1 C5/1@2 D5/1%s@3 E5/1@4 D5/1@3 C5/1@2 B4/1@1";
    TrainingExample plain = new TrainingExample("a", Music.violin().notes(notes.formatted("")));
    TrainingExample sung = new TrainingExample("b", Music.violin().notes(notes.formatted("si")));
    assertThat(sung.pieceKey()).isEqualTo(plain.pieceKey());
    assertThat(sung.versionKey()).isNotEqualTo(plain.versionKey());
  }

  @Test
  void atAnotherTempoTheSameNotesHaveAnotherPace() {
    TrainingExample slow =
        new TrainingExample("a", Music.violin().tempo("quarter=60").notes("A4/1@0 r/1 B4/1@1"));
    List<Moment> quick = slow.atTempo(2).passage().moments();
    assertThat(quick).extracting(Moment::startMicros).containsExactly(0L, 1_000_000L);
    assertThat(quick).extracting(Moment::soundMicros).containsExactly(500_000L, 500_000L);
    assertThat(quick).extracting(Moment::restMicros).containsExactly(0L, 500_000L);
    assertThat(quick).allMatch(moment -> moment.surroundings().paceMicros() == 500_000);
  }

  @Test
  void agreementCountsPrintedStringsAndFingers() {
    Passage passage = Music.violin().notes("A4/1@0$2 B4/1@2$2 C5/1@2 D5/1 E5/1@1$4");
    Agreement agreement =
        Agreement.of(
            Planner.of(passage, StandardRules.commonPractice())
                .plan(Brief.within("low", ImmutableSet.of(Position.FIRST))),
            passage);

    assertThat(agreement.string()).hasValue(2 / 3.0);
    assertThat(agreement.stringAndFinger()).isEqualTo(2 / 4.0);
  }
}
