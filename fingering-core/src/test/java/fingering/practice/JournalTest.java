package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {
  @TempDir Path folder;

  private static JournalEntry entry(String when, String clean, String note) {
    return new JournalEntry(
        LocalDateTime.parse(when), Optional.of(Tempo.parse(clean)), MeasureSpan.WHOLE, note);
  }

  private JournalFile file() {
    return new JournalFile(folder.resolve("imke.journal"));
  }

  private String text() throws IOException {
    return Files.readString(file().path());
  }

  @Test
  void onlyTheLastLineCanBeTakenBack() throws IOException {
    JournalEntry first = entry("2026-11-21T18:30", "quarter=60", "Übung");
    JournalEntry last = entry("2026-11-22T18:30", "quarter=63", "");
    file().add(first);
    String before = text();
    file().add(last);

    assertThatThrownBy(() -> file().takeBack(first))
        .isInstanceOf(JournalException.class)
        .hasMessageContaining("has changed since");
    assertThat(file().takeBack(last).entries()).containsExactly(first);
    assertThat(text()).isEqualTo(before);
    assertThat(file().takeBack(first).entries()).isEmpty();
    assertThat(text()).startsWith("#").doesNotContain("Übung");
    assertThatThrownBy(() -> file().takeBack(first)).isInstanceOf(JournalException.class);
  }

  @Test
  void lineThatSomebodyWentOnWritingIsNotTakenBack() throws IOException {
    JournalEntry entry = entry("2026-11-21T18:30", "quarter=60", "");
    file().add(entry);
    Files.writeString(file().path(), text().stripTrailing() + " more\n");
    assertThatThrownBy(() -> file().takeBack(entry)).isInstanceOf(JournalException.class);
    assertThat(text()).endsWith(" more\n");
  }

  @Test
  void entryIsOneLineOfText() throws IOException {
    file().add(entry("2026-11-21T18:30:12", "quarter=60", "read\nthrough | slowly "));
    file()
        .add(
            new JournalEntry(
                LocalDateTime.parse("2026-11-22T09:00"),
                Optional.empty(),
                MeasureSpan.of("13", "14"),
                ""));
    assertThat(text().lines().filter(line -> !line.startsWith("#")))
        .containsExactly(
            "2026-11-21 18:30 | quarter=60 | all | read through | slowly",
            "2026-11-22 09:00 | - | 13-14 |");
    Journal read = file().read();
    assertThat(read.badLines()).isEmpty();
    assertThat(read.entries()).hasSize(2);
    assertThat(read.entries().get(0).note()).isEqualTo("read through | slowly");
    assertThat(read.entries().get(1).measures()).isEqualTo(MeasureSpan.of("13", "14"));
  }

  @Test
  void lastCleanTempoCountsEvenIfSlower() {
    file().add(entry("2026-11-21T18:30", "quarter=60", ""));
    file().add(entry("2026-11-22T18:30", "quarter=66", ""));
    file().add(entry("2026-11-23T18:30", "quarter=58", "tired"));
    Journal read = file().read();
    assertThat(read.lastClean(MeasureSpan.WHOLE)).contains(Tempo.parse("quarter=58"));
    assertThat(read.lastClean(MeasureSpan.of("13", "14"))).isEmpty();
    assertThat(read.practisedWhole(LocalDate.of(2026, 11, 23))).isTrue();
    assertThat(read.practisedWhole(LocalDate.of(2026, 11, 24))).isFalse();
  }

  @Test
  void fasterWholeCountsForItsMeasuresUntilTheyHaveANewEntry() {
    String own = "2026-11-21 18:30 | quarter=76 | 13-14 |\n";
    String slower = "2026-11-22 18:30 | quarter=66 | all |\n";
    String faster = "2026-11-23 18:30 | quarter=80 | all |\n";
    String since = "2026-11-24 18:30 | quarter=70 | 13-14 |\n";
    MeasureSpan span = MeasureSpan.of("13", "14");
    assertThat(Journal.parse(slower).lastClean(span)).isEmpty();
    assertThat(Journal.parse(own + slower).lastClean(span)).contains(Tempo.parse("76"));
    assertThat(Journal.parse(own + slower + faster).lastClean(span)).contains(Tempo.parse("80"));
    assertThat(Journal.parse(own + faster + since).lastClean(span)).contains(Tempo.parse("70"));
    assertThat(Journal.parse(own + faster + since).lastClean(MeasureSpan.WHOLE))
        .contains(Tempo.parse("80"));
  }

  @Test
  void lineCutOffByACrashIsReportedAndKept() throws IOException {
    file().add(entry("2026-11-21T18:30", "quarter=60", ""));
    String torn = "2026-11-22 18:30 | quarter=6";
    Files.writeString(file().path(), torn, StandardOpenOption.APPEND);

    Journal read = file().read();
    assertThat(read.badLines()).hasSize(1);
    assertThat(read.badLines().get(0).text()).isEqualTo(torn);
    assertThat(read.badLines().get(0).reason()).contains("cut off");
    assertThat(read.lastClean(MeasureSpan.WHOLE)).contains(Tempo.parse("quarter=60"));

    Journal added = file().add(entry("2026-11-23T18:30", "quarter=63", ""));
    assertThat(added.remarks()).anyMatch(remark -> remark.contains("had no line break"));
    assertThat(text()).contains(torn + "\n2026-11-23 18:30 | quarter=63");
    assertThat(file().read().lastClean(MeasureSpan.WHOLE)).contains(Tempo.parse("quarter=63"));
  }

  /** No cut of the last line yields a tempo that was not written. */
  @Test
  void cutLineIsNeverReadAsAnotherTempo() {
    String line = entry("2026-11-22T18:30", "quarter=120", "fine").line();
    for (int length = 0; length < line.length(); length++) {
      Journal read = Journal.parse(line.substring(0, length));
      assertThat(read.entries().stream().flatMap(entry -> entry.clean().stream()))
          .allMatch(Tempo.parse("quarter=120")::equals);
    }
  }

  @Test
  void clockSetBackIsReportedAndTheOrderOfTheLinesCounts() {
    file().add(entry("2026-11-22T18:30", "quarter=66", ""));
    Journal now = file().add(entry("2026-11-20T18:30", "quarter=69", "clock was wrong"));
    assertThat(now.remarks()).anyMatch(remark -> remark.contains("clock set back"));
    assertThat(now.lastClean(MeasureSpan.WHOLE)).contains(Tempo.parse("quarter=69"));
    assertThat(file().read()).isEqualTo(now);
  }

  @Test
  void malformedLinesAreReportedAndKept() throws IOException {
    String malformed =
        """
        \uFEFF# my own words
        2026-11-21 18:30 | quarter=60 | all | good\r
        yesterday went well

        2026-02-30 18:30 | quarter=60 | all | no such day
        2026-11-22 18:30 | quarter=fast | all |
        2026-11-22 18:30 | quarter=63 | all | good again
        """;
    Files.writeString(file().path(), malformed);
    Files.write(
        file().path(),
        "2026-11-23 18:30 | quarter=66 | all | sch\u00f6n\n".getBytes(StandardCharsets.ISO_8859_1),
        StandardOpenOption.APPEND);
    byte[] before = Files.readAllBytes(file().path());

    Journal read = file().read();
    assertThat(read.badLines().stream().map(Journal.BadLine::number)).containsExactly(3, 5, 6, 8);
    assertThat(read.badLines().stream().map(Journal.BadLine::reason))
        .satisfiesExactly(
            reason -> assertThat(reason).contains("1 field"),
            reason -> assertThat(reason).contains("not a date and time"),
            reason -> assertThat(reason).contains("not a tempo"),
            reason -> assertThat(reason).contains("UTF-8"));
    assertThat(read.lastClean(MeasureSpan.WHOLE)).contains(Tempo.parse("quarter=63"));

    file().add(entry("2026-11-24T18:30", "quarter=66", ""));
    assertThat(Files.readAllBytes(file().path())).startsWith(before);
  }

  @Test
  void concurrentWritersLoseAndMixNoLines() throws Exception {
    int writers = 8;
    int each = 25;
    ExecutorService pool = Executors.newFixedThreadPool(writers);
    List<Future<?>> running = new ArrayList<>();
    for (int w = 0; w < writers; w++) {
      int writer = w;
      running.add(
          pool.submit(
              () -> {
                for (int i = 0; i < each; i++) {
                  file().add(entry("2026-11-21T18:30", "quarter=60", writer + " " + i));
                }
              }));
    }
    for (Future<?> one : running) {
      one.get();
    }
    pool.shutdown();
    Journal read = file().read();
    assertThat(read.badLines()).isEmpty();
    assertThat(read.entries().stream().map(JournalEntry::note).distinct()).hasSize(writers * each);
    assertThat(text().lines().filter(line -> line.startsWith("#"))).hasSize(2);
  }

  /** Another Java process writes at the same time. */
  @Test
  void concurrentProgramsLoseNoLines() throws Exception {
    Process other = startWriter(file().path());
    for (int i = 0; i < Writer.LINES; i++) {
      file().add(entry("2026-11-21T18:30", "quarter=60", "here " + i));
    }
    assertThat(other.waitFor()).isZero();
    Journal read = file().read();
    assertThat(read.badLines()).isEmpty();
    assertThat(read.entries()).hasSize(2 * Writer.LINES);
  }

  private static Process startWriter(Path journal) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Writer.class.getName(),
            journal.toString())
        .inheritIO()
        .start();
  }

  /** Another program that writes into a journal. */
  static final class Writer {
    static final int LINES = 100;

    private Writer() {}

    public static void main(String[] arguments) {
      for (int i = 0; i < LINES; i++) {
        new JournalFile(Path.of(arguments[0]))
            .add(entry("2026-11-21T18:30", "quarter=60", "there " + i));
      }
    }
  }

  @Test
  void addWaitsForTheLockOfAnotherProgram() throws Exception {
    file().add(entry("2026-11-21T18:30", "quarter=60", ""));
    ExecutorService pool = Executors.newSingleThreadExecutor();
    Future<Journal> waiting;
    try (FileChannel held = FileChannel.open(file().path(), StandardOpenOption.WRITE);
        FileLock lock = held.lock()) {
      assertThat(lock.isValid()).isTrue();
      waiting = pool.submit(() -> file().add(entry("2026-11-22T18:30", "quarter=63", "")));
      String before = text();
      assertThat(waiting.isDone()).isFalse();
      assertThat(text()).isEqualTo(before);
    }
    assertThat(waiting.get().entries()).hasSize(2);
    pool.shutdown();
  }

  @Test
  void filesThatAreNotJournalsAreRefusedAndUnchanged() throws IOException {
    assertThatThrownBy(() -> new JournalFile(folder).read())
        .isInstanceOf(JournalException.class)
        .hasMessageContaining("is not a file");
    assertThatThrownBy(
            () ->
                new JournalFile(folder.resolve("none").resolve("j"))
                    .add(entry("2026-11-21T18:30", "quarter=60", "")))
        .isInstanceOf(JournalException.class)
        .hasMessageContaining("there is no folder");
    Path wide = folder.resolve("wide.txt");
    Files.writeString(wide, "2026", StandardCharsets.UTF_16);
    byte[] before = Files.readAllBytes(wide);
    assertThatThrownBy(() -> new JournalFile(wide).add(entry("2026-11-21T18:30", "quarter=60", "")))
        .isInstanceOf(JournalException.class)
        .hasMessageContaining("UTF-8");
    assertThat(Files.readAllBytes(wide)).isEqualTo(before);
  }

  @Test
  void tooSlowTempoAndTooLongNoteAreRefused() {
    assertThatThrownBy(() -> entry("2026-11-21T18:30", "whole=2", ""))
        .isInstanceOf(JournalException.class);
    assertThatThrownBy(() -> entry("2026-11-21T18:30", "60", "x".repeat(3000)))
        .isInstanceOf(JournalException.class);
  }
}
