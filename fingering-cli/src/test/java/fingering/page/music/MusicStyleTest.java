package fingering.page.music;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.io.Resources;
import fingering.engraving.ink.Style;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The style sheet of the music, {@code music.css}. */
class MusicStyleTest {
  private static String sheet() throws IOException {
    return Resources.toString(
        Resources.getResource(Style.class, "/fingering/page/music.css"), StandardCharsets.UTF_8);
  }

  /** Without a rule, a line would be drawn as a black area. */
  @ParameterizedTest
  @EnumSource
  void everyStyleThatIsNotPlainHasARule(Style style) throws IOException {
    assertThat(sheet().matches("(?s).*\\." + style.css() + "\\b[^}]*\\{.*"))
        .as(style.css())
        .isNotEqualTo(style.plain());
  }

  @Test
  void notesAreDrawnInTheirInk() throws IOException {
    assertThat(sheet()).contains(".music svg,svg.music{fill:var(--ink)}");
  }
}
