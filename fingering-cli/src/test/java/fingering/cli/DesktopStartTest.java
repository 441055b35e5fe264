package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A start by a double click, and those that look like one. */
class DesktopStartTest {
  private static final Optional<String> JAVA = Optional.of("/opt/java/bin/java");

  @TempDir Path devices;

  private Path terminal;
  private Path nowhere;

  @BeforeEach
  void makeDevices() throws IOException {
    terminal = Files.createFile(devices.resolve("tty"));
    nowhere = Files.createFile(devices.resolve("null"));
    Files.createDirectory(devices.resolve("fd"));
  }

  private void streams(Path in, Path out, Path err) throws IOException {
    Files.createSymbolicLink(devices.resolve("fd/0"), in);
    Files.createSymbolicLink(devices.resolve("fd/1"), out);
    Files.createSymbolicLink(devices.resolve("fd/2"), err);
  }

  @Test
  void terminalGetsHelp() throws IOException {
    streams(terminal, terminal, terminal);
    assertThat(DesktopStart.is(false, JAVA, devices)).isFalse();
  }

  @Test
  void pipeAndScriptGetHelp() throws IOException {
    streams(nowhere, Files.createFile(devices.resolve("pipe")), nowhere);
    assertThat(DesktopStart.is(false, JAVA, devices)).isFalse();
  }

  @Test
  void scriptThatReadsOnlyErrorsGetsHelp() throws IOException {
    streams(nowhere, nowhere, Files.createFile(devices.resolve("log")));
    assertThat(DesktopStart.is(false, JAVA, devices)).isFalse();
  }

  @Test
  void startWithoutAnyOutputOpensThePage() throws IOException {
    streams(nowhere, nowhere, nowhere);
    assertThat(DesktopStart.is(false, JAVA, devices)).isTrue();
  }

  @Test
  void packagingMaySayIt() throws IOException {
    streams(terminal, terminal, terminal);
    assertThat(DesktopStart.is(true, JAVA, devices)).isTrue();
  }

  @Test
  void windowsHasAJavaWithoutConsole() {
    Path none = devices.resolve("none");
    assertThat(DesktopStart.is(false, Optional.of("C:\\java\\bin\\javaw.exe"), none)).isTrue();
    assertThat(DesktopStart.is(false, Optional.of("C:\\java\\bin\\java.exe"), none)).isFalse();
    assertThat(DesktopStart.is(false, Optional.empty(), none)).isFalse();
  }

  @Test
  void opensTheDemoOrTheGivenScore() {
    assertThat(DesktopStart.opening()).containsExactly("open", "--demo");
    assertThat(DesktopStart.opening("part.mxl")).containsExactly("open", "--demo", "part.mxl");
  }

  @Test
  void argumentsAreACommandUnlessPackagingSaysOtherwise() {
    assertThat(DesktopStart.command("compare", "part.mxl")).containsExactly("compare", "part.mxl");
    System.setProperty(DesktopStart.PROPERTY, "true");
    try {
      assertThat(DesktopStart.command("part.mxl")).containsExactly("open", "--demo", "part.mxl");
    } finally {
      System.clearProperty(DesktopStart.PROPERTY);
    }
  }
}
