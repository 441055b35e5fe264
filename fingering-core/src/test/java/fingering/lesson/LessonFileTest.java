package fingering.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import fingering.demand.DemandParser;
import fingering.music.SlurChanges;
import fingering.music.SlurChanges.Change;
import fingering.music.Tempo;
import fingering.practice.MetronomeScale;
import fingering.tables.FingeringException;
import fingering.tables.Instruments;
import fingering.userfile.FileUpdate;
import fingering.userfile.UserFileException;
import fingering.userfile.UserText;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LessonFileTest {
  private static final String MILL =
      """
      # Imke, for the summer course
      score: quartet.mxl          # ours
      part: Viola
      measures: 27-76
      tempo: half = 84
      slurs: {29.1: 30.2.5, 33a.4: none}
      student: imke

      # two plans
      plans:                      # the chosen one first
        - name: mine
          stay: [3@31-38, 1@39-46]
          fix: [42.1.5=II/4]
        - choose: third
      hearing: {date: 2026-12-12, tempo: quarter = 96}
      circles: {shown: yes, not: [accent, 12.1 dynamic]}
      journal: imke-mill.journal
      ladder: {rest-days: [Sunday, sat], metronome: traditional}
      below: first
      # the end
      """;

  @Test
  void everyKeyIsRead() {
    Lesson lesson = LessonFile.parse("mill.yaml", MILL);

    assertThat(lesson)
        .isEqualTo(
            Lesson.of("quartet.mxl")
                .withPart(Optional.of("Viola"))
                .withMeasures(Optional.of("27-76"))
                .withTempo(Optional.of(Tempo.parse("half=84")))
                .withSlurs(
                    new SlurChanges(
                        ImmutableList.of(
                            Change.parse("29.1", "30.2.5"), Change.parse("33a.4", "none"))))
                .withStudent(Optional.of("imke"))
                .withPlans(
                    ImmutableList.of(
                        new LessonPlan(
                            "mine",
                            Optional.empty(),
                            ImmutableListMultimap.of(
                                "stay", "3@31-38", "stay", "1@39-46", "fix", "42.1.5=II/4")),
                        new LessonPlan("plan 2", Optional.of("third"), ImmutableListMultimap.of())))
                .withHearing(
                    Optional.of(
                        new Hearing(
                            Optional.of(LocalDate.of(2026, 12, 12)),
                            Optional.of(Tempo.parse("quarter=96")))))
                .withJournal(Optional.of("imke-mill.journal"))
                .withCircles(new LessonCircles(true, ImmutableSet.of("accent", "12.1 dynamic")))
                .withLadder(
                    new LessonLadder(
                        ImmutableSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
                        MetronomeScale.TRADITIONAL))
                .withBelow(Optional.of("first")));
  }

  @Property(tries = 500)
  void aLessonIsReadBackAsItWasWritten(@ForAll("lessons") Lesson lesson) {
    assertThat(LessonFile.parse("my.yaml", LessonFile.text(lesson))).isEqualTo(lesson);
  }

  @Property(tries = 300)
  void aChangedLessonIsReadBackAndUnchangedKeysKeepTheirLines(
      @ForAll("lessons") Lesson before, @ForAll("lessons") Lesson after) {
    String text = "# remark\n" + LessonFile.text(before);

    FileUpdate update = LessonFile.update(text, after);

    assertThat(LessonFile.parse("my.yaml", update.text())).isEqualTo(after);
    assertThat(update.text()).startsWith("# remark\n");
    assertThat(update.lostRemarks()).isEmpty();
  }

  @Provide
  Arbitrary<Lesson> lessons() {
    Arbitrary<Lesson> music =
        Combinators.combine(
                texts(),
                texts().optional(),
                texts().optional(),
                texts().optional(),
                Arbitraries.of(Instruments.standard().all()).optional(),
                texts().optional(),
                tempi().optional(),
                slurs())
            .as(
                (score, tune, part, voice, instrument, measures, tempo, slurs) ->
                    Lesson.of(score)
                        .withScore(score, tune)
                        .withPart(part)
                        .withVoice(voice)
                        .withInstrument(instrument)
                        .withMeasures(measures)
                        .withTempo(tempo)
                        .withSlurs(slurs));
    return Combinators.combine(
            music,
            texts().optional(),
            plans(),
            hearings().optional(),
            texts().optional(),
            circles())
        .as(
            (lesson, student, plans, hearing, journal, circles) ->
                lesson
                    .withStudent(student)
                    .withPlans(plans)
                    .withHearing(hearing)
                    .withJournal(journal)
                    .withCircles(circles));
  }

  private static Arbitrary<SlurChanges> slurs() {
    return Arbitraries.of(
            Change.parse("29.1", "30.2"),
            Change.parse("9.1.5", "9.2"),
            Change.parse("3a.1", "3a:b.2.333"),
            Change.parse("12.10", "none"),
            Change.parse("#{'.1", "none"))
        .list()
        .uniqueElements()
        .map(changes -> new SlurChanges(ImmutableList.copyOf(changes)));
  }

  private static Arbitrary<LessonCircles> circles() {
    return Arbitraries.of(
        LessonCircles.ALL,
        LessonCircles.ALL.showing(true),
        new LessonCircles(false, ImmutableSet.of("accent")),
        new LessonCircles(true, ImmutableSet.of("12.1 dynamic", "3a.2.5 shift", "repeat")));
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.oneOf(
            Arbitraries.strings().all().ofMinLength(1).ofMaxLength(8),
            Arbitraries.strings().withChars(" :#-[]{},&*!|>'\"%@`~?=\\aé½1").ofMaxLength(8),
            Arbitraries.of("null", "yes", "~", "1.50", "0x1F", "2026-12-12", "- a", "a: b", "a #b"))
        .filter(UserText::isValue);
  }

  private static Arbitrary<Tempo> tempi() {
    return Combinators.combine(
            Arbitraries.of("quarter", "dotted-half", "double-dotted-eighth"),
            Arbitraries.bigDecimals()
                .between(new BigDecimal("0.1"), new BigDecimal("1000"))
                .ofScale(1))
        .as((unit, number) -> Tempo.parse(unit + "=" + number.toPlainString()));
  }

  private static Arbitrary<Hearing> hearings() {
    Arbitrary<LocalDate> dates =
        Arbitraries.integers().between(0, 40_000).map(day -> LocalDate.ofEpochDay(day));
    return Arbitraries.oneOf(
        dates.map(date -> new Hearing(Optional.of(date), Optional.empty())),
        tempi().map(tempo -> new Hearing(Optional.empty(), Optional.of(tempo))),
        Combinators.combine(dates, tempi())
            .as((date, tempo) -> new Hearing(Optional.of(date), Optional.of(tempo))));
  }

  private static Arbitrary<ImmutableList<LessonPlan>> plans() {
    Arbitrary<LessonPlan> plan =
        Combinators.combine(
                texts(),
                Arbitraries.of(LessonPlan.CHOICES).optional(),
                Arbitraries.of(
                        "allow|1, half",
                        "strings|C@3-4",
                        "avoid|extensions",
                        "stay|3@31-38",
                        "fix|42.1.5=II/4",
                        "keep-plan|plan, old.json@9",
                        "show|3=8",
                        "show-stay|3=2",
                        "show-shift|up first-finger=2",
                        "show-technique|fourth-finger")
                    .list()
                    .ofMaxSize(4))
            .filter((name, choice, demands) -> choice.isPresent() || !demands.isEmpty())
            .as(LessonFileTest::plan);
    return plan.list().ofMaxSize(3).uniqueElements(LessonPlan::name).map(ImmutableList::copyOf);
  }

  private static LessonPlan plan(String name, Optional<String> choice, List<String> demands) {
    ImmutableListMultimap.Builder<String, String> all = ImmutableListMultimap.builder();
    for (String demand : demands) {
      int bar = demand.indexOf('|');
      all.put(demand.substring(0, bar), demand.substring(bar + 1));
    }
    return new LessonPlan(name, choice, all.build());
  }

  @Test
  void aChangeKeepsRemarksAndTheLinesOfOtherKeys() {
    Lesson changed =
        LessonFile.parse("mill.yaml", MILL)
            .withScore("trio.mxl", Optional.empty())
            .withStudent(Optional.of("jonte"))
            .withVoice(Optional.of("1"))
            .withJournal(Optional.empty());

    FileUpdate update = LessonFile.update(MILL, changed);

    assertThat(update.lostRemarks()).isEmpty();
    assertThat(update.text())
        .isEqualTo(
            MILL.replace("quartet.mxl          # ours", "trio.mxl  # ours")
                .replace("imke\n\n", "jonte\n\n")
                .replace("journal: imke-mill.journal\n", "")
                .replace("below: first\n", "below: first\nvoice: 1\n"));
  }

  @Test
  void remarksThatAChangeLosesAreNamed() {
    Lesson changed =
        LessonFile.parse("mill.yaml", MILL)
            .choosing(new LessonPlan("low", Optional.of("first"), ImmutableListMultimap.of()));

    FileUpdate update = LessonFile.update(MILL, changed);

    assertThat(update.lostRemarks()).containsExactly("# the chosen one first");
    assertThat(update.text()).contains("# two plans\nplans:\n  - name: low\n    choose: first\n");
    assertThat(LessonFile.parse("mill.yaml", update.text())).isEqualTo(changed);
  }

  @Test
  void aLessonWrittenAsJsonIsWrittenAnewWhenItChanges() {
    String json = "{\"score\": \"a.xml\", \"part\": \"1\"}";
    Lesson changed = LessonFile.parse("a.yaml", json).withPart(Optional.of("2"));

    assertThat(LessonFile.update(json, changed).text()).isEqualTo("score: a.xml\npart: 2\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          part: Viola                              | 1 | 'score' is missing; add it, such as 'score: quartet.mxl'
          score: a.xml$mesures: 1-4                | 2 | did you mean 'measures', such as 'measures: 27-76'?
          score: a.xml$tempo: fast                 | 2 | is not a tempo
          score: a.xml$plans:$  - stays: 3@1-2     | 3 | did you mean 'stay', such as 'stay: 3@6-11'?
          score: a.xml$plans:$  - stay: 3          | 3 | write the position and the measures
          score: a.xml$plans:$  - fix: 3.1=IX/4    | 3 | string
          score: a.xml$plans:$  - name: mine       | 3 | asks for nothing
          score: a.xml$plans:$  - choose: best     | 3 | first or third or partly or second or free
          score: a.xml$hearing: {date: soon}       | 2 | is not a date; write year, month and day
          score: a.xml$hearing: {day: 2026-12-12}  | 2 | there is no key 'day' in a hearing
          score: a.xml$slurs: {29.1: 28.2}         | 2 | the slur from 29.1 to 28.2 does not end after it begins
          score: a.xml$slurs:$  29.1: 30.2$  31: 32.1 | 4 | '31' is not a measure and beat; write 17.2
          score: a.xml$slurs: {29.1: off}          | 2 | 'off' is not a measure and beat
          score: a.xml$slurs: {29.1: }             | 2 | 'slurs' has no value
          score: a.xml$slurs: 29.1-30.2            | 2 | 'slurs' consists of pairs, such as 'slurs: {29.1: 30.2, 33.1: none}'
          score: a.xml$slurs: {29.1: 30.2, 29.1.0: none} | 2 | there are two slurs at 29.1
          score: a.xml$plans: [{choose: first, name: a}, {choose: third, name: a}] | 1 | two plans have the name 'a'
          """)
  void aWrongLessonIsRefusedWithItsLine(String lines, int line, String says) {
    assertThatExceptionOfType(UserFileException.class)
        .isThrownBy(() -> LessonFile.parse("mill.yaml", lines.replace('$', '\n')))
        .withMessageStartingWith("mill.yaml, line " + line + ": ")
        .withMessageContaining(says);
  }

  @Test
  void aNewDemandReplacesTheOldOneAboutTheSameThing() {
    LessonPlan plan =
        new LessonPlan(
            "mine",
            Optional.of("third"),
            ImmutableListMultimap.of(
                "stay", "3@31-38", "stay", "1@39-46", "fix", "42.1.5=II/4", "show", "3=8"));

    LessonPlan changed =
        plan.with(
            ImmutableListMultimap.of(
                "fix", "42.1.5=III/1", "fix", "3.1=/4", "stay", "2@39-46", "show", "3=9"));

    assertThat(changed.demands())
        .isEqualTo(
            ImmutableListMultimap.builder()
                .putAll("stay", "3@31-38", "2@39-46")
                .putAll("fix", "42.1.5=III/1", "3.1=/4")
                .put("show", "3=9")
                .build());
    assertThat(changed.choose()).contains("third");
  }

  @Test
  void aPlanBecomesABrief() {
    LessonPlan plan =
        new LessonPlan(
            "mine",
            Optional.empty(),
            ImmutableListMultimap.of("avoid", "extensions, harmonics", "stay", "3@1-2"));

    assertThat(plan.brief(DemandParser.of(Instruments.standard().named("viola"))).demands())
        .hasSize(3);
  }

  @Test
  void textThatIsNotOneLineIsRefused() {
    for (String text : List.of("", " ", "a\nb", "a\u0000", "\ud800")) {
      assertThatExceptionOfType(FingeringException.class).isThrownBy(() -> Lesson.of(text));
    }
  }
}
