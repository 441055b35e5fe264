package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Textbook acoustics of a string: partial n has nodes at k/n of the length. */
class NodeTest {
  @ParameterizedTest
  @CsvSource({"1, 2, 328, 164", "1, 4, 328, 82", "2, 3, 690, 460", "2, 5, 690, 276"})
  void aNodeDividesTheStringIntoEqualParts(int k, int n, double length, double millimetres) {
    assertThat(new Node(k, n).millimetres(length)).isCloseTo(millimetres, within(1e-9));
  }

  // the pure intervals 2:1, 3:2, 4:3 and 3:1 in semitones, 12 times the logarithm to the base 2
  @ParameterizedTest
  @CsvSource({"1, 2, 12", "1, 3, 7.019550", "1, 4, 4.980450", "2, 3, 19.019550"})
  void theNodeIsAtThePlaceOfThePureInterval(int k, int n, double semitones) {
    assertThat(new Node(k, n).place()).isCloseTo(semitones, within(1e-6));
  }

  // the partials of a string: octave, twelfth, double octave and the major third above it
  @ParameterizedTest
  @CsvSource({"2, 12", "3, 19.019550", "4, 24", "5, 27.863137"})
  void aPartialSoundsThatManyTimesTheFrequencyOfTheString(int n, double semitones) {
    assertThat(new Node(1, n).sounds()).isCloseTo(semitones, within(1e-6));
  }

  // common practice, no source: the 7th partial is out of tune with every scale
  @Test
  void allNodesOfPartialsTwoToEightAreKnownExceptTheSeventh() {
    assertThat(Node.all())
        .extracting(node -> node.numerator() + "/" + node.partial())
        .containsExactly(
            "1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6", "1/8",
            "3/8", "5/8", "7/8");
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1, 1", "0, 2", "2, 2", "3, 2", "2, 4", "-1, 3"})
  void fractionsThatAreNotNodesAreRefused(int k, int n) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new Node(k, n))
        .withMessage("there is no node " + k + "/" + n);
  }
}
