package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A copy that is marked sparingly. */
class SparingTest {
  private static final int MARKED = 20;

  @TempDir Path folder;

  private static int count(String part, String text) {
    return Splitter.on(part).splitToList(text).size() - 1;
  }

  @Test
  void theDemoHasFewMarksAndIsReadBack() throws IOException {
    Path marked = folder.resolve("few.musicxml");
    Session.of("plan", DEMO, "--choose", "partly", "--write", marked, "--sparing").succeeded();
    String text = Files.readString(marked);
    assertThat(count("<fingering>", text)).isEqualTo(MARKED);
    // The shift to 3rd stays on the D string.
    assertThat(count("<string>", text)).isZero();
    assertThat(text).contains(">3rd pos.</words>");
    JsonNode chosen = Session.of("plan", DEMO, "--choose", "partly", "--format", "json").json();
    JsonNode again = Session.of("plan", marked, "--choose", "partly", "--format", "json").json();
    List<String> fingers = texts(chosen.get("notes"), "finger");
    assertThat(fingers).hasSizeGreaterThan(5 * MARKED);
    assertThat(texts(again.get("notes"), "finger")).isEqualTo(fingers);
    assertThat(texts(again.get("notes"), "string")).isEqualTo(texts(chosen.get("notes"), "string"));
  }

  @Test
  void sparingNeedsACopy() {
    assertThat(Session.of("plan", DEMO, "--sparing").refused(2).err())
        .contains("--sparing changes how --write marks the copy; give --write too");
  }
}
