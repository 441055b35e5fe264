package fingering.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.practice.Journal;
import fingering.practice.JournalEntry;
import fingering.practice.JournalException;
import fingering.practice.JournalFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twenty programs write one file, and are killed at random times. {@code -Dwriting.seconds=60} sets
 * how long.
 */
@Tag("wide")
class ManyWritersTest {
  private static final int WRITERS = 20;
  private static final int SECONDS = Integer.getInteger("writing.seconds", 60);

  @TempDir Path folder;

  @TempDir Path outputs;

  private List<String> acknowledged = List.of();
  private int started;
  private int killed;

  /** What is looked at while the programs write. */
  private interface Look {
    void at(Path file);
  }

  private Process start(String kind, Path file) throws IOException {
    Path output = outputs.resolve("w" + started);
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx64m",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("surefire.real.class.path", System.getProperty("java.class.path")),
            FileWriterProgram.class.getName(),
            kind,
            file.toString(),
            "w" + started++)
        .redirectErrorStream(true)
        .redirectOutput(output.toFile())
        .start();
  }

  /**
   * The lines that the programs printed; a killed one may leave half a line, which counts for
   * nothing.
   */
  private List<String> printed() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(outputs)) {
      for (Path file : files.toList()) {
        String text = Files.readString(file);
        text.substring(0, 1 + text.lastIndexOf('\n')).lines().forEach(lines::add);
      }
    }
    return lines;
  }

  private void write(String kind, Path file, Look look) throws Exception {
    Random random = new Random(1);
    List<Process> writers = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      writers.add(start(kind, file));
    }
    long end = System.nanoTime() + SECONDS * 1_000_000_000L;
    while (System.nanoTime() < end) {
      Thread.sleep(100 + random.nextInt(900));
      if (Files.exists(file)) {
        look.at(file);
      }
      if (started > WRITERS || !printed().isEmpty()) {
        int which = random.nextInt(WRITERS);
        writers.get(which).destroyForcibly();
        killed++;
        writers.set(which, start(kind, file));
      }
    }
    for (Process writer : writers) {
      writer.destroyForcibly().waitFor();
    }
    acknowledged = printed();
    assertThat(acknowledged.stream().filter(line -> !line.startsWith("w"))).isEmpty();
    long left;
    try (Stream<Path> files = Files.list(folder)) {
      left = files.filter(each -> each.getFileName().toString().startsWith(".")).count();
    }
    System.out.printf(
        "%s under %d writers: %d written, %d kills, %d unfinished files left%n",
        kind, WRITERS, acknowledged.size(), killed, left);
  }

  @Test
  void journalKeepsEveryAcknowledgedEntryOnce() throws Exception {
    Path file = folder.resolve("my.journal");
    write(
        "journal",
        file,
        one -> {
          try {
            assertThat(new JournalFile(one).read().badLines()).isEmpty();
          } catch (JournalException e) {
            // Twenty writers may keep a reader waiting until it gives up.
            assertThat(e.getMessage()).startsWith("Another program is writing");
          }
        });

    Journal journal = new JournalFile(file).read();
    assertThat(journal.badLines()).isEmpty();
    Map<String, Long> times =
        journal.entries().stream()
            .collect(Collectors.groupingBy(JournalEntry::note, Collectors.counting()));
    assertThat(times).containsKeys(acknowledged.toArray(new String[0]));
    assertThat(times.values()).allMatch(count -> count == 1);
    // Of each start at most the last entry was written and not acknowledged any more.
    assertThat(times.size() - acknowledged.size()).isBetween(0, started);
    JournalEntry last = journal.entries().get(0);
    assertThat(new JournalFile(file).add(last).entries()).hasSize(journal.entries().size() + 1);
  }

  @Test
  void lessonIsAlwaysOneOfTheWrittenStates() throws Exception {
    Path file = folder.resolve("my.yaml");
    Set<String> seen = new HashSet<>();
    Function<Path, String> state =
        one -> {
          Lesson lesson = StoredLesson.read(one).lesson();
          assertThat(lesson.journal()).isEqualTo(lesson.part());
          return lesson.part().orElseThrow();
        };
    write("lesson", file, one -> seen.add(state.apply(one)));

    seen.add(state.apply(file));
    Set<String> written = new HashSet<>(acknowledged);
    // Those that were killed before they could tell wrote at most one state each.
    seen.removeAll(written);
    assertThat(seen).hasSizeLessThanOrEqualTo(killed + WRITERS);
    assertThat(written).hasSizeGreaterThan(WRITERS);

    StoredLesson before = StoredLesson.read(file);
    LessonStore.save(
        file,
        before.lesson().withPart(Optional.of("last")),
        Optional.of(before),
        LocalDate.parse("2026-11-30"));
    assertThat(StoredLesson.read(file).lesson().part()).contains("last");
  }
}
