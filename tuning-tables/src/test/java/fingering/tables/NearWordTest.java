package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words with common typing errors, and different words of the same program. */
final class NearWordTest {
  private static final ImmutableList<String> KNOWN =
      ImmutableList.of(
          "plan",
          "show",
          "show-shift",
          "--measures",
          "--low-thumb",
          "-V",
          "cello",
          "beginner",
          "positions");

  @ParameterizedTest
  @CsvSource({
    "pln, plan", // a letter left out
    "plaan, plan", // a letter too many
    "plna, plan", // two letters swapped
    "hello, cello", // another first letter
    "PLAN, plan",
    "-measures, --measures",
    "mesures, --measures",
    "pos, positions", // a beginning
    "-v, -V",
    "shwo, show",
    "show-shfit, show-shift",
    "begginer, beginner",
  })
  void aMistypedWordIsNearTheOneMeant(String typed, String meant) {
    assertThat(NearWord.to(typed, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"--loud", "violin", "novice", "-q", "woman", "x", "''", "-", "--"})
  void aDifferentWordIsNearNone(String typed) {
    assertThat(NearWord.to(typed, KNOWN)).isEmpty();
  }

  @Test
  void theAdviceNamesTheNearWordOrAll() {
    ImmutableList<String> known = ImmutableList.of("violin", "viola");
    assertThat(NearWord.advice("voila", known)).isEqualTo("did you mean 'viola'?");
    assertThat(NearWord.advice("banjo", known)).isEqualTo("choose one of violin, viola");
    assertThat(NearWord.to("viola", ImmutableList.of())).isEmpty();
  }
}
