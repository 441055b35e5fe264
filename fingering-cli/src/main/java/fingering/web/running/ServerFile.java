package fingering.web.running;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import com.google.common.hash.Hashing;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * The file by which a second start of the program finds the server of the same teacher's folder.
 * Only its owner reads it. Nothing here fails: where the file cannot be written or is not to be
 * trusted, each start has a server of its own.
 */
public final class ServerFile {
  private static final Pattern HOST = Pattern.compile("127\\.0\\.0\\.1:\\d{1,5}");
  private static final Pattern SECRET = Pattern.compile("[\\w-]{20,100}");
  private static final long LONGEST = 16 << 10;
  private static final int LINES = 4;
  private static final int NAME_LETTERS = 16;

  private static final ImmutableSet<PosixFilePermission> OWNER =
      Sets.immutableEnumSet(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  /** How often a start looks whether another one is through, and how long in all. */
  private static final long WAIT_MILLIS = 50;

  private static final int WAITS = 100;

  private final Path folder;
  private final Path file;
  private final String served;

  private ServerFile(Path folder, Path file, String served) {
    this.folder = folder;
    this.file = file;
    this.served = served;
  }

  /**
   * The file for a teacher's folder. Each has a file of its own, and so a server of its own.
   *
   * @param programFolder where the file is kept
   * @param teachers the teacher's folder, which need not exist
   */
  public static ServerFile of(Path programFolder, Path teachers) {
    String served = real(teachers.toAbsolutePath().normalize()).toString();
    String name = Hashing.sha256().hashString(served, StandardCharsets.UTF_8).toString();
    return new ServerFile(
        programFolder, programFolder.resolve("server-" + name.substring(0, NAME_LETTERS)), served);
  }

  /** The same path without links, as far as it exists. */
  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      Path parent = path.getParent();
      return parent == null ? path : real(parent).resolve(path.getFileName());
    }
  }

  /**
   * Does something while no other start of the program does. It waits for the other one, for some
   * seconds at most.
   */
  public <T> T inTurn(Supplier<T> start) {
    Optional<FileChannel> turn = turn();
    try {
      return start.get();
    } finally {
      turn.ifPresent(ServerFile::leave);
    }
  }

  private Optional<FileChannel> turn() {
    try {
      makeFolder();
      // One for all folders. It is never deleted, as another start may be waiting for it.
      FileChannel channel =
          FileChannel.open(
              folder.resolve("starting"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      for (int waits = 0; waits < WAITS && !locked(channel); waits++) {
        TimeUnit.MILLISECONDS.sleep(WAIT_MILLIS);
      }
      return Optional.of(channel);
    } catch (IOException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  private static void leave(FileChannel turn) {
    try {
      // This also releases the lock.
      turn.close();
    } catch (IOException e) {
      // The system releases it when the program ends.
      return;
    }
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** The server that the file names, which may have ended; empty if there is none to be trusted. */
  public Optional<RunningServer> read() {
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          || Files.size(file) > LONGEST
          || !onlyMine()) {
        return Optional.empty();
      }
      List<String> lines = Files.readAllLines(file);
      return lines.size() == LINES
              && HOST.matcher(lines.get(0)).matches()
              && SECRET.matcher(lines.get(1)).matches()
              && SECRET.matcher(lines.get(2)).matches()
              && lines.get(3).equals(served)
          ? Optional.of(new RunningServer(lines.get(0), lines.get(1), lines.get(2)))
          : Optional.empty();
    } catch (IOException | UnsupportedOperationException e) {
      return Optional.empty();
    }
  }

  /** Whether this user has written the file, and nobody else can read or change it. */
  private boolean onlyMine() throws IOException {
    Path own = newFile();
    try {
      boolean mine = Files.getOwner(file).equals(Files.getOwner(own));
      return mine
          && (!posix(folder)
              || Files.getPosixFilePermissions(file).stream().allMatch(OWNER::contains));
    } finally {
      Files.deleteIfExists(own);
    }
  }

  /**
   * Writes the file.
   *
   * @return whether that was possible
   */
  public boolean write(RunningServer server) {
    try {
      makeFolder();
      Path written = newFile();
      try {
        Files.write(
            written, ImmutableList.of(server.host(), server.secret(), server.proof(), served));
        Files.move(written, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(written);
      }
      return true;
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  /** Deletes the file, unless it names another server by now. */
  public void delete(RunningServer server) {
    if (read().filter(server::equals).isPresent()) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        // A later start finds that the server has ended.
        return;
      }
    }
  }

  private void makeFolder() throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    Path parent = folder.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    if (posix(parent == null ? folder : parent)) {
      Files.createDirectories(
          folder,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    } else {
      Files.createDirectories(folder);
    }
  }

  /** An empty file that only this user can read. */
  private Path newFile() throws IOException {
    // With POSIX permissions, Java gives temporary files to their owner alone.
    Path made = Files.createTempFile(folder, "server", ".new");
    AclFileAttributeView list = Files.getFileAttributeView(made, AclFileAttributeView.class);
    if (list != null) {
      list.setAcl(
          ImmutableList.of(
              AclEntry.newBuilder()
                  .setType(AclEntryType.ALLOW)
                  .setPrincipal(list.getOwner())
                  .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                  .build()));
    }
    return made;
  }

  private static boolean posix(Path path) throws IOException {
    return Files.getFileStore(path).supportsFileAttributeView("posix");
  }
}
