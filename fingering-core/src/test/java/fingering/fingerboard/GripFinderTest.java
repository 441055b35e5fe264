package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.RandomMusic;
import fingering.tables.Position;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Double stops as players know them: common practice, no source. */
class GripFinderTest {
  private static List<Grip> grips(String instrument, String event) {
    Moment moment = Music.on(instrument).notes(event).moments().get(0);
    return new GripFinder(Taken.on(instrument).fingerboard()).grips(moment);
  }

  private static List<String> inFirst(String instrument, String event) {
    return grips(instrument, event).stream()
        .filter(grip -> !grip.divided() && grip.frame().position().equals(Position.FIRST))
        .map(GripFinderTest::fingers)
        .toList();
  }

  private static String fingers(Grip grip) {
    return grip.placements().stream()
        .map(p -> p.finger().symbol() + "@" + p.string())
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  @Test
  void oneFingerAcrossTwoStringsStopsAFifth() {
    assertThat(inFirst("viola", "D3+A3/1")).contains("1@4 1@3");
    assertThat(inFirst("violin", "E4+B4/1")).contains("1@3 1@2");
    assertThat(inFirst("cello", "D2+A2/1")).contains("1@4 1@3");
  }

  @ParameterizedTest
  @CsvSource({
    "E3+C4, 2@4 3@3, a sixth",
    "D3+B3, 1@4 2@3, a sixth",
    "F3+A3, 3@4 1@3, a third",
    "G3+B3, 4@4 2@3, a third",
    "D3+D4, 1@4 4@3, an octave",
    "A3+A4, 1@3 4@2, an octave",
    "B3+G4, 2@3 3@2, a sixth",
    "E4+C5, 1@2 2@1, a sixth"
  })
  void sixthsThirdsAndOctavesInFirstPositionOnTheViola(
      String notes, String fingers, String interval) {
    assertThat(inFirst("viola", notes + "/1")).as(interval).contains(fingers);
  }

  @Test
  void anOpenStringSoundsWithAStoppedNote() {
    assertThat(inFirst("viola", "D3+G3/1")).contains("1@4 0@3");
    assertThat(inFirst("viola", "C3+B3/1")).contains("0@4 2@3");
    assertThat(inFirst("viola", "C3+G3/1")).contains("0@4 0@3");
  }

  @Test
  void aFourNoteChordOfFirstPositionIsOneGrip() {
    assertThat(inFirst("viola", "C3+G3+E4+C5/1")).contains("0@4 0@3 1@2 2@1");
    assertThat(inFirst("violin", "G3+D4+B4+G5/1")).contains("0@4 0@3 1@2 2@1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"C3+Db3/1", "C3+D3/1", "C3+F3/1"})
  void twoNotesThatOnlyTheLowestStringHasAreDivided(String event) {
    assertThat(grips("viola", event)).isNotEmpty().allMatch(Grip::divided);
  }

  @Test
  void theBowCannotSkipAStringButPizzicatoCan() {
    assertThat(grips("viola", "C3+A4/1").stream().filter(g -> !g.divided()).map(x -> fingers(x)))
        .doesNotContain("0@4 0@1");
    assertThat(grips("viola", "C3+A4/1pz").stream().map(x -> fingers(x))).contains("0@4 0@1");
  }

  @Test
  void aNoteOutOfRangeOrAChordWithItHasNoGrip() {
    assertThat(grips("viola", "B2/1")).isEmpty();
    assertThat(grips("viola", "B2+G3/1")).isEmpty();
  }

  @Test
  void aGripHasAPlacement() {
    Frame frame = grips("violin", "A4/1").get(0).frame();
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Grip(ImmutableList.of(), frame, false));
  }

  @Test
  void fiveNotesOnFourStringsAreDivided() {
    assertThat(grips("viola", "C3+G3+E4+C5+E5/1")).isNotEmpty().allMatch(Grip::divided);
  }

  @Property(tries = 150)
  void theStringsOfABowedGripAreAdjacent(
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
      @ForAll @IntRange(min = 0, max = 2) int which) {
    String instrument = List.of("violin", "viola", "cello").get(which);
    int lowest = List.of(55, 48, 36).get(which);
    RandomMusic random = new RandomMusic(seed);
    String event = random.pitch(lowest, lowest + 25) + "+" + random.pitch(lowest, lowest + 25);
    for (Grip grip : grips(instrument, event + "/1")) {
      Placement low = grip.placements().get(0);
      Placement high = grip.placements().get(1);
      if (grip.divided()) {
        continue;
      }
      assertThat(Math.abs(low.string() - high.string())).as(event).isEqualTo(1);
      assertThat(low.frame()).as(event).isEqualTo(high.frame()).isEqualTo(grip.frame());
      if (!low.open() && low.finger() == high.finger()) {
        assertThat(low.semitones()).as(event).isEqualTo(high.semitones());
      }
      if (!low.open() && !high.open() && low.finger().number() < high.finger().number()) {
        assertThat(low.semitones()).as(event).isLessThan(high.semitones());
      }
    }
  }

  @Test
  void aHeldNoteIsPartOfTheGripOfTheNextMoment() {
    var passage = Music.viola().notes("D3*2+B3/1 C4/1");
    GripFinder finder = new GripFinder(Taken.on("viola").fingerboard());
    List<Grip> second = finder.grips(passage.moments().get(1));
    assertThat(second).isNotEmpty().allMatch(grip -> grip.placements().size() == 2);
    assertThat(second.stream().map(x -> fingers(x))).contains("1@4 3@3");
  }

  @Test
  void aHeldNoteThatCannotBeKeptIsReleased() {
    var passage = Music.viola().notes("C3*2+E4/1 D3/1");
    GripFinder finder = new GripFinder(Taken.on("viola").fingerboard());
    assertThat(finder.grips(passage.moments().get(1)))
        .isNotEmpty()
        .allMatch(grip -> grip.placements().size() == 1 && !grip.divided());
  }
}
