package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;

/**
 * The file of a journal. Entries are only appended, one line each, while the file is locked, and
 * flushed to disk before {@link #add} returns. Lines in the file never change; only the last one
 * can be removed.
 *
 * @param path the file; it may be missing
 */
public record JournalFile(Path path) {
  /** Far more than years of practice need. */
  private static final long MOST_BYTES = 16L << 20;

  private static final int TRIES = 400;
  private static final Duration PAUSE = Duration.ofMillis(25);

  private static final String HEAD =
      """
      # Practice journal: date and time | clean tempo, or - | measures, or all | note
      # New lines are added at the end. Lines that begin with # are comments.
      """;

  /** Work on the open and locked file. */
  private interface Work<T> {
    T with(FileChannel file) throws IOException;
  }

  /**
   * Reads the journal; a missing file is an empty journal.
   *
   * @throws JournalException if it cannot be read; the message is one sentence
   */
  public Journal read() {
    // A link that leads nowhere is no empty journal.
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS)
        ? locked(true, file -> Journal.parse(text(file)), StandardOpenOption.READ)
        : Journal.EMPTY;
  }

  /**
   * Appends an entry, and creates the file if it is missing.
   *
   * @return the journal with the entry, as read from the file
   * @throws JournalException if it cannot be written; the message is one sentence, and the file is
   *     unchanged
   */
  public Journal add(JournalEntry entry) {
    boolean made = Files.notExists(path);
    // Reads and writes through one channel: closing a second one could release the lock.
    return locked(
        false,
        file -> {
          if (Files.notExists(path)) {
            // Another program made the file and removed it again, because the disk is full.
            throw new IOException("the file was removed");
          }
          String before = text(file);
          refuseOtherEncoding(before);
          boolean torn = !before.isEmpty() && !before.endsWith("\n");
          String lines = (before.isEmpty() ? HEAD : torn ? "\n" : "") + entry.line() + "\n";
          write(file, lines, made);
          Journal known = Journal.parse(before);
          Journal now = Journal.parse(before + lines);
          // Once the line has its line break, nothing shows that it was cut off: report it now.
          ImmutableList<String> remarks =
              torn && !known.equals(Journal.EMPTY)
                  ? ImmutableList.<String>builder()
                      .add("The last line had no line break: it was kept, and a break was added.")
                      .addAll(now.remarks())
                      .build()
                  : now.remarks();
          return new Journal(now.entries(), now.badLines(), remarks);
        },
        StandardOpenOption.CREATE,
        StandardOpenOption.READ,
        StandardOpenOption.WRITE);
  }

  /**
   * Removes the last line if it is an entry, as {@link #add} wrote it.
   *
   * @return the journal without the entry, as read from the file
   * @throws JournalException if the last line is another one, or the file cannot be written; the
   *     message is one sentence, and the file is unchanged
   */
  public Journal takeBack(JournalEntry entry) {
    return locked(
        false,
        file -> {
          String text = text(file);
          String line = entry.line() + "\n";
          if (!text.equals(line) && !text.endsWith("\n" + line)) {
            throw new JournalException(
                "The last line of %s has changed since, so nothing was removed."
                    .formatted(path.getFileName()));
          }
          file.truncate(file.size() - line.getBytes(StandardCharsets.UTF_8).length);
          file.force(true);
          return Journal.parse(text.substring(0, text.length() - line.length()));
        },
        StandardOpenOption.READ,
        StandardOpenOption.WRITE);
  }

  private void refuseOtherEncoding(String text) {
    if (text.indexOf('\0') >= 0) {
      throw new JournalException(
          "%s is not UTF-8 text, so nothing was added: save it in that encoding first."
              .formatted(path));
    }
  }

  /**
   * Appends lines, or leaves the file as it was.
   *
   * @param made whether there was no file before
   */
  private void write(FileChannel file, String lines, boolean made) throws IOException {
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
      if (made && size == 0) {
        Files.deleteIfExists(path);
      }
      throw e;
    }
  }

  private String text(FileChannel file) throws IOException {
    if (file.size() > MOST_BYTES) {
      throw new JournalException(
          "%s is larger than %d MiB, too large for a journal: check its name."
              .formatted(path, MOST_BYTES >> 20));
    }
    ByteBuffer bytes = ByteBuffer.allocate((int) file.size());
    while (bytes.hasRemaining() && file.read(bytes) >= 0) {}
    return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
  }

  private <T> T locked(boolean shared, Work<T> work, StandardOpenOption... how) {
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      throw new JournalException(
          "%s is not a file: give the name of a text file for the journal.".formatted(path));
    }
    try (FileChannel file = FileChannel.open(path, how);
        FileLock lock = lock(file, shared)) {
      if (!lock.isValid()) {
        throw new IOException("the lock was lost");
      }
      return work.with(file);
    } catch (IOException e) {
      throw new JournalException(
          shared ? FileProblem.reading(path, e) : FileProblem.writing(path, e), e);
    }
  }

  /** Locks the file; waits some seconds while another program holds it. */
  private FileLock lock(FileChannel file, boolean shared) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      Optional<FileLock> lock = tryLock(file, shared);
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

  private static Optional<FileLock> tryLock(FileChannel file, boolean shared) throws IOException {
    try {
      return Optional.ofNullable(file.tryLock(0, Long.MAX_VALUE, shared));
    } catch (OverlappingFileLockException e) {
      // Another thread of this program holds it.
      return Optional.empty();
    }
  }
}
