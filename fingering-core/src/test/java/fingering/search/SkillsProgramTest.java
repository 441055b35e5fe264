package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.demand.DemandParser;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame.Shape;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.EveryRule;
import fingering.scoring.Scoring;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans of whole briefs on longer music, against an integer program that counts independently. */
class SkillsProgramTest {
  private static final Path DEMO = Path.of("..", "docs", "demo", "demo.musicxml");
  private static final Scoring USUAL = StandardRules.commonPractice();

  private static Passage demo() {
    return ScoreReader.read(ScoreFile.read(DEMO)).passage(PassageRequest.WHOLE);
  }

  private static Plan plan(Scoring scoring, Passage passage, String... demands) {
    DemandParser text = DemandParser.of(passage.instrument());
    Brief.Builder brief = Brief.builder("asked");
    for (int i = 0; i < demands.length; i += 2) {
      text.read(demands[i], demands[i + 1]).forEach(brief::addDemand);
    }
    return Planner.of(passage, scoring).plan(brief.build());
  }

  /** The grips that meet the demands on single moments, those of some measures in 3rd position. */
  private static LayeredGraph layers(
      Scoring scoring, Passage passage, Predicate<Grip> kept, int from, int to) {
    ImmutableList<ImmutableList<Grip>> all = Planner.of(passage, scoring).grips();
    return new LayeredGraph(passage.moments(), all, scoring, Penalty.NONE)
        .excluding(
            (m, j) -> {
              Grip grip = all.get(m).get(j);
              int measure = measure(passage, m);
              boolean inThird = measure < from || measure > to || inPosition(grip, Position.THIRD);
              return !(kept.test(grip) && inThird);
            });
  }

  private static int measure(Passage passage, int m) {
    return Integer.parseInt(passage.moments().get(m).place().measure());
  }

  private static boolean inPosition(Grip grip, Position position) {
    return grip.frame().position().equals(position)
        && grip.placements().stream()
            .allMatch(p -> p.open() || p.frame().position().equals(position));
  }

  private static boolean inTheHand(Grip grip) {
    return grip.placements().stream()
        .allMatch(p -> p.open() || (p.stretch() == 0 && closed(p.frame().shape())));
  }

  private static boolean closed(Shape shape) {
    return shape != Shape.EXTENDED_BACK && shape != Shape.EXTENDED_FORWARD;
  }

  /** Stopped notes that begin at a moment, in a position. */
  private static FlowProgram.Shown notesIn(Passage passage, int number) {
    return (m, before, now) -> {
      Moment moment = passage.moments().get(m);
      long notes = 0;
      for (Note note : moment.starting()) {
        Placement p = now.placements().get(now.notes(moment).indexOf(note));
        String name = p.frame().position().toString();
        notes += p.finger() != Finger.OPEN && name.equals(String.valueOf(number)) ? 1 : 0;
      }
      return notes;
    };
  }

  private static long stopped(Grip grip) {
    return grip.placements().stream().filter(p -> p.finger() != Finger.OPEN).count();
  }

  /** By measure, from its first moment to the one after its last. */
  private static List<int[]> measures(Passage passage) {
    List<int[]> measures = new ArrayList<>();
    int from = 0;
    for (int m = 1; m <= passage.moments().size(); m++) {
      if (m == passage.moments().size()
          || passage.moments().get(m).place().measureIndex()
              != passage.moments().get(from).place().measureIndex()) {
        measures.add(new int[] {from, m});
        from = m;
      }
    }
    return measures;
  }

  @Test
  void theDemoInThreePositionsWithAStayWithoutExtensionCostsWhatTheProgramFinds() {
    Passage passage = demo();
    Plan plan =
        plan(
            USUAL,
            passage,
            "show",
            "1=4",
            "show",
            "2=16",
            "show",
            "3=8",
            "stay",
            "3@17-20",
            "avoid",
            "extensions");
    LayeredGraph graph = layers(USUAL, passage, SkillsProgramTest::inTheHand, 17, 20);
    assertThat(passage.moments()).hasSizeGreaterThan(140);
    assertThat(
            FlowProgram.of(graph, plan.total())
                .showing("1st", 4, notesIn(passage, 1))
                .showing("2nd", 16, notesIn(passage, 2))
                .showing("3rd", 8, notesIn(passage, 3))
                .least())
        .hasValue(plan.total());
    // The skills matter: without them there is a cheaper plan.
    assertThat(plan.total())
        .isGreaterThan(FlowProgram.of(graph, plan.total()).least().orElseThrow());
  }

