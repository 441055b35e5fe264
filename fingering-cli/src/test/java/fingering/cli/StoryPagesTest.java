package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pages that are to be followed from the first command to the last: each is run, one after the
 * other, and what the page shows is what is printed.
 */
final class StoryPagesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {"practice.md", "tutorial-teacher.md", "tutorial-student.md", "arrangers.md"})
  void storyIsWhatTheProgramPrints(String page) throws IOException {
    List<DocumentedCommand> story = DocumentedCommand.of(DocumentedCommand.DOCS.resolve(page));
    assertThat(story).hasSizeGreaterThan(6);
    assertThat(story.stream().filter(told -> !told.printed().isEmpty())).hasSizeGreaterThan(5);
    Workplace workplace = new Workplace(folder);
    for (DocumentedCommand told : story) {
      Session session = workplace.run(told.command());
      assertWentWell(told, session);
      if (!told.printed().isEmpty()) {
        assertPrinted(told, Stream.concat(session.lines().stream(), session.err().lines()));
      }
    }
  }

  private static void assertWentWell(DocumentedCommand told, Session session) {
    if (told.refused()) {
      assertThat(session.code()).as(told.command()).isNotZero();
    } else if (told.command().startsWith("fingering check")) {
      assertThat(session.code()).as("%s: %s", told.command(), session.err()).isIn(0, 1);
    } else {
      assertThat(session.complaints()).as(told.command()).isEmpty();
      assertThat(session.code()).as(told.command()).isZero();
    }
  }

  private static void assertPrinted(DocumentedCommand told, Stream<String> printed) {
    List<String> now = words(printed.toList());
    int from = 0;
    boolean skipped = false;
    for (List<String> part : parts(told.printed())) {
      int at = Collections.indexOfSubList(now.subList(from, now.size()), part);
      assertThat(at)
          .as("%s%n%s%nin%n%s", told.command(), part, now.subList(from, now.size()))
          .isGreaterThanOrEqualTo(0);
      if (!skipped) {
        assertThat(at).as("%s: %s", told.command(), part).isZero();
      }
      skipped = true;
      from += at + part.size();
    }
    if (!told.printed().get(told.printed().size() - 1).equals(DocumentedCommand.LEFT_OUT)) {
      assertThat(from).as(told.command()).isEqualTo(now.size());
    }
  }

  /** What stands between lines that are left out, as words: paths of tests wrap otherwise. */
  private static List<List<String>> parts(List<String> lines) {
    List<List<String>> parts = new ArrayList<>();
    List<String> part = new ArrayList<>();
    for (String line : lines) {
      if (line.strip().equals(DocumentedCommand.LEFT_OUT)) {
        parts.add(words(part));
        part = new ArrayList<>();
      } else {
        part.add(line);
      }
    }
    parts.add(words(part));
    return parts;
  }

  private static List<String> words(List<String> lines) {
    return Splitter.onPattern("\\s+").omitEmptyStrings().splitToList(String.join("\n", lines));
  }
}
