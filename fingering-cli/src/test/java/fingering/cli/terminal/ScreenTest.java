package fingering.cli.terminal;

import static fingering.cli.Session.DEMO;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.google.common.collect.ImmutableMap;
import fingering.cli.Main;
import fingering.musicxml.SelectionException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScreenTest {
  private static final int COLUMNS = 80;
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  @TempDir Path folder;

  /** The text on the screen, and the errors. */
  private record Seen(ByteArrayOutputStream out, ByteArrayOutputStream err) {
    String out(Charset charset) {
      return out.toString(charset);
    }
  }

  private static Seen seen(Charset charset, Object... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Screen screen = Screen.of(out, charset);
    Screen errors = Screen.of(err, charset);
    Main.run(screen, errors, Stream.of(arguments).map(String::valueOf).toArray(String[]::new));
    screen.flush();
    errors.flush();
    return new Seen(out, err);
  }

  private static Object[] words(String typed) {
    return Stream.of(typed.split(" "))
        .map(word -> word.equals("DEMO") ? DEMO.toString() : word.replace("docs/", "../docs/"))
        .toArray();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare DEMO --with-second",
        "plan DEMO --best 3",
        "plan DEMO --choices 17-18",
        "plan DEMO --why 17.1",
        "marks DEMO",
        "practice DEMO --from quarter=60 --to quarter=96 --by 2026-12-12 --today 2026-12-01",
        "chart violin --position 1 --key D-major",
        "chart bass --position 2.5",
        "chart cello",
        "chart viola --string C",
        "check docs/examples/lanterns.musicxml",
        "scale Bb major --instrument violin",
        "audition docs/demo/hearing.yaml"
      })
  void replacementsKeepColumnsAligned(String typed) {
    String full = seen(UTF_8, words(typed)).out(UTF_8);
    String plain = seen(US_ASCII, words(typed)).out(US_ASCII);

    assertThat(plain).doesNotContain("\ufffd");
    assertThat(plain.chars().filter(each -> each == '?'))
        .hasSameSizeAs(full.chars().filter(each -> each == '?').boxed().toList());
    assertThat(plain.lines()).hasSameSizeAs(full.lines().toList());
    assertThat(plain.lines()).allMatch(line -> line.length() <= COLUMNS);
    // The spaces between columns are in the same places.
    List<String> one = full.lines().toList();
    List<String> other = plain.lines().toList();
    for (int i = 0; i < one.size(); i++) {
      int last = one.get(i).lastIndexOf("  ");
      if (last > 0) {
        assertThat(other.get(i).substring(last).strip().length())
            .as(one.get(i))
            .isGreaterThanOrEqualTo(one.get(i).substring(last).strip().length());
        assertThat(other.get(i).charAt(last)).as(one.get(i)).isEqualTo(' ');
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "F♯5 and B♭3, F#5 and Bb3",
    "m. 9–12 × 2, m. 9-12 x 2",
    "2½ position, 2.5 position",
    "½ position, 1/2 position",
    "1◇4   next, 1<>4  next",
    "Zoë plays Größe, Zoe plays Grosse",
    "‘sul G’ …, 'sul G' ..."
  })
  void replacementsAreReadable(String sign, String plain) {
    assertThat(AsciiFallback.fit(sign, US_ASCII.newEncoder()::canEncode))
        .isEqualTo(plain.replace("\\", ""));
  }

  @Test
  void charactersThatCanBeShownAreKept() {
    assertThat(seen(ISO_8859_1, "compare", DEMO, "--notes").out(ISO_8859_1))
        .contains("×", "#")
        .doesNotContain("♯", "?");
  }

  @Test
  void errorsAreReplacedToo() {
    Seen seen = seen(US_ASCII, "compare", DEMO, "--tempo", "hlf=9");
    assertThat(seen.err().toString(US_ASCII)).contains("eighth ...").doesNotContain("?", "\ufffd");
  }

  // JSON: RFC 8259, section 8.1: text exchanged between systems is in UTF-8.
  @Test
  void formatsForOtherProgramsStayInUtf8() throws IOException {
    Seen plain = seen(US_ASCII, "plan", DEMO, "--choose", "first", "--format", "json");
    assertThat(plain.out(UTF_8))
        .isEqualTo(seen(UTF_8, "plan", DEMO, "--choose", "first", "--format", "json").out(UTF_8));
    assertThat(new ObjectMapper().readTree(plain.out(UTF_8))).isNotEmpty();
    assertThat(
            seen(US_ASCII, "check", "../docs/examples/lanterns.musicxml", "--format", "html")
                .out(UTF_8))
        .contains("–");
    assertThat(seen(US_ASCII, "chart", "viola", "--format", "svg").out(UTF_8)).contains("♯");
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8, ISO-8859-1, '', '', UTF-8",
    "ascii, UTF-8, UTF-8, UTF-8, US-ASCII",
    "'', ISO-8859-1, UTF-8, UTF-8, ISO-8859-1",
    "'', '', IBM850, windows-1252, IBM850",
    "'', '', '', ANSI_X3.4-1968, US-ASCII",
    "'', '', '', nonsense, UTF-8"
  })
  void theEnvironmentOverridesTheTerminalAndTheTerminalTheSystem(
      String asked, String stdout, String terminal, String system, String expected) {
    Map<String, String> properties =
        ImmutableMap.of(
            "stdout.encoding", stdout, "sun.stdout.encoding", terminal, "native.encoding", system);
    UnaryOperator<String> property = name -> properties.getOrDefault(name, "");

    assertThat(Screen.charset(ImmutableMap.of(Screen.VARIABLE, asked), property, "stdout"))
        .isEqualTo(Charset.forName(expected));
  }

  @Test
  void errorsAreWrappedInATerminalAndOneLineElsewhere() {
    String sentence =
        "Viola has no measures '500': " + "it has measures 1 to 267 and marks; ".repeat(4);
    String[] lines =
        Screen.complaint(sentence, ImmutableMap.of("COLUMNS", "80")).split(System.lineSeparator());
    assertThat(lines).hasSizeGreaterThan(1).allMatch(line -> line.length() <= COLUMNS);
    assertThat(lines[0]).startsWith("fingering: Viola");
    assertThat(lines[1]).startsWith("  ");
    assertThat(Screen.complaint(sentence, ImmutableMap.of())).isEqualTo("fingering: " + sentence);
  }

  @Test
  void anUnknownSetIsRefused() {
    assertThatThrownBy(
            () -> Screen.charset(ImmutableMap.of(Screen.VARIABLE, "klingon"), name -> "", "stdout"))
        .isInstanceOf(SelectionException.class)
        .hasMessageContaining("set it to UTF-8 or ASCII");
  }

  // POSIX: in the locale C every character is one of the portable, one-byte set.
  @ParameterizedTest
  @CsvSource({"C, '', false", "C, UTF-8, true", "C.UTF-8, ASCII, false"})
  void theProgramReadsItsEnvironment(String locale, String asked, boolean full)
      throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(
            JAVA,
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            "chart",
            "viola",
            "--position",
            "1");
    builder.environment().put("LC_ALL", locale);
    builder.environment().put(Screen.VARIABLE, asked);
    builder.environment().put("CLICOLOR_FORCE", "1");
    builder.environment().put("NO_COLOR", "1");
    Process process = builder.start();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor()).isZero();
    assertThat(out.contains("♯")).isEqualTo(full);
    assertThat(out).doesNotContain("\u001b", "?").contains(full ? "F♯" : "F#");
  }
}
