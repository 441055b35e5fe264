package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.MeasureSpan;
import fingering.fingerboard.LeftHand;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tempo.PlayerSpeed;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Invariants of practice plans with good and bad journals (common practice, no source). */
class PracticePlanPropertyTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);
  private static final Supplier<Plan> DEMO = Suppliers.memoize(PracticePlanPropertyTest::demo);

  private static Plan demo() {
    return Planner.of(
            ScoreReader.read(ScoreFile.read(Path.of("..", "docs", "demo", "demo.musicxml")))
                .passage(PassageRequest.WHOLE),
            StandardRules.commonPractice(),
            LeftHand.MEDIUM)
        .plan(Brief.free("free"));
  }

  /** The input of a practice plan. */
  record Input(PracticePlan.Request request, Journal journal) {
    PracticePlan plan() {
      return PracticePlan.of(DEMO.get(), PlayerSpeed.named("intermediate"), request, journal);
    }

    Input after(JournalEntry entry) {
      return new Input(
          request,
          journalOf(
              ImmutableList.<JournalEntry>builder().addAll(journal.entries()).add(entry).build()));
    }
  }

  private static Journal journalOf(List<JournalEntry> entries) {
    return new Journal(ImmutableList.copyOf(entries), ImmutableList.of(), ImmutableList.of());
  }

  /** Entries before today: of the whole piece, of hard measures, of others, some with no tempo. */
  private static Arbitrary<JournalEntry> entries() {
    Arbitrary<Optional<Tempo>> clean =
        Combinators.combine(
                Arbitraries.integers().between(30, 130), Arbitraries.of("quarter", "eighth"))
            .as((number, unit) -> tempo(unit, unit.equals("eighth") ? 2 * number : number))
            .optional(0.8);
    Arbitrary<MeasureSpan> measures =
        Arbitraries.of(
            MeasureSpan.WHOLE,
            MeasureSpan.WHOLE,
            MeasureSpan.of("13", "14"),
            MeasureSpan.of("28", "28"),
            MeasureSpan.of("14", "20"),
            MeasureSpan.of("5", "7"),
            MeasureSpan.of("99", "99"));
    return Combinators.combine(clean, measures)
        .as((tempo, span) -> new JournalEntry(TODAY.minusDays(1).atTime(18, 0), tempo, span, ""));
  }

  @Provide
  Arbitrary<Input> input() {
    Arbitrary<PracticePlan.Request> requests =
        Combinators.combine(
                Arbitraries.integers().between(30, 130),
                Arbitraries.integers().between(40, 140),
                Arbitraries.integers().between(0, 60),
                Arbitraries.of(DayOfWeek.class).set().ofMaxSize(3).map(ImmutableSet::copyOf),
                Arbitraries.of(MetronomeScale.class))
            .as(
                (from, to, days, rest, metronome) ->
                    new PracticePlan.Request(
                        Optional.of(tempo("quarter", from)),
                        tempo("quarter", to),
                        TODAY,
                        TODAY.plusDays(days),
                        rest,
                        metronome));
    return Combinators.combine(requests, entries().list().ofMaxSize(8))
        .as((request, list) -> new Input(request, journalOf(list)));
  }

  private static Tempo tempo(String unit, int perMinute) {
    return Tempo.parse(unit + "=" + perMinute);
  }

  private static BigDecimal top(TempoLadder ladder, int day) {
    return ladder.days().get(day).top().perMinute();
  }

  private static List<Integer> playing(PracticePlan plan) {
    List<Integer> days = new ArrayList<>();
    for (int i = 0; i < plan.whole().days().size(); i++) {
      if (plan.whole().days().get(i).kind() != PracticeDay.Kind.REST) {
        days.add(i);
      }
    }
    return days;
  }

  @Property
  void wholePieceIsNeverFasterThanItsSlowestSpot(@ForAll("input") Input input) {
    PracticePlan plan = input.plan();
    for (int day : playing(plan)) {
      for (LimitLadder spot : plan.limits()) {
        assertThat(top(plan.whole(), day)).isLessThanOrEqualTo(top(spot.ladder(), day));
      }
    }
  }

  /** On the first day a step may be added to what the last entry of the spot says, never more. */
  @Property
  void firstDayFollowsEveryEntryThatStillCounts(@ForAll("input") Input input) {
    PracticePlan plan = input.plan();
    int first = playing(plan).get(0);
    List<JournalEntry> entries = input.journal().entries();
    for (int i = 0; i < entries.size(); i++) {
      JournalEntry entry = entries.get(i);
      boolean known = !entry.measures().equals(MeasureSpan.of("99", "99"));
      boolean lastOfItsKind =
          entries.subList(i + 1, entries.size()).stream()
              .noneMatch(
                  later ->
                      later.measures().equals(entry.measures())
                          || later.measures().equals(MeasureSpan.WHOLE));
      if (known && lastOfItsKind && entry.clean().isPresent()) {
        Tempo clean = BeatConversion.in(entry.clean().get(), input.request().goal().unit());
        assertThat(top(plan.whole(), first))
            .isLessThanOrEqualTo(plan.whole().size().up(clean).perMinute());
      }
    }
  }

  @Property
  void goalIsPromisedOnlyIfTheLastDayAndAllSpotsReachIt(@ForAll("input") Input input) {
    PracticePlan plan = input.plan();
    BigDecimal goal = input.request().goal().perMinute();
    int last = plan.whole().days().size() - 1;
    boolean reached = top(plan.whole(), last).compareTo(goal) == 0;
    assertThat(plan.whole().reachesGoal()).isEqualTo(reached);
    assertThat(plan.whole().reachable()).isEqualTo(plan.whole().days().get(last).top());
    if (reached) {
      assertThat(plan.limits()).allMatch(spot -> spot.ladder().reachesGoal());
    }
  }

  /** A bad day: nothing of the whole was clean, or less than what the ladder begins from. */
  @Property
  void nothingIsFasterAfterABadDay(
      @ForAll("input") Input input, @ForAll("badDay") JournalEntry bad) {
    PracticePlan before = input.plan();
    Optional<Tempo> last = input.journal().lastClean(MeasureSpan.WHOLE);
    Tempo clean = before.whole().request().clean();
    boolean lower =
        bad.clean()
            .map(tempo -> tempo.quartersPerMinute().compareTo(clean.quartersPerMinute()) < 0)
            .orElse(true);
    if (!lower || (last.isEmpty() && bad.clean().isPresent())) {
      return;
    }
    PracticePlan after = input.after(bad).plan();
    int first = playing(after).get(0);
    assertThat(top(after.whole(), first)).isLessThanOrEqualTo(top(before.whole(), first));
    Tempo most = BeatConversion.in(bad.clean().orElse(clean), input.request().goal().unit());
    assertThat(top(after.whole(), first)).isLessThanOrEqualTo(most.perMinute());
  }

  @Provide
  Arbitrary<JournalEntry> badDay() {
    return entries()
        .map(
            entry ->
                new JournalEntry(entry.when(), entry.clean(), MeasureSpan.WHOLE, "hand ached"));
  }

  @Property
  void noDayGoesMoreThanOneStepAboveTheDayBefore(@ForAll("input") Input input) {
    PracticePlan plan = input.plan();
    StepSize size = plan.whole().size();
    Tempo clean = plan.whole().request().clean();
    for (int day : playing(plan)) {
      assertThat(top(plan.whole(), day)).isLessThanOrEqualTo(size.up(clean).perMinute());
      assertThat(plan.whole().days().get(day).start().perMinute()).isLessThan(clean.perMinute());
      clean = plan.whole().days().get(day).top();
    }
  }

  private static PracticePlan planned(String goal, String... lines) {
    return new Input(
            new PracticePlan.Request(
                Optional.empty(),
                Tempo.parse(goal),
                TODAY,
                TODAY.plusDays(40),
                ImmutableSet.of(),
                MetronomeScale.EXACT),
            Journal.parse(String.join("\n", lines) + "\n"))
        .plan();
  }

  private static String firstDay(TempoLadder ladder) {
    return ladder.days().get(0).top().toString();
  }

  @Test
  void wholePieceWaitsForMeasuresThatOnlyTheJournalNames() {
    PracticePlan plan =
        planned(
            "quarter=70",
            "2026-10-30 18:00 | quarter=60 | all |",
            "2026-10-31 18:00 | quarter=50 | 5-7 | flat");
    assertThat(plan.waitsFor().map(LimitLadder::measures)).contains(MeasureSpan.of("5", "7"));
    assertThat(plan.whole().request().clean()).isEqualTo(Tempo.parse("quarter=50"));
    assertThat(firstDay(plan.whole())).isEqualTo("quarter=50");
    assertThat(plan.whole().reachesGoal()).isTrue();
  }

  @Test
  void wholePieceThatIsAsFastAgainFreesTheSpot() {
    PracticePlan plan =
        planned(
            "quarter=70",
            "2026-10-30 18:00 | quarter=60 | all |",
            "2026-10-31 18:00 | quarter=50 | 5-7 | flat",
            "2026-11-01 18:00 | quarter=63 | all | all of it");
    assertThat(plan.waitsFor()).isEmpty();
    assertThat(plan.limits()).isEmpty();
    assertThat(plan.whole().request().clean()).isEqualTo(Tempo.parse("quarter=63"));
  }

  @Test
  void dayWithoutAnythingCleanBringsNoStep() {
    PracticePlan plan =
        planned(
            "quarter=70",
            "2026-10-30 18:00 | quarter=60 | all |",
            "2026-10-31 18:00 | - | all | hand ached");
    assertThat(plan.held()).isTrue();
    assertThat(firstDay(plan.whole())).isEqualTo("quarter=60");
  }

  @Test
  void entryOfOtherMeasuresThanThePassageHasIsLeftOut() {
    JournalEntry other =
        new JournalEntry(
            LocalDateTime.of(2026, 11, 1, 18, 0),
            Optional.of(Tempo.parse("quarter=40")),
            MeasureSpan.of("99", "99"),
            "");
    assertThat(
            planned("quarter=70", "2026-10-30 18:00 | quarter=60 | all |", other.line()).limits())
        .isEmpty();
  }
}
