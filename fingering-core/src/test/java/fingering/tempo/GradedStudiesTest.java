package fingering.tempo;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * H. Schradieck, The School of Violin-Technics, book I, Exercises for Promoting Dexterity (in the
 * public domain), orders its sections by what is added: I on one string, II on two, IV on three, V
 * on four; VII first and second position, IX passing through three positions, XI through four, XIII
 * through five, all in slurred sixteenths, each measure many times over. The headings are from
 * memory. The notes here are not Schradieck's: one figure, 1-2-3-4, is set by the principle of each
 * section, and a section that passes through positions goes back to the first as it is repeated.
 *
 * <p>For one and the same player the highest comfortable tempo must not rise from section to
 * section. The other sections do not belong to this order: III is for the wrist, changes string at
 * every note and is slower than IV and V; VI, VIII and so on stay in one higher position.
 */
class GradedStudiesTest {
  /** Letters and octaves of the open strings of the violin, from the highest. */
  private static final List<String> OPEN = List.of("E5", "A4", "D4", "G3");

  private static final List<String> LETTERS = List.of("C", "D", "E", "F", "G", "A", "B");

  private static final int BEATS = 16;

  /** The place of the figure in one beat. */
  private record Beat(int string, int position) {}

  private static List<Beat> onStrings(int... strings) {
    return IntStream.of(strings).mapToObj(string -> new Beat(string, 1)).toList();
  }

  private static List<Beat> throughPositions(int highest) {
    return IntStream.rangeClosed(1, highest).mapToObj(position -> new Beat(2, position)).toList();
  }

  /** The sections in the order of the book. */
  private static List<List<Beat>> sections() {
    return List.of(
        onStrings(2),
        onStrings(2, 1),
        onStrings(3, 2, 1, 2),
        onStrings(4, 3, 2, 1, 2, 3),
        throughPositions(2),
        throughPositions(3),
        throughPositions(4),
        throughPositions(5));
  }

  private static double comfortable(List<Beat> beats, PlayerSpeed level) {
    return comfortable(beats, 0, level);
  }

  /**
   * The comfortable tempo of a section.
   *
   * @param wrist the string of every second note, if it is another one
   */
  private static double comfortable(List<Beat> beats, int wrist, PlayerSpeed level) {
    List<String> events = new ArrayList<>();
    List<String> taken = new ArrayList<>();
    for (int b = 0; b < BEATS; b++) {
      Beat beat = beats.get(b % beats.size());
      for (int finger = 1; finger <= 4; finger++) {
        int string = wrist > 0 && finger % 2 == 0 ? wrist : beat.string();
        events.add("~" + natural(string, beat.position() + finger - 1) + "/0.25");
        taken.add(string + ":" + finger + ":" + beat.position());
      }
    }
    Plan plan = Studies.violin("quarter=60", String.join(" ", events), String.join(" ", taken));
    return ComfortableTempo.of(plan, level).factor().orElseThrow();
  }

  /** The note of C major a number of letters above an open string. */
  private static String natural(int string, int letters) {
    String open = OPEN.get(string - 1);
    int above = LETTERS.indexOf(open.substring(0, 1)) + letters;
    int octave = Integer.parseInt(open.substring(1)) + above / LETTERS.size();
    return LETTERS.get(above % LETTERS.size()) + octave;
  }

  @ParameterizedTest
  @ValueSource(strings = {"advanced", "common-practice", "intermediate", "beginner"})
  void theComfortableTempoNeverRisesFromSectionToSection(String level) {
    assertThat(
            sections().stream()
                .map(beats -> -comfortable(beats, PlayerSpeed.named(level)))
                .toList())
        .isSorted();
  }

  @Test
  void eachFurtherStringAndPositionLowersTheTempo() {
    PlayerSpeed level = PlayerSpeed.named("common-practice");
    List<List<Beat>> steps =
        Stream.of(0, 1, 4, 5, 6, 7).map(section -> sections().get(section)).toList();
    assertThat(steps.stream().map(beats -> -comfortable(beats, level)).toList())
        .isSorted()
        .doesNotHaveDuplicates();
  }

  /** The model does not follow the order of the book here. */
  @Test
  void theSectionForTheWristIsSlowerThanThoseAfterIt() {
    PlayerSpeed level = PlayerSpeed.named("advanced");
    assertThat(comfortable(onStrings(2), 1, level))
        .isLessThan(comfortable(sections().get(1), level))
        .isLessThan(comfortable(sections().get(3), level));
  }
}
