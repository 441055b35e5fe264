package fingering.playability.check;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** {@code docs/arrangers.md} lists all kinds of findings and all levels. */
class CheckPageTest {

  @Test
  void pageListsEveryKind() throws IOException {
    String page = page();
    assertThat(FindingKind.values())
        .allSatisfy(kind -> assertThat(page).contains("`" + kind.id() + "`"));
  }

  @Test
  void pageListsEveryLevel() throws IOException {
    String page = page();
    assertThat(CheckLevel.presets())
        .allSatisfy(level -> assertThat(page).contains("`" + level + "`"));
  }

  private static String page() throws IOException {
    return Files.readString(Path.of("..", "docs", "arrangers.md"));
  }
}
