package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.fingerboard.Placement;
import fingering.music.Harmonic;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.rules.StandardRules;
import fingering.search.RequiredStays;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import fingering.tables.Tuning;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Thumb, harmonics and hands in plans: common practice, no source. */
class HandInPlansTest {
  private static Plan plan(Passage passage) {
    return plan(passage, LeftHand.MEDIUM);
  }

  private static Plan plan(Passage passage, LeftHand hand) {
    return Planner.of(passage, StandardRules.commonPractice(), hand).plan(Brief.free("free"));
  }

  /** The passage with every note changed. */
  private static Passage changed(Passage passage, Instrument on, UnaryOperator<Note> change) {
    ImmutableList<Moment> moments =
        passage.moments().stream()
            .map(
                moment ->
                    new Moment(
                        changed(moment.starting(), change),
                        changed(moment.held(), change),
                        moment.startMicros(),
                        moment.soundMicros(),
                        moment.restMicros(),
                        moment.slurred(),
                        moment.grace(),
                        moment.pizzicato(),
                        moment.style(),
                        moment.surroundings()))
            .collect(ImmutableList.toImmutableList());
    return new Passage(
        passage.title(),
        passage.partId(),
        passage.partName(),
        on,
        passage.tempo(),
        passage.measures(),
        moments,
        passage.remarks());
  }

  private static ImmutableList<Note> changed(List<Note> notes, UnaryOperator<Note> change) {
    return notes.stream().map(change).collect(ImmutableList.toImmutableList());
  }

  private static Note sounding(Note note, Pitch pitch) {
    return new Note(
        note.address(), note.place(), pitch, pitch, note.start(), note.length(), note.marks());
  }

  private static Note asHarmonic(Note note) {
    return new Note(
        note.address(),
        note.place(),
        note.written(),
        note.sounding(),
        note.start(),
        note.length(),
        note.marks().withHarmonic(Harmonic.NATURAL));
  }

  @Test
  void thumbPositionIsNamedWithThePitchUnderTheThumb() {
    Passage octaves = Music.cello().notes("E4+E5/1 F4+F5/1");
    Plan plan = plan(octaves);
    assertThat(plan.notes()).allMatch(note -> note.position().equals(Position.THUMB));
    assertThat(plan.notes().stream().map(PlannedNote::finger)).containsExactly("T", "3", "T", "3");
    // on its own string the thumb stops the lower note; on the next one it is a fifth higher
    assertThat(
            plan.notes().stream().map(n -> n.thumb(octaves.instrument()).orElseThrow().toString()))
        .containsExactly("E4", "B4", "F4", "C5");
  }

  @Test
  void outsideThumbPositionThereIsNoPitchUnderTheThumb() {
    Passage low = Music.cello().notes("D2/1 A2/1 A3/1");
    assertThat(plan(low).notes()).allMatch(note -> note.thumb(low.instrument()).isEmpty());
  }

  @Test
  void harmonicsCountInNoPosition() {
    Passage passage = Music.violin().notes("E6/1 F6/1 A5/1");
    Passage harmonic =
        changed(passage, passage.instrument(), n -> n.midi() == 89 ? n : asHarmonic(n));
    Plan plan = plan(harmonic);
    assertThat(plan.notes().get(0).placement().touch()).isPresent();
    assertThat(plan.notes().get(2).placement().touch()).isPresent();
    assertThat(plan.notesByPosition().values()).containsExactly(1);
    assertThat(plan.openStrings()).isZero();
  }

  @Test
  void harmonicsDoNotCountAsAStay() {
    Passage passage = Music.violin().notes("E6/1 D6/1 E6/1 D6/1");
    Passage harmonic =
        changed(passage, passage.instrument(), n -> n.midi() == 88 ? asHarmonic(n) : n);
    Planner planner = Planner.of(harmonic, StandardRules.commonPractice());
    assertThat(
            planner.tryPlan(Brief.free("two").withRequirement(RequiredStays.in(Position.THIRD, 2))))
        .isPresent();
    assertThat(
            planner.tryPlan(
                Brief.free("three").withRequirement(RequiredStays.in(Position.THIRD, 3))))
        .isEmpty();
    assertThat(
            Planner.of(passage, StandardRules.commonPractice())
                .tryPlan(Brief.free("three").withRequirement(RequiredStays.in(Position.FOURTH, 3))))
        .isPresent();
  }

  private static List<String> within(String position, Passage passage, LeftHand hand) {
    Brief brief = Brief.within("one", ImmutableSet.of(Position.parse(position)));
    return Planner.of(passage, StandardRules.commonPractice(), hand).plan(brief).notes().stream()
        .map(PlannedNote::finger)
        .toList();
  }

  @Test
  void aSmallHandCannotStayWhereALargeOneExtends() {
    Passage passage = Music.cello().notes("G#2/1 A#2/1 B#2/1");
    assertThat(within("half", passage, LeftHand.LARGE)).containsExactly("1", "2", "4");
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> within("half", passage, LeftHand.SMALL));
  }

  private static List<Placement> placements(Plan plan) {
    return plan.notes().stream().map(PlannedNote::placement).toList();
  }

  // 1-2-4 with the hand extended forward, the tetrachord of D major in any cello method
  @ParameterizedTest
  @CsvSource({
    "D2 E2 F#2 G2, 1 2 4 0",
    "A2 B2 C#3 D3 E3 F#3 G#3 A3, 1 2 4 0 1 2 4 0",
    "Ab2 Bb2 C3 D3, 1 2 4 0",
    "D2 E2 F2 G2, 1 3 4 0",
    "D2 E2 D2 C2, 1 3 1 0"
  })
  void aMajorThirdOfTheCelloIsExtendedAndAMinorOneIsNot(String notes, String fingers) {
    Plan plan = plan(Music.cello().notes(notes.replace(" ", "/0.5 ") + "/0.5"));
    assertThat(plan.notes().stream().map(PlannedNote::finger).collect(Collectors.joining(" ")))
        .isEqualTo(fingers);
  }

  @Test
  void theFourFingerHandPlaysTheThirdFingerOnTheNeckOfTheBass() {
    Passage scale = Music.on("bass").notes("D3/1 Eb3/1 E3/1 F3/1");
    assertThat(within("4th", scale, LeftHand.MEDIUM.withFourFingers(true)))
        .containsExactly("1", "2", "3", "4");
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> within("4th", scale, LeftHand.MEDIUM));
  }

  private static Tuning strings(String name, String... pitches) {
    ImmutableList.Builder<OpenString> strings = ImmutableList.builder();
    for (int i = 0; i < pitches.length; i++) {
      strings.add(new OpenString(i + 1, Pitch.parse(pitches[i])));
    }
    return new Tuning("viola", name, strings.build());
  }

  // a viola strung as a violin: the part a fifth higher is in the same places
  @Property(tries = 40)
  void aPassageAFifthHigherOnStringsAFifthHigherHasTheSamePlan(@ForAll int seed) {
    String events = new RandomMusic(seed).withDoubleStops(12, 48, 76);
    Passage low = Music.viola().notes(events);
    Instrument higher = low.instrument().tuned(strings("a-fifth-up", "E5", "A4", "D4", "G3"));
    Passage high =
        changed(
            low,
            higher,
            note ->
                sounding(note, Pitch.spelled(note.sounding().letterNumber() + 4, note.midi() + 7)));
    Plan below = plan(low);
    Plan above = plan(high);
    assertThat(above.total()).as(events).isEqualTo(below.total());
    assertThat(placements(above)).as(events).isEqualTo(placements(below));
    assertThat(above.shifts()).isEqualTo(below.shifts());
  }
}
