package fingering.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFilesTest {
  private static final int WRITERS = 20;
  private static final int FILES = 25;

  @TempDir Path folder;

  private Path left(String name, Duration ago) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "half");
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(ago)));
    return file;
  }

  private static String unfinished() {
    return "." + UUID.randomUUID() + ".part";
  }

  @Test
  void unfinishedFileOfAKilledProgramIsDeletedByTheNextWriteADayLater() throws IOException {
    Path stale = left(unfinished(), Duration.ofHours(25));
    Path recent = left(unfinished(), Duration.ofHours(23));
    Path own = left(".mill.part", Duration.ofDays(100));
    Path shown = left(UUID.randomUUID() + ".part", Duration.ofDays(100));

    TextFiles.create(folder.resolve("a.yaml"), "a");

    assertThat(stale).doesNotExist();
    assertThat(folder)
        .isDirectoryContaining(recent::equals)
        .isDirectoryContaining(own::equals)
        .isDirectoryContaining(shown::equals);
    Path later = left(unfinished(), Duration.ofDays(2));
    TextFiles.replace(folder.resolve("a.yaml"), "b");
    assertThat(later).doesNotExist();
    assertThat(folder.resolve("a.yaml")).hasContent("b");
  }

  @Test
  void manyWritersDeleteStaleFilesAndNoOthers() throws Exception {
    for (int i = 0; i < WRITERS; i++) {
      left(unfinished(), Duration.ofDays(2));
    }
    ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
    try {
      List<Callable<Boolean>> writers =
          IntStream.range(0, WRITERS).<Callable<Boolean>>mapToObj(w -> () -> write(w)).toList();
      for (Future<Boolean> writer : threads.invokeAll(writers)) {
        assertThat(writer.get()).isTrue();
      }
    } finally {
      threads.shutdownNow();
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.filter(file -> file.getFileName().toString().startsWith("."))).isEmpty();
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(WRITERS * FILES);
    }
  }

  private boolean write(int writer) throws IOException {
    for (int i = 0; i < FILES; i++) {
      TextFiles.create(folder.resolve("w" + writer + "-" + i), "text");
    }
    return true;
  }
}
