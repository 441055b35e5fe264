package fingering.web.running;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The folder of each operating system for what programs keep. */
class ProgramFolderTest {
  private static final Path HOME = Path.of("home").toAbsolutePath();

  @Test
  void linuxHasAFolderForStatesWhichMayBeNamed() {
    Path named = HOME.resolve("named");
    assertThat(ProgramFolder.of("Linux", Map.of(), HOME))
        .isEqualTo(HOME.resolve(".local/state/fingering"));
    assertThat(ProgramFolder.of("Linux", Map.of("XDG_STATE_HOME", named.toString()), HOME))
        .isEqualTo(named.resolve("fingering"));
    assertThat(ProgramFolder.of("Linux", Map.of("XDG_STATE_HOME", "relative"), HOME))
        .isEqualTo(HOME.resolve(".local/state/fingering"));
  }

  @Test
  void otherSystemsHaveTheirOwn() {
    assertThat(ProgramFolder.of("Mac OS X", Map.of("XDG_STATE_HOME", "/x"), HOME))
        .isEqualTo(HOME.resolve("Library/Application Support/Fingering"));
    assertThat(
            ProgramFolder.of(
                "Windows 11", Map.of("LOCALAPPDATA", HOME.resolve("local").toString()), HOME))
        .isEqualTo(HOME.resolve("local/Fingering"));
    assertThat(ProgramFolder.of("Windows 11", Map.of("LOCALAPPDATA", " "), HOME))
        .isEqualTo(HOME.resolve("AppData/Local/Fingering"));
  }
}
