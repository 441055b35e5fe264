package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares docs/briefs.md with the output of its commands. */
class BriefsPageTest {
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final String COMMAND = "fingering ";

  /** The commands on the demo that write no file and read none but the score. */
  static Stream<DocumentedCommand> examples() {
    return Stream.of("briefs.md")
        .map(DocumentedCommand.DOCS::resolve)
        .flatMap(page -> DocumentedCommand.of(page).stream())
        .filter(example -> example.command().matches(".* docs/\\S+\\.musicxml.*"))
        .filter(example -> !example.command().contains(".json"));
  }

  private static Object[] words(String command) {
    return WORD.matcher(command.substring(COMMAND.length()))
        .results()
        .map(BriefsPageTest::unquoted)
        .map(word -> word.startsWith("docs/") ? DocumentedCommand.ROOT.resolve(word) : word)
        .toArray();
  }

  private static String unquoted(MatchResult word) {
    return word.group(1) == null ? word.group(2) : word.group(1);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyLineShownIsPrinted(DocumentedCommand example) {
    Session session = Session.of(words(example.command()));
    List<String> printed =
        Stream.concat(session.out().lines(), session.err().lines()).map(String::strip).toList();
    assertThat(example.printed()).isNotEmpty();
    assertThat(printed)
        .containsAll(
            example.printed().stream().map(String::strip).filter(l -> !l.isEmpty()).toList());
  }
}