  @Test
  void aWholeMeasureInSecondCostsWhatTheProgramFinds() {
    Passage passage = demo();
    Plan plan =
        plan(
            USUAL,
            passage,
            "show",
            "1=4",
            "show-stay",
            "2=1",
            "show-technique",
            "fourth-finger",
            "stay",
            "3@17-20",
            "avoid",
            "open-strings@1-8");
    LayeredGraph graph = layers(USUAL, passage, grip -> true, 17, 20);
    LayeredGraph stopped = graph.excluding((m, j) -> openEarly(passage, m, graph, j));
    assertThat(
            FlowProgram.of(stopped, plan.total())
                .showing("1st", 4, notesIn(passage, 1))
                .showing("fourth", 1, (m, before, now) -> fingers(now, "4"))
                .staying(
                    measures(passage),
                    grip -> inPosition(grip, Position.SECOND) ? 1 : 0,
                    SkillsProgramTest::stopped)
                .least())
        .hasValue(plan.total());
  }

  private static long fingers(Grip grip, String finger) {
    return grip.placements().stream().filter(p -> p.finger().symbol().equals(finger)).count();
  }

  /** Whether a grip is an open string in measures 1 to 8, all notes of which can be stopped. */
  private static boolean openEarly(Passage passage, int m, LayeredGraph graph, int j) {
    int measure = measure(passage, m);
    return measure >= 1 && measure <= 8 && fingers(graph.grips().get(m).get(j), "0") > 0;
  }

  /** Whether the hand shifts up with one finger on its string. */
  private static long guidedUp(Passage passage, int m, Grip before, Grip now) {
    if (m == 0 || passage.moments().get(m).restMicros() > 0) {
      return 0;
    }
    Placement left = before.placements().get(0);
    Placement reached = now.placements().get(0);
    Note from = passage.moments().get(m - 1).starting().get(0);
    Note to = passage.moments().get(m).starting().get(0);
    boolean respelled = from.midi() == to.midi() && !from.sounding().equals(to.sounding());
    return !respelled
            && left.finger() != Finger.OPEN
            && left.finger() == reached.finger()
            && left.string() == reached.string()
            && now.frame().first() > before.frame().first()
        ? 1
        : 0;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void sixtyNotesWithRequiredGuidedShiftsCostWhatTheProgramFinds(int seed) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(random.tempo()).notes(random.line(60, 54, 76)); // F#3-E5
    Plan plan =
        plan(
            USUAL,
            passage,
            "show",
            "1=10",
            "show",
            "2=10",
            "show-shift",
            "up same-finger=3",
            "stay",
            "3@5-6",
            "avoid",
            "open-strings");
    LayeredGraph graph = layers(USUAL, passage, grip -> fingers(grip, "0") == 0, 5, 6);
    assertThat(passage.moments()).hasSize(60);
    assertThat(
            FlowProgram.of(graph, plan.total())
                .showing("1st", 10, notesIn(passage, 1))
                .showing("2nd", 10, notesIn(passage, 2))
                .showing("up", 3, (m, before, now) -> guidedUp(passage, m, before, now))
                .least())
        .hasValue(plan.total());
  }

  /**
   * With a habit and points for each hand the program is harder to solve, so the music is short.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void plansByEveryRuleCostWhatTheProgramFinds(int seed) {
    Scoring scoring = EveryRule.scoring();
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(random.tempo()).notes(random.line(14, 54, 76)); // F#3-E5
    Plan plan = plan(scoring, passage, "show", "1=3", "show", "2=3", "avoid", "open-strings");
    LayeredGraph graph = layers(scoring, passage, grip -> fingers(grip, "0") == 0, 0, -1);
    assertThat(
            FlowProgram.of(graph, plan.total())
                .showing("1st", 3, notesIn(passage, 1))
                .showing("2nd", 3, notesIn(passage, 2))
                .least())
        .hasValue(plan.total());
  }
}
