package fingering.practice;

import com.google.common.collect.ImmutableList;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;

/**
 * The file of a journal. It only grows: an entry is one line, written at once behind what is there,
 * under a lock, and brought to the disk before the entry counts as made. Nothing in it is ever
 * changed or taken away.
 *
 * @param path the file; it need not exist
 */
public record JournalFile(Path path) {
  /** Far more than years of practice take. */
  private static final long MOST_BYTES = 16L << 20;

  private static final int TRIES = 400;
  private static final Duration PAUSE = Duration.ofMillis(25);

  private static final String HEAD =
      """
      # Practice journal: date and time | clean tempo, or - | measures, or all | note
      # Lines are only added. A line that begins with # is a comment.
      """;

  /** Does something with the open and locked file. */
  private interface Work<T> {
    T with(FileChannel file) throws IOException;
  }

  /**
   * Reads the journal; one that does not exist is empty.
   *
   * @throws JournalException if it cannot be read; the message is one sentence
   */
  public Journal read() {
    return Files.exists(path)
        ? locked(true, file -> Journal.parse(text(file)), StandardOpenOption.READ)
        : Journal.EMPTY;
  }

  /**
   * Adds an entry at the end, and makes the file where there is none.
   *
   * @return the journal with the entry
   * @throws JournalException if it cannot be written; the message is one sentence, and the file is
   *     as it was
   */
  public Journal add(JournalEntry entry) {
    // One channel for both: closing another on the same file would give the lock away.
    return locked(
        false,
        file -> {
          String before = text(file);
          refuseOtherEncoding(before);
          boolean torn = !before.isEmpty() && !before.endsWith("\n");
          String lines = (before.isEmpty() ? HEAD : torn ? "\n" : "") + entry.line() + "\n";
          write(file, lines);
          Journal known = Journal.parse(before);
          Journal now = Journal.parse(before + lines);
          // What was cut off shows no more once its line is ended; it is told this once.
          ImmutableList<String> remarks =
              torn && !known.equals(Journal.EMPTY)
                  ? ImmutableList.<String>builder()
                      .add("The last line had no end: it is kept as it was, and ended.")
                      .addAll(now.remarks())
                      .build()
                  : now.remarks();
          return new Journal(now.entries(), now.bad(), remarks);
        },
        StandardOpenOption.CREATE,
        StandardOpenOption.READ,
        StandardOpenOption.WRITE);
  }

  private void refuseOtherEncoding(String text) {
    if (text.indexOf('\0') >= 0) {
      throw new JournalException(
          "%s is not text in UTF-8 and nothing was added: save it again in that encoding."
              .formatted(path));
    }
  }

  private static void write(FileChannel file, String lines) throws IOException {
    long size = file.size();
    ByteBuffer bytes = StandardCharsets.UTF_8.encode(lines);
    file.position(size);
    try {
      while (bytes.hasRemaining()) {
        file.write(bytes);
      }
      file.force(true);
    } catch (IOException e) {
      file.truncate(size);
      throw e;
    }
  }

  private String text(FileChannel file) throws IOException {
    if (file.size() > MOST_BYTES) {
      throw new JournalException(
          "%s is larger than %d MiB and no journal: check its name."
              .formatted(path, MOST_BYTES >> 20));
    }
    ByteBuffer bytes = ByteBuffer.allocate((int) file.size());
    while (bytes.hasRemaining() && file.read(bytes) >= 0) {}
    return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
  }

  private <T> T locked(boolean shared, Work<T> work, StandardOpenOption... how) {
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      throw new JournalException(
          "%s is no file to keep a journal in: name a text file.".formatted(path));
    }
    try (FileChannel file = FileChannel.open(path, how);
        FileLock lock = lock(file, shared)) {
      if (!lock.isValid()) {
        throw new IOException("the lock was lost");
      }
      return work.with(file);
    } catch (AccessDeniedException e) {
      throw new JournalException(
          "You are not allowed to open %s: change its permissions.".formatted(path), e);
    } catch (IOException e) {
      throw new JournalException(
          "%s cannot be opened or written: check its folder, and that the disk is not full."
              .formatted(path),
          e);
    }
  }

  /** Waits while another program holds the file, but not for ever. */
  private FileLock lock(FileChannel file, boolean shared) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      Optional<FileLock> lock = tried(file, shared);
      if (lock.isPresent()) {
        return lock.get();
      }
      try {
        Thread.sleep(PAUSE.toMillis());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    throw new JournalException(
        "Another program is writing %s: close it, and try again.".formatted(path));
  }

  private static Optional<FileLock> tried(FileChannel file, boolean shared) throws IOException {
    try {
      return Optional.ofNullable(file.tryLock(0, Long.MAX_VALUE, shared));
    } catch (OverlappingFileLockException e) {
      // Another thread of this very program has it.
      return Optional.empty();
    }
  }
}
