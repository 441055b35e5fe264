package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.file.ScoreLimit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The option --limit, and the page that explains it. */
final class LimitOptionTest {

  @ParameterizedTest
  @ValueSource(strings = {"compare", "plan", "marks", "handout", "learn"})
  void everyCommandThatReadsAScoreAppliesTheLimit(String command) {
    String err = Session.of(command, DEMO, "--limit", "measures=10").refused(2).err();

    assertThat(err).contains("The score has more than 10 measures in all parts");
  }

  @Test
  void aHighLimitChangesNothing() {
    assertThat(Session.of("plan", DEMO, "--limit", "measures=100,bytes=1M").succeeded().answer())
        .isEqualTo(Session.of("plan", DEMO).answer());
  }

  @ParameterizedTest
  @ValueSource(strings = {"pages=9", "measures", "measures=0", "bytes=9G"})
  void aWrongLimitIsRefused(String limit) {
    assertThat(Session.of("plan", DEMO, "--limit", limit).refused(2).err()).contains("--limit");
  }

  @Test
  void thePageStatesEveryLimit() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "limits.md"));

    for (ScoreLimit limit : ScoreLimit.values()) {
      assertThat(page).contains("| `%s` | %s | ".formatted(limit.key(), shown(limit)));
    }
  }

  @Test
  void thePageShowsWhatTheCommandPrints() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "limits.md"));
    String err = Session.of("plan", DEMO, "--limit", "measures=20").refused(2).err();

    assertThat(page).contains("    " + err.strip() + "\n");
  }

  private static String shown(ScoreLimit limit) {
    boolean bytes = limit == ScoreLimit.BYTES || limit == ScoreLimit.UNPACKED;
    return bytes
        ? (limit.defaultValue() >> 20) + " MiB"
        : "%,d".formatted(limit.defaultValue()).replace(',', ' ');
  }
}
