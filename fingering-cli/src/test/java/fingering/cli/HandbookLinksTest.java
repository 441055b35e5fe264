package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every link of the handbook has a target, and README.md links to every page. */
final class HandbookLinksTest {
  private static final Path README = DocumentedCommand.ROOT.resolve("README.md");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Splitter AT_ANCHOR = Splitter.on('#').limit(2);

  static List<Path> pages() throws IOException {
    return Stream.concat(
            DocumentedCommand.pages().stream(),
            Stream.of(DocumentedCommand.ROOT.resolve("DEVELOPERS.md")))
        .toList();
  }

  private static List<String> links(Path page) throws IOException {
    return LINK.matcher(Files.readString(page)).results().map(link -> link.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyLinkHasATarget(Path page) throws IOException {
    for (String link : links(page)) {
      List<String> halves = AT_ANCHOR.splitToList(link);
      Path target = halves.get(0).isEmpty() ? page : page.resolveSibling(halves.get(0));
      assertThat(target).exists();
      if (halves.size() == 2) {
        assertThat(anchors(target)).as(link).contains(halves.get(1));
      }
    }
  }

  /** The anchor of a heading on code-hosting sites: lower case, with hyphens. */
  private static Set<String> anchors(Path page) throws IOException {
    return Files.readAllLines(page).stream()
        .filter(line -> line.startsWith("#"))
        .map(line -> line.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT))
        .map(title -> title.replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
        .collect(Collectors.toSet());
  }

  @Test
  void theReadmeLinksToEveryPage() throws IOException {
    Set<Path> linked =
        links(README).stream()
            .map(link -> README.resolveSibling(AT_ANCHOR.splitToList(link).get(0)).normalize())
            .collect(Collectors.toSet());
    assertThat(linked)
        .containsAll(
            pages().stream()
                .map(Path::normalize)
                .filter(page -> !page.equals(README.normalize()))
                .toList());
  }
}
