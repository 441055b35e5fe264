package fingering.musicxml;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** Unpacks what lies in an archive, and counts it all against the limits. */
final class Unpacking {

  private final ZipFile zip;
  private final String what;
  private final ScoreLimits limits;
  private long unpacked;

  /**
   * Begins with nothing unpacked.
   *
   * @param what how messages call the archive
   */
  Unpacking(ZipFile zip, String what, ScoreLimits limits) {
    this.zip = zip;
    this.what = what;
    this.limits = limits;
  }

  /**
   * The content of an entry. What the archive says of its size is not believed, and no memory is
   * set aside for it.
   *
   * @throws UnreadableScoreException if the entry is damaged, or there is more in the archive than
   *     the limits allow
   */
  byte[] bytes(ZipEntry entry) throws IOException {
    // The archive's own figure may lie, but no entry is packed in more bytes than the archive has.
    long packed = Math.min(entry.getCompressedSize(), Files.size(Path.of(zip.getName())));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    try (InputStream in = zip.getInputStream(entry)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        bytes.write(buffer, 0, read);
        unpacked += read;
        limits.check(ScoreLimit.UNPACKED, unpacked, what);
        refuseBomb(entry, packed, bytes.size());
      }
    } catch (ZipException | EOFException e) {
      throw new UnreadableScoreException(
          "%s is damaged at %s inside it: export the score again from your notation program."
              .formatted(what, XmlText.printable(entry.getName())),
          e);
    }
    return bytes.toByteArray();
  }

  private void refuseBomb(ZipEntry entry, long packed, long size) {
    long ratio = limits.of(ScoreLimit.RATIO);
    if (size > MxlContainer.RATIO_FREE_BYTES && size > ratio * packed) {
      throw new UnreadableScoreException(
          "%s is refused because %s in it unpacks to more than %d times its packed size: use an archive that holds only the score, or allow more with --limit ratio=NUMBER."
              .formatted(what, XmlText.printable(entry.getName()), ratio));
    }
  }
}
