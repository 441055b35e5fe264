package fingering.page.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The texts of pages: every text has a use, every use a text, and no page has a text elsewhere. */
class PageTextTest {
  private static final Path TEMPLATES = Path.of("src", "main", "jte");
  private static final Path CLASSES = Path.of("src", "main", "java", "fingering", "page");
  private static final Path SERVER = Path.of("src", "main", "java", "fingering", "web");
  private static final Path MADE =
      Path.of("target", "generated-sources", "jte", "fingering", "page", "template");

  private static final Pattern USE =
      Pattern.compile("(?<![.\\w])(text|counted)\\(\\s*\"([^\"]*)\"");
  private static final Pattern OTHER_USE =
      Pattern.compile("(?<![.\\w])(text|counted)\\((?!\\s*\")(?!\\))");
  private static final Pattern WRITTEN =
      Pattern.compile("writeContent\\(\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern NAMED =
      Pattern.compile("(?:title|alt|label|content)=\"[^\"]*[A-Za-z]{3} ?[^\"]*\"");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern WORDS =
      Pattern.compile("\\p{L}{2,},? \\p{L}{2,}|^\\p{Lu}\\p{Ll}{2,}$");

  /** Names of styles in pictures. */
  private static final Set<String> STYLES = Set.of("strip ink", "times on");

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(ending))
          // Pictures of the staff have no text of pages.
          .filter(file -> !file.toString().contains("staff") && !file.toString().contains("svg"))
          .toList();
    }
  }

  private static List<Path> sources() throws IOException {
    return Stream.of(files(TEMPLATES, ".jte"), files(CLASSES, ".java"), files(SERVER, ".java"))
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void keysInUseAreThoseOfTheFile() throws IOException {
    Set<String> used = new TreeSet<>();
    for (Path file : sources()) {
      Matcher use = USE.matcher(Files.readString(file));
      while (use.find()) {
        if (use.group(1).equals("counted")) {
          used.add(use.group(2) + ".one");
          used.add(use.group(2) + ".other");
        } else {
          used.add(use.group(2));
        }
      }
    }
    assertThat(used)
        .hasSizeGreaterThan(80)
        .containsExactlyElementsOf(new TreeSet<>(PageText.all().keySet()));
  }

  // Otherwise the test of the keys would not see them.
  @Test
  void keysAreWrittenOutWhereTheyAreUsed() throws IOException {
    for (Path file : sources()) {
      if (file.endsWith("PageText.java")) {
        continue;
      }
      assertThat(OTHER_USE.matcher(Files.readString(file)).results().map(MatchResult::group))
          .as(file.toString())
          .isEmpty();
    }
  }

  @Test
  void templatesHaveNoWordsOfTheirOwn() throws IOException {
    List<Path> templates = files(MADE, ".java");
    assertThat(templates).hasSameSizeAs(files(TEMPLATES, ".jte"));
    for (Path file : templates) {
      String html =
          WRITTEN
              .matcher(Files.readString(file))
              .results()
              .map(written -> written.group(1).replace("\\n", "\n").replace("\\\"", "\""))
              .collect(Collectors.joining());
      assertThat(html.replaceAll("<[^>]*>", ""))
          .as(file.toString())
          .doesNotContainPattern("\\p{L}");
      assertThat(
              NAMED.matcher(html.replaceAll("<meta[^>]*>", "")).results().map(MatchResult::group))
          .as(file.toString())
          .isEmpty();
    }
  }

  @Test
  void classesHaveNoWordsOfTheirOwn() throws IOException {
    for (Path file : files(CLASSES, ".java")) {
      String code =
          Files.readString(file)
              .replaceAll("(?s)/\\*.*?\\*/", "")
              .replaceAll("//.*", "")
              .replaceAll("throw new [^;]*;", "");
      assertThat(
              LITERAL
                  .matcher(code)
                  .results()
                  .map(literal -> literal.group(1))
                  .filter(literal -> !literal.contains("\\\"") && !STYLES.contains(literal))
                  .filter(literal -> WORDS.matcher(literal).find()))
          .as(file.toString())
          .isEmpty();
    }
  }

  @Test
  void numbersHaveTheirOwnForms() {
    assertThat(PageText.counted("check.measures", 1)).isEqualTo("1 measure");
    assertThat(PageText.counted("check.measures", 0)).isEqualTo("0 measures");
    assertThat(PageText.counted("check.measures", 2)).isEqualTo("2 measures");
  }

  @Test
  void unknownKeyIsAMistakeOfTheProgram() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PageText.text("none.such"))
        .withMessageContaining("none.such");
  }
}
