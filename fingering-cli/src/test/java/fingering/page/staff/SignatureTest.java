package fingering.page.staff;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.print.Clef;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Key signatures as every printed part has them (any book on notation; common practice, no source).
 */
class SignatureTest {
  private static List<Integer> steps(Clef clef, boolean sharp) {
    return IntStream.range(0, 7).map(i -> Signature.step(clef, i, sharp)).boxed().toList();
  }

  // Lines and spaces counted upward from the lowest line, 0.
  @Test
  void sharpsAreAtTheUsualPlaces() {
    assertThat(steps(Clef.TREBLE, true)).containsExactly(8, 5, 9, 6, 3, 7, 4);
    assertThat(steps(Clef.ALTO, true)).containsExactly(7, 4, 8, 5, 2, 6, 3);
    assertThat(steps(Clef.BASS, true)).containsExactly(6, 3, 7, 4, 1, 5, 2);
    assertThat(steps(Clef.TENOR, true)).containsExactly(2, 6, 3, 7, 4, 8, 5);
  }

  @Test
  void flatsAreAtTheUsualPlaces() {
    assertThat(steps(Clef.TREBLE, false)).containsExactly(4, 7, 3, 6, 2, 5, 1);
    assertThat(steps(Clef.ALTO, false)).containsExactly(3, 6, 2, 5, 1, 4, 0);
    assertThat(steps(Clef.BASS, false)).containsExactly(2, 5, 1, 4, 0, 3, -1);
    assertThat(steps(Clef.TENOR, false)).containsExactly(5, 8, 4, 7, 3, 6, 2);
  }

  @Test
  void everySignIsOnALineOrSpaceOfItsLetter() {
    List<Letter> sharps =
        List.of(Letter.F, Letter.C, Letter.G, Letter.D, Letter.A, Letter.E, Letter.B);
    for (Clef clef : List.of(Clef.TREBLE, Clef.ALTO, Clef.TENOR, Clef.BASS)) {
      for (int i = 0; i < 7; i++) {
        int sharp = Signature.step(clef, i, true);
        int flat = Signature.step(clef, i, false);
        assertThat(letter(clef, sharp)).isEqualTo(sharps.get(i));
        assertThat(letter(clef, flat)).isEqualTo(sharps.get(6 - i));
      }
    }
  }

  private static Letter letter(Clef clef, int step) {
    for (Letter letter : Letter.values()) {
      int natural = clef.step(new Pitch(letter, 0, 4));
      if (Math.floorMod(natural - step, 7) == 0) {
        return letter;
      }
    }
    throw new AssertionError("no letter on step " + step);
  }

  @Test
  void newKeyCancelsOldSignsWithNaturals() {
    // From A major to D flat major: three naturals and five flats.
    assertThat(Signature.keyWidth(-5, 3)).isEqualTo(8 * 8);
    // From E major to G major: three naturals and one sharp; back again none.
    assertThat(Signature.keyWidth(1, 4)).isEqualTo(4 * 8);
    assertThat(Signature.keyWidth(4, 1)).isEqualTo(4 * 8);
  }
}
