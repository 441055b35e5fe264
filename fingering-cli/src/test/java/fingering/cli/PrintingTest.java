package fingering.cli;

import static fingering.cli.Session.DEMO;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.command.Commands;
import fingering.cli.command.ExitCode;
import fingering.cli.terminal.Screen;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Output that cannot be printed is an error in every command, except where nobody reads it. */
final class PrintingTest {
  private static final String FULL = "No space left on device";
  private static final String CLOSED = "Broken pipe";

  /** Takes some bytes, then fails, as a full disk does. */
  private static final class Failing extends OutputStream {
    private final String reason;
    private int room;

    Failing(String reason, int room) {
      this.reason = reason;
      this.room = room;
    }

    @Override
    public void write(int one) throws IOException {
      if (room-- <= 0) {
        throw new IOException(reason);
      }
    }
  }

  private static Session run(OutputStream out, String... words) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Screen errors = Screen.of(err, UTF_8);
    int code = Main.run(Screen.of(out, UTF_8), errors, words);
    errors.flush();
    return new Session(code, "", err.toString(UTF_8));
  }

  /** A command line for every command, with something to print. */
  private static List<List<String>> runs() {
    String demo = DEMO.toString();
    return List.of(
        List.of("demo"),
        List.of("compare", demo),
        List.of("compare", demo, "--output", "-"),
        List.of("plan", demo),
        List.of("plan", demo, "--format", "json"),
        List.of("plan", demo, "--format", "html"),
        List.of("marks", demo),
        List.of("handout", demo),
        List.of(
            "practice",
            demo,
            "--choose",
            "third",
            "--from",
            "60",
            "--to",
            "96",
            "--by",
            "2026-12-12",
            "--today",
            "2026-11-21"),
        List.of("journal", "show", "--journal", "none.journal"),
        List.of("scale", "D", "major", "--instrument", "viola"),
        List.of("audition", DEMO.resolveSibling("hearing.yaml").toString()),
        List.of("open", "--no-browser"),
        List.of("chart", "viola"),
        List.of("lesson", "list", DEMO.resolveSibling("..").resolve("examples").toString()),
        List.of("check", demo),
        List.of("check", demo, "--format", "json"),
        List.of("check", "--print-level", "beginner"),
        List.of("learn", "--help"),
        List.of("completion", "bash"),
        List.of("man"));
  }

  private static Stream<List<String>> commandLines() {
    Stream<List<String>> helps =
        Commands.all().getSubcommands().keySet().stream().map(name -> List.of(name, "--help"));
    Stream<List<String>> others =
        Stream.of(List.of("--help"), List.of("--version"), List.of("plan", "--version"));
    return Stream.of(runs().stream(), helps, others).flatMap(each -> each);
  }

  @ParameterizedTest
  @MethodSource("commandLines")
  void aFullDiskIsAnError(List<String> words) {
    for (int room : new int[] {0, 3}) {
      Session session = run(new Failing(FULL, room), words.toArray(String[]::new));

      assertThat(session.refused(ExitCode.REFUSED).err())
          .isEqualTo(
              "fingering: The output is cut off because the disk is full: make room, and run the"
                  + " command again."
                  + System.lineSeparator());
    }
  }

  @Test
  void everyCommandIsTried() {
    assertThat(runs().stream().map(words -> words.get(0)).distinct())
        .containsExactlyInAnyOrderElementsOf(Commands.all().getSubcommands().keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Input/output error", "Bad file descriptor", "Stream Closed"})
  void outputToABrokenDeviceIsAnError(String reason) {
    assertThat(run(new Failing(reason, 0), "--version").refused(ExitCode.REFUSED).err())
        .contains("The output could not be printed: check the file or device that it goes to.");
  }

  @Test
  void aReaderThatHasEndedIsNoError() {
    Session session = run(new Failing(CLOSED, 100), "compare", DEMO.toString());

    assertThat(session.err()).isEmpty();
    assertThat(session.code()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void aCheckWhoseReaderHasEndedStopsWithoutAMessage() {
    Session session = run(new Failing(CLOSED, 100), "check", DEMO.toString());

    assertThat(session.err()).isEmpty();
    assertThat(session.code()).as("not everything was checked").isEqualTo(ExitCode.REFUSED);
  }

  @Test
  void nothingIsPrintedAfterAFailure() {
    ByteArrayOutputStream taken = new ByteArrayOutputStream();
    OutputStream once =
        new OutputStream() {
          private boolean failed;

          @Override
          public void write(int one) throws IOException {
            if (!failed) {
              failed = true;
              throw new IOException(FULL);
            }
            taken.write(one);
          }
        };
    Screen screen = Screen.of(once, UTF_8);

    for (int part = 0; part < 3; part++) {
      screen.print("a part of the text");
      screen.flush();
    }

    assertThat(Screen.failure(screen)).get().extracting(IOException::getMessage).isEqualTo(FULL);
    assertThat(taken.size()).as("no text with a gap").isZero();
  }

  @Test
  void errorsThatCannotBePrintedChangeNothing() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Screen nowhere = Screen.of(new Failing(FULL, 0), UTF_8);

    assertThat(Main.run(Screen.of(out, UTF_8), nowhere, "nosuch")).isEqualTo(ExitCode.REFUSED);
    assertThat(Main.run(Screen.of(out, UTF_8), nowhere, "--version")).isEqualTo(ExitCode.DONE);
  }
}
