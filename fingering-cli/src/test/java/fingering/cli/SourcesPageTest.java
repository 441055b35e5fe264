package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of sources lists the sources named in tests, tables and code, and no others. */
class SourcesPageTest {
  private static final Path PROJECT = Path.of("..");
  private static final List<String> MODULES =
      List.of("tuning-tables", "fingering-core", "fingering-cli");
  private static final Pattern NAMING = Pattern.compile(".*\\.(java|table|level|weights)");
  private static final Pattern TEST_OR_TABLE =
      Pattern.compile(".*(Test|\\.table|\\.level|\\.weights)");
  private static final Pattern CODE = Pattern.compile("`([^`]+)`");
  private static final Splitter CELLS = Splitter.on(" | ");

  /** S. Adler, or N. Rimsky-Korsakov and another. */
  private static final Pattern AUTHOR =
      Pattern.compile(
          "(?<![\\p{L}.])(?:\\p{Lu}\\. ){1,3}(?:von )?(\\p{Lu}[\\p{L}-]+)(?=,|'s| and | \\(|\\.$)");

  private static final Pattern STANDARD = Pattern.compile("\\b(?:ISO|RFC|OASIS|ECMA) \\d+");
  private static final Pattern NO_SOURCE =
      Pattern.compile("common practice, no source", Pattern.CASE_INSENSITIVE);
  private static final Pattern FROM_MEMORY =
      Pattern.compile("from memory", Pattern.CASE_INSENSITIVE);

  /** A source on the page: the words by which it is named, and where. */
  private record Source(List<String> keys, List<String> namedIn) {
    Predicate<String> isNamed() {
      Predicate<String> asWord =
          Pattern.compile(
                  keys.stream()
                      .map(key -> "(?<![\\p{L}\\d-])" + Pattern.quote(key) + "(?![\\p{L}\\d_])")
                      .collect(Collectors.joining("|")))
              .asPredicate();
      return text -> keys.stream().anyMatch(text::contains) && asWord.test(text);
    }
  }

  private static String page;
  private static List<Source> sources;

  /** What stands in each file, a comment as one line. */
  private static final Map<String, String> TEXTS = new TreeMap<>();

  @BeforeAll
  static void readPageAndFiles() throws IOException {
    page = Files.readString(PROJECT.resolve("docs/contributing/sources.md"));
    sources =
        rows("| Key |")
            .map(cells -> new Source(code(cells.get(0)), code(cells.get(cells.size() - 1))))
            .toList();
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(PROJECT.resolve(module).resolve("src"))) {
        files
            .filter(SourcesPageTest::names)
            .forEach(file -> TEXTS.merge(name(file), text(file), String::concat));
      }
    }
  }

  private static boolean names(Path file) {
    String name = file.getFileName().toString();
    return NAMING.matcher(name).matches()
        && !name.startsWith("SourcesPageTest")
        && !name.equals("package-info.java");
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  private static String text(Path file) {
    try {
      // A document type is no source.
      return Files.readString(file)
          .replaceAll("(?m)^.*//DTD.*$", "")
          .replaceAll("\\R\\s*(//|\\*|#)?\\s*", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows of the tables whose head begins so, each without its outer bars. */
  private static Stream<List<String>> rows(String head) {
    return Stream.of(page.split("\n\n"))
        .filter(table -> table.startsWith(head))
        .flatMap(table -> table.lines().skip(2))
        .map(line -> CELLS.splitToList(line.substring(2, line.lastIndexOf(" |"))));
  }

  private static List<String> code(String cell) {
    return CODE.matcher(cell).results().map(match -> match.group(1)).toList();
  }

  private static NavigableSet<String> naming(Predicate<String> named) {
    return TEXTS.entrySet().stream()
        .filter(file -> named.test(file.getValue()))
        .map(Map.Entry::getKey)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static NavigableSet<String> testsAndTables(NavigableSet<String> names) {
    names.removeIf(name -> !TEST_OR_TABLE.matcher(name).matches());
    return names;
  }

  @Test
  void everySourceIsNamedWhereThePageSaysAndNowhereElse() {
    assertThat(sources)
        .hasSizeGreaterThan(40)
        .allSatisfy(
            source ->
                assertThat(source.namedIn())
                    .as("named in, for the key %s", source.keys())
                    .isNotEmpty()
                    .doesNotHaveDuplicates()
                    .containsExactlyInAnyOrderElementsOf(naming(source.isNamed())));
  }

  @Test
  void whatIsToldFromMemoryNamesASourceOfThePage() {
    assertThat(naming(FROM_MEMORY.asPredicate()))
        .isNotEmpty()
        .allSatisfy(
            file ->
                assertThat(sources)
                    .as(file)
                    .anyMatch(source -> source.isNamed().test(TEXTS.get(file))));
  }

  @Test
  void everyAuthorAndEveryStandardThatATestOrTableNamesStandsOnThePage() {
    NavigableSet<String> found = new TreeSet<>();
    for (String file : testsAndTables(naming(text -> true))) {
      String text = TEXTS.get(file);
      AUTHOR.matcher(text).results().map(match -> match.group(1)).forEach(found::add);
      STANDARD.matcher(text).results().map(MatchResult::group).forEach(found::add);
    }
    assertThat(found)
        .contains("Adler", "Fitts", "Rimsky-Korsakov", "ISO 16", "RFC 5545")
        .allSatisfy(name -> assertThat(page).contains(name));
  }

  @Test
  void everyTestAndTableThatHasNoSourceStandsUnderCommonPractice() {
    List<String> listed =
        rows("| What |").flatMap(cells -> code(cells.get(cells.size() - 1)).stream()).toList();
    assertThat(listed)
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(testsAndTables(naming(NO_SOURCE.asPredicate())));
  }
}
