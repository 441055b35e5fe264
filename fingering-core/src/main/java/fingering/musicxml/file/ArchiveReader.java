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

/** Unpacks what lies in an archive, and counts it all against the limits. */
final class ArchiveReader {

  private final ZipFile zip;
  private final String what;
  private final ScoreLimits limits;
  private long unpacked;

  /**
   * Begins with nothing unpacked.
   *
   * @param what how messages call the archive
   */
  ArchiveReader(ZipFile zip, String what, ScoreLimits limits) {
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
    try (InputStream in = new Counted(zip.getInputStream(entry), entry, packed)) {
      return in.readAllBytes();
    } catch (ZipException | EOFException e) {
      throw new UnreadableScoreException(
          "%s is damaged at %s inside it: export the score again from your notation program."
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
          "%s is refused because %s in it unpacks to more than %d times its packed size: use an archive that holds only the score, or allow more with --limit ratio=NUMBER."
              .formatted(what, XmlText.printable(entry.getName()), ratio));
    }
  }
}
