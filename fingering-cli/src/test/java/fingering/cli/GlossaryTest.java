package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.plan.PlanFigure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/glossary.md: its entries stand in order, and no word is there that nothing else uses. */
final class GlossaryTest {
  private static final Path GLOSSARY = DocumentedCommand.DOCS.resolve("glossary.md");
  private static final Splitter CELLS = Splitter.on('|').trimResults();
  private static final Pattern LITERAL =
      Pattern.compile("\"\"\"(?s:.*?)\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"");
  private static final List<String> MODULES =
      List.of("tuning-tables", "fingering-core", "fingering-cli");

  /** Word, meaning, German, French, Italian. */
  private static List<List<String>> entries() throws IOException {
    return Files.readAllLines(GLOSSARY).stream()
        .filter(line -> line.startsWith("| ") && !line.startsWith("| Word "))
        .map(line -> CELLS.splitToList(line))
        .map(cells -> cells.subList(1, cells.size() - 1))
        .toList();
  }

  @Test
  void entriesAreComplete() throws IOException {
    assertThat(entries()).hasSizeGreaterThan(60);
    for (List<String> entry : entries()) {
      assertThat(entry).hasSize(5).doesNotContain("");
      // A word of the project's own has no other languages.
      if (entry.get(1).startsWith("*own*")) {
        assertThat(entry.subList(2, 5)).as(entry.get(0)).containsOnly("–");
      }
    }
  }

  @Test
  void entriesStandInOrder() throws IOException {
    assertThat(entries().stream().map(entry -> entry.get(0).toLowerCase(Locale.ROOT)))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  @Test
  void everyWordIsUsedElsewhere() throws IOException {
    String used = used();
    for (List<String> entry : entries()) {
      for (String word : entry.get(0).split(", ", -1)) {
        assertThat(used.contains(word)).as(word).isTrue();
      }
    }
  }

  @Test
  void whatIsCountedInAPlanHasAnEntry() throws IOException {
    assertThat(entries().stream().map(entry -> entry.get(0)))
        .contains(PlanFigure.SHIFTS.noun(1), PlanFigure.CROSSINGS.noun(1));
  }

  private static String used() throws IOException {
    Stream<Path> pages = DocumentedCommand.pages().stream().filter(page -> !page.equals(GLOSSARY));
    Stream<Path> code =
        MODULES.stream().flatMap(module -> files(DocumentedCommand.ROOT.resolve(module)));
    return Stream.concat(pages, code)
        .map(GlossaryTest::text)
        .collect(Collectors.joining("\n"))
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s*_]+", " ");
  }

  private static Stream<Path> files(Path module) {
    try (Stream<Path> files = Files.walk(module.resolve("src/main"))) {
      return files
          .filter(file -> file.toString().matches(".*\\.(java|properties)"))
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A page, the texts of the pages, or the texts in Java code, without its names and comments. */
  private static String text(Path file) {
    try {
      String text = Files.readString(file);
      return file.toString().endsWith(".java")
          ? LITERAL
              .matcher(text)
              .results()
              .map(MatchResult::group)
              .collect(Collectors.joining("\n"))
          : text;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
