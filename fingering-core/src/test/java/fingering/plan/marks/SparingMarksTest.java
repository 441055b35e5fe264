package fingering.plan.marks;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.musicxml.marking.NoteMarks;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The marks of a teacher who marks sparingly: common practice, no source. */
class SparingMarksTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);

  private static Plan plan(Passage passage, boolean asPrinted) {
    return Planner.of(passage, StandardRules.commonPractice())
        .plan(Brief.free("free").withKeepPrinted(asPrinted));
  }

  /** The marked notes: {@code 3rd pos. D5=1/2} is first finger on the second string. */
  private static String marked(Plan plan) {
    return PlanMarks.sparing(plan).stream()
        .map(marks -> describe(plan, marks))
        .collect(Collectors.joining(", "));
  }

  private static String describe(Plan plan, NoteMarks marks) {
    Note note =
        plan.passage().notes().stream()
            .filter(one -> one.address().equals(marks.note()))
            .findFirst()
            .orElseThrow();
    String string = marks.string().isPresent() ? "/" + marks.string().getAsInt() : "";
    return marks.words().map(words -> words + " ").orElse("")
        + note.sounding()
        + marks.finger().map(finger -> "=" + finger).orElse("")
        + string;
  }

  // @ and $ give the finger and string of the plan; the others follow from it
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a scale in 1st position needs its beginning       | violin | G3/1 A3/1 B3/1 C4/1 D4/1 E4/1 F#4/1 G4/1 | 1st pos. G3=0
          the fourth finger where the string is open too    | violin | F#4/1@2 G4/1 A4/1@4 G4/1 | 1st pos. F#4=2, A4=4
          the fourth finger alone on the highest string     | violin | G5/1@2 A5/1 B5/1@4 A5/1  | 1st pos. G5=2
          open again after the fourth finger                | violin | G4/1@3 A4/1@4 G4/1 A4/1@0 | 1st pos. G4=3, A4=4, A4=0
          open above 1st position, once in a measure        | violin | G4/1@1$3 A4/1@0 B4/1@3$3 A4/1@0 | 3rd pos. G4=1/3, A4=0
          and again in the next                             | violin | G4/1@1$3 A4/1@0 B4/1@3$3 B4/1@3$3 A4/1@0 G4/1@1$3 | 3rd pos. G4=1/3, A4=0, A4=0
          a finger above 1st position goes before open      | violin | G4/1@1$3 A4/1@2$3 B4/1@3$3 | 3rd pos. G4=1/3
          the lowest string can only be open                | violin | E4/1@3$4 G3/1 D4/1@2$4 | 3rd pos. E4=3/4
          a shift on the string tells finger and place      | violin | B4/1@1$2 C5/1@2$2 D5/1@1$2 E5/1@2$2 F5/1@3$2 | 1st pos. B4=1, 3rd pos. D5=1
          a shift to another string tells the string too    | violin | F#4/1@2$3 G4/1@3$3 D5/1@1$2 E5/1@2$2 | 1st pos. F#4=2, 3rd pos. D5=1/2
          under an open string the hand has to stay        | violin | D5/1@1$2 E5/1@0$1 B4/1@1$2 C5/1@2$2 | 3rd pos. D5=1/2, E5=0, 1st pos. B4=1
          come to on an open string, a finger tells the place  | violin | D5/1@1$2 r/2 E5/1@0$1 B4/1@1$2 C5/1@2$2 | 3rd pos. D5=1/2, 1st pos. E5=0, B4=1
          the first note on a further string, above 1st     | violin | D5/1@1$2 E5/1@2$2 C5/1@4$3 B4/1@3$3 | 3rd pos. D5=1/2, C5=4
          a stretched fourth finger                         | violin | D5/1@3$2 F5/1@4$2 D5/1@3$2 | 1st pos. D5=3, F5=4
          one finger that slides                            | violin | F#4/1@2 G4/1@3 G#4/1@3 | 1st pos. F#4=2, G#4=3
          a note under the finger of another letter         | violin | F#4/1@2 Ab4/1@3 F#4/1@2 | 1st pos. F#4=2, Ab4=3
          both notes of a double stop, struck again or not  | violin | E4/1 D4+B4/1 D4+B4/1 | 1st pos. E4=1, D4=0, B4=1
          the fourth finger once in a measure               | violin | G4/1@3 A4/1@4 G4/1@3 A4/1@4 G4/1@3 A4/1@4 | 1st pos. G4=3, A4=4, A4=4
          in place for four measures, then a reminder       | violin | D5/4@1$2 E5/4@2$2 D5/4@1$2 E5/4@2$2 D5/4@1$2 E5/4@2$2 D5/4@1$2 | 3rd pos. D5=1/2, E5=2
          none in 1st position                              | violin | F#4/4@2$3 G4/4@3$3 F#4/4 G4/4 F#4/4 G4/4 F#4/4 | 1st pos. F#4=2
          a note struck again                               | violin | G4/1 A4/1@4 A4/1@4 | 1st pos. G4=3, A4=4
          a measure of rest makes a new beginning           | violin | G4/1@3 r/4 F#4/1 G4/1 | 1st pos. G4=3, F#4=2
          a shorter rest makes none                         | violin | G4/1@3 r/3 F#4/1 G4/1 | 1st pos. G4=3
          the open hand of the cello                        | cello  | D2/1 E2/1@2 F#2/1@4 G2/1@0 | 1st pos. D2=1, E2=2, F#2=4
          the hand of the cello as it falls                 | cello  | C2/1 D2/1 E2/1@3 F2/1@4 G2/1@0 | 1st pos. C2=0
          """)
  void marks(String rule, String instrument, String events, String expected) {
    assertThat(marked(plan(Music.on(instrument).notes(events), true))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"F#4/1 G4/1@2 F#4/1, 'G4=3'", "F#4/1 G4/1@3 F#4/1, ''"})
  void aPrintedFingerThatDiffersFromThePlanIsReplaced(String events, String expected) {
    String marked = marked(plan(Music.violin().notes(events), false));
    assertThat(marked).isEqualTo("1st pos. F#4=2" + (expected.isEmpty() ? "" : ", " + expected));
  }

  @Property(tries = 60)
  void sparingMarksAreAmongTheFullMarksWithEveryPosition(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 20) int notes) {
    int lowest = LOWEST.get(which);
    RandomMusic random = new RandomMusic(seed);
    Music music = Music.on(INSTRUMENTS.get(which)).tempo(random.tempo());
    Plan plan =
        plan(
            music.notes(
                which < 2
                    ? random.withDoubleStops(notes, lowest, lowest + 28)
                    : random.line(notes, lowest, lowest + 26)),
            false);
    List<NoteMarks> full = PlanMarks.of(plan);
    List<NoteMarks> sparing = PlanMarks.sparing(plan);
    for (NoteMarks few : sparing) {
      NoteMarks all =
          full.stream().filter(one -> one.note().equals(few.note())).findFirst().orElseThrow();
      assertThat(few.finger()).isIn(Optional.empty(), all.finger());
      assertThat(few.string().isEmpty() || few.string().equals(all.string())).isTrue();
      assertThat(few.words()).isEqualTo(all.words());
    }
    assertThat(sparing.stream().filter(one -> one.words().isPresent()).count())
        .isEqualTo(full.stream().filter(one -> one.words().isPresent()).count());
  }
}
