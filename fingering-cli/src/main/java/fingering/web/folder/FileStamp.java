package fingering.web.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/**
 * What changes when a file is saved.
 *
 * @param time when it was changed last
 * @param size its size in bytes; -1 if there is no such file
 */
public record FileStamp(FileTime time, long size) {
  private static final FileStamp NONE = new FileStamp(FileTime.fromMillis(0), -1);

  /** The stamp of a file. */
  public static FileStamp of(Path file) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      return new FileStamp(attributes.lastModifiedTime(), attributes.size());
    } catch (IOException e) {
      return NONE;
    }
  }
}
