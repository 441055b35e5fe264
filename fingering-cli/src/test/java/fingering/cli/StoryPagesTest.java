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

/** Pages to follow from the first command to the last: each command prints what the page shows. */
final class StoryPagesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "practice.md",
        "tutorial-teacher.md",
        "tutorial-student.md",
        "arrangers.md",
        "lessons.md"
      })
  void pageShowsWhatTheProgramPrints(String page) throws IOException {
    List<DocumentedCommand> story = DocumentedCommand.of(DocumentedCommand.DOCS.resolve(page));
    assertThat(story).hasSizeGreaterThan(6);
    assertThat(story.stream().filter(shown -> !shown.printed().isEmpty())).hasSizeGreaterThan(5);
    Workplace workplace = new Workplace(folder);
    for (DocumentedCommand shown : story) {
      Session session = workplace.run(shown.command());
      assertWentWell(shown, session);
      if (!shown.printed().isEmpty()) {
        assertPrinted(shown, Stream.concat(session.lines().stream(), session.err().lines()));
      }
    }
  }

  private static void assertWentWell(DocumentedCommand shown, Session session) {
    if (shown.refused()) {
      assertThat(session.code()).as(shown.command()).isNotZero();
    } else if (shown.command().startsWith("fingering check")) {
      assertThat(session.code()).as("%s: %s", shown.command(), session.err()).isIn(0, 1);
    } else {
      assertThat(session.complaints()).as(shown.command()).isEmpty();
      assertThat(session.code()).as(shown.command()).isZero();
    }
  }

  private static void assertPrinted(DocumentedCommand shown, Stream<String> printed) {
    List<String> now = words(printed.toList());
    int from = 0;
    boolean skipped = false;
    for (List<String> part : parts(shown.printed())) {
      int at = Collections.indexOfSubList(now.subList(from, now.size()), part);
      assertThat(at)
          .as("%s%n%s%nin%n%s", shown.command(), part, now.subList(from, now.size()))
          .isGreaterThanOrEqualTo(0);
      if (!skipped) {
        assertThat(at).as("%s: %s", shown.command(), part).isZero();
      }
      skipped = true;
      from += at + part.size();
    }
    if (!shown.printed().get(shown.printed().size() - 1).equals(DocumentedCommand.OMITTED)) {
      assertThat(from).as(shown.command()).isEqualTo(now.size());
    }
  }

  /** The text between omitted lines, as words: the long paths of tests wrap differently. */
  private static List<List<String>> parts(List<String> lines) {
    List<List<String>> parts = new ArrayList<>();
    List<String> part = new ArrayList<>();
    for (String line : lines) {
      if (line.strip().equals(DocumentedCommand.OMITTED)) {
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
