package fingering;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compiles and runs the programs of the documentation. */
class LibraryExamplesTest {
  private static final Path PROJECT = Path.of("..").toAbsolutePath().normalize();
  private static final Path PROGRAMS = PROJECT.resolve("docs/examples/library");

  /** A command of the page and the block below it. */
  private static final Pattern EXAMPLE =
      Pattern.compile("(?m)^    java -cp \\S+ (\\S+\\.java.*)\\n\\n((?:    .*\\n)+)");

  private static final Pattern README_PROGRAM = Pattern.compile("(?s)```java\\n(.*?)```");
  private static final Pattern README_OUTPUT = Pattern.compile("(?m)(?:^    measure .*\\n)+");

  /**
   * A command of the page.
   *
   * @param command the program and its arguments
   * @param printed what it prints
   */
  private record Example(String command, String printed) {
    @Override
    public String toString() {
      return command;
    }
  }

  @TempDir Path folder;

  static Stream<Example> examples() throws IOException {
    return EXAMPLE
        .matcher(Files.readString(PROGRAMS.resolve("README.md")))
        .results()
        .map(found -> new Example(found.group(1), flush(found.group(2))));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aProgramPrintsWhatItsPageShows(Example example) throws Exception {
    List<String> words = new ArrayList<>(Splitter.on(' ').splitToList(example.command()));
    Path program = PROJECT.resolve(words.remove(0));
    if (!words.isEmpty()) {
      words.set(0, inProject(words.get(0)));
    }
    assertThat(run(program, words.toArray(String[]::new))).isEqualTo(example.printed());
  }

  @Test
  void everyProgramIsOnThePage() throws IOException {
    List<String> shown = examples().map(Example::command).toList();
    try (Stream<Path> files = Files.list(PROGRAMS)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .filteredOn(name -> name.endsWith(".java"))
          .isNotEmpty()
          .allSatisfy(
              name -> assertThat(shown).anyMatch(one -> one.matches(".*/" + name + "( .*)?")));
    }
  }

  @Test
  void theProgramOfTheReadmePrintsAPlan() throws Exception {
    String readme = Files.readString(PROJECT.resolve("README.md"));
    String program = first(README_PROGRAM, readme).group(1);
    assertThat(program.lines()).hasSizeLessThanOrEqualTo(15);
    Path file = Files.writeString(folder.resolve("ShowPlan.java"), program);
    assertThat(run(file, inProject("docs/demo/demo.musicxml")))
        .startsWith(flush(first(README_OUTPUT, readme).group()))
        .satisfies(printed -> assertThat(printed.lines()).hasSize(150));
  }

  private static String inProject(String file) {
    return PROJECT.resolve(file).toString();
  }

  private static MatchResult first(Pattern pattern, String text) {
    return pattern.matcher(text).results().findFirst().orElseThrow();
  }

  private static String flush(String block) {
    return block.replaceAll("(?m)^    ", "");
  }

  /** The output of a program, which must compile without warnings. */
  private String run(Path program, String... arguments) throws Exception {
    Path classes = Files.createDirectory(folder.resolve("classes"));
    int code =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                null,
                "-Xlint:all,-path,-processing,-classfile",
                "-Werror",
                "-proc:none",
                "-cp",
                System.getProperty("java.class.path"),
                "-d",
                classes.toString(),
                program.toString());
    assertThat(code).isZero();
    String name = program.getFileName().toString().replace(".java", "");
    PrintStream usual = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader = new URLClassLoader(new URL[] {classes.toUri().toURL()});
        PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
      System.setOut(out);
      Method main = loader.loadClass(name).getDeclaredMethod("main", String[].class);
      main.setAccessible(true);
      main.invoke(null, (Object) arguments);
    } finally {
      System.setOut(usual);
    }
    return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
  }
}
