package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.cli.command.Commands;
import fingering.cli.command.ExitCode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** A wrong value after any option of any command is answered with one plain sentence. */
final class WrongValuesTest {
  /** Wrong for every option: a date, a tempo, a number, a position, a file in a missing folder. */
  private static final String WRONG = "no/such/thing";

  /**
   * Options that accept any text: a remark, a printed measure name, a new folder, a new journal.
   */
  private static final Set<String> FREE =
      Set.of(
          "journal add --note",
          "journal add --measures",
          "practice --exercises",
          "journal show --journal",
          "practice --journal",
          "handout --journal");

  /** Options that mean nothing without another one. */
  private static final ImmutableMap<String, ImmutableList<String>> COMPANIONS =
      ImmutableMap.of(
          "chart --at",
          ImmutableList.of("--position", "3"),
          "compare --choose",
          ImmutableList.of("--save-lesson", folder("never.yaml")));

  private static ImmutableMap<String, ImmutableList<Object>> arguments;

  @TempDir static Path folder;

  private static String folder(String name) {
    return Path.of(System.getProperty("java.io.tmpdir"), name).toString();
  }

  @BeforeAll
  static void prepare() {
    Path marked = folder.resolve("marked.musicxml");
    Session.of("plan", DEMO, "--write", marked).succeeded();
    Path journal = folder.resolve("my.journal");
    Session.of("journal", "add", "--note", "slow", "--journal", journal).succeeded();
    arguments =
        ImmutableMap.<String, ImmutableList<Object>>builder()
            .put("open", ImmutableList.of("--no-browser"))
            .put("demo", ImmutableList.of())
            .put("compare", ImmutableList.of(DEMO))
            .put("plan", ImmutableList.of(DEMO))
            .put("marks", ImmutableList.of(DEMO))
            .put("handout", ImmutableList.of(DEMO))
            .put(
                "practice",
                ImmutableList.of(
                    DEMO,
                    "--from",
                    "quarter=60",
                    "--to",
                    "quarter=96",
                    "--by",
                    "2026-12-12",
                    "--today",
                    "2026-11-21"))
            .put(
                "journal add",
                ImmutableList.of("--clean", "quarter=60", "--note", "slow", "--journal", journal))
            .put("journal show", ImmutableList.of("--journal", journal))
            .put("lesson list", ImmutableList.of(DEMO.resolveSibling("../examples")))
            .put("lesson show", ImmutableList.of(DEMO.resolveSibling("../examples/imke-mill.yaml")))
            .put("scale", ImmutableList.of("D", "major", "--instrument", "viola"))
            .put("audition", ImmutableList.of(DEMO.resolveSibling("hearing.yaml")))
            .put("chart", ImmutableList.of("viola"))
            .put("check", ImmutableList.of(DEMO))
            .put("learn", ImmutableList.of(marked))
            .buildOrThrow();
  }

  private static Stream<String> options(Predicate<OptionSpec> filter) {
    return options("", Commands.all(), filter);
  }

  private static Stream<String> options(
      String prefix, CommandLine command, Predicate<OptionSpec> filter) {
    return Stream.concat(
        command.getCommandSpec().options().stream()
            .filter(option -> option.arity().max() > 0)
            .filter(filter)
            .map(OptionSpec::longestName)
            .map(name -> prefix + name),
        command.getSubcommands().values().stream()
            .flatMap(each -> options(prefix + each.getCommandName() + " ", each, filter)));
  }

  static Stream<String> checkedOptions() {
    return options(option -> true).filter(option -> !FREE.contains(option));
  }

  static Stream<String> fileOptions() {
    return options(option -> List.of(option.auxiliaryTypes()).contains(Path.class));
  }

  private static Session typed(String commandAndOption, String value) {
    int end = commandAndOption.lastIndexOf(' ');
    String command = commandAndOption.substring(0, end);
    String option = commandAndOption.substring(end + 1);
    List<Object> words = new ArrayList<>(List.of(command.split(" ")));
    words.addAll(arguments.getOrDefault(command, ImmutableList.of()));
    int given = words.indexOf(option);
    if (given >= 0) {
      words.subList(given, given + 2).clear();
    }
    words.addAll(COMPANIONS.getOrDefault(commandAndOption, ImmutableList.of()));
    words.add(option);
    words.add(value);
    return Session.of(words.toArray());
  }

  private static Session refused(String commandAndOption, String value) {
    Session session = typed(commandAndOption, value);
    assertThat(session.code()).as(commandAndOption).isEqualTo(ExitCode.REFUSED);
    return session.refused(ExitCode.REFUSED);
  }

  @ParameterizedTest
  @MethodSource("checkedOptions")
  void aWrongValueIsAnsweredWithOneSentence(String option) {
    Session session = refused(option, WRONG);

    assertThat(session.err())
        .doesNotContain("Invalid value", "cannot convert", "Converter", "picocli", "java.")
        .doesNotContainPattern("\\b[A-Z][a-z]+[A-Z]\\w*\\b")
        .matches("fingering: .*\\.\\R");
    assertThat(session.err())
        .as("names the option or the value")
        .containsAnyOf(option.substring(option.lastIndexOf(' ') + 1), WRONG);
  }

  @ParameterizedTest
  @MethodSource("fileOptions")
  void anImpossibleFileNameIsAnsweredWithOneSentence(String option) {
    assertThat(refused(option, "a\0b").err()).contains(": 'a\0b' is not a file name (see ");
  }

  @Test
  void everyCommandWithOptionsIsTried() {
    assertThat(
            checkedOptions().map(option -> option.substring(0, option.lastIndexOf(' '))).distinct())
        .containsExactlyInAnyOrderElementsOf(arguments.keySet());
    assertThat(checkedOptions()).hasSizeGreaterThan(150);
    assertThat(options(option -> true)).containsAll(FREE);
    assertThat(fileOptions()).hasSizeGreaterThan(20);
  }
}
