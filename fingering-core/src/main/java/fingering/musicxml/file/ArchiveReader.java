package fingering.musicxml.file;

import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlText;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** Unpacks entries of an archive and counts all their bytes against the limits. */
final class ArchiveReader {

  private final ZipFile zip;
  private final String what;
  private final ScoreLimits limits;
  private long unpacked;

  /**
   * Creates a reader that has not unpacked anything yet.
   *
   * @param what the name of the archive in messages
   */
  ArchiveReader(ZipFile zip, String what, ScoreLimits limits) {
    this.zip = zip;
    this.what = what;
    this.limits = limits;
  }

  /**
   * Returns the content of an entry. The size stated in the archive is not trusted, and no memory
   * is reserved for it.
   *
   * @throws UnreadableScoreException if the entry is damaged, or the archive holds more than the
   *     limits allow
   */
  byte[] bytes(ZipEntry entry) throws IOException {
    // The stated size may be false, but no entry has more packed bytes than the whole archive.
    long packed = Math.min(entry.getCompressedSize(), Files.size(Path.of(zip.getName())));
    try (InputStream in = new Counted(zip.getInputStream(entry), entry, packed)) {
      return in.readAllBytes();
    } catch (ZipException | EOFException e) {
      throw new UnreadableScoreException(
          "In %s, the entry %s is damaged: export the score again from your notation program."
              .formatted(what, XmlText.printable(entry.getName())),
          e);
    }
  }

  private final class Counted extends FilterInputStream {
    private final ZipEntry entry;
    private final long packed;
    private long size;

    Counted(InputStream in, ZipEntry entry, long packed) {
      super(in);
      this.entry = entry;
      this.packed = packed;
    }

    @Override
    public int read() throws IOException {
      int read = super.read();
      count(read < 0 ? 0 : 1);
      return read;
    }

    @Override
    public int read(byte[] to, int from, int most) throws IOException {
      int read = super.read(to, from, most);
      count(Math.max(0, read));
      return read;
    }

    private void count(int more) {
      size += more;
      unpacked += more;
      limits.check(ScoreLimit.UNPACKED, unpacked, what);
      refuseBomb(entry, packed, size);
    }
  }

  private void refuseBomb(ZipEntry entry, long packed, long size) {
    long ratio = limits.of(ScoreLimit.RATIO);
    if (size > MxlContainer.RATIO_FREE_BYTES && size > ratio * packed) {
      throw new UnreadableScoreException(
          "%s is refused because its entry %s unpacks to more than %d times its packed size: use an archive that contains only the score, or raise the limit 'ratio'."
              .formatted(what, XmlText.printable(entry.getName()), ratio));
    }
  }
}
