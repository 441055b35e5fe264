package fingering.musicxml;

import static java.nio.charset.StandardCharsets.UTF_8;

import fingering.musicxml.XmlEncoding.Decoded;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Reads and writes compressed MusicXML: a zip archive whose container.xml names the score. */
final class MxlContainer {

  /** The largest file, or entry of an archive once unpacked, that is read; in bytes. */
  static final long MAX_BYTES = 512L << 20;

  /** An entry may unpack to at most this many times its packed size ... */
  static final long MAX_RATIO = 200;

  /** ... once it is bigger than this many bytes. */
  static final long RATIO_FREE_BYTES = 64L << 20;

  private static final String CONTAINER = "META-INF/container.xml";
  private static final String MIMETYPE = "mimetype";
  private static final String NEW_ROOT = "score.musicxml";

  // Fixed, so that the same score gives the same bytes. Not the earliest time a zip can hold: Java
  // would add a second time stamp to that, which depends on the time zone.
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  /**
   * The score inside an archive.
   *
   * @param name the name of its entry
   * @param score its content, decoded
   */
  record Root(String name, Decoded score) {}

  private MxlContainer() {}

  /** Whether these first bytes of a file are those of a zip archive. */
  static boolean isZip(byte[] head) {
    return head.length >= 4
        && head[0] == 'P'
        && head[1] == 'K'
        && ((head[2] == 3 && head[3] == 4)
            || (head[2] == 5 && head[3] == 6)
            || (head[2] == 7 && head[3] == 8));
  }

  /**
   * Finds and unpacks the score in an archive.
   *
   * @param what how messages call the archive
   * @throws UnreadableScoreException if the archive is damaged, holds no XML score or more than one
   *     without saying which, or would unpack beyond the limits
   */
  static Root readRoot(Path archive, String what) {
    try (ZipFile zip = open(archive)) {
      refuseRepeatedNames(zip, what);
      ZipEntry root = rootEntry(zip, what);
      String called = "The score %s inside %s".formatted(root.getName(), what);
      return new Root(root.getName(), XmlEncoding.decode(unpack(zip, root, what), called));
    } catch (IOException e) {
      throw new UnreadableScoreException(
          "%s is a damaged or locked archive: export the score again from your notation program."
              .formatted(what),
          e);
    }
  }

  /**
   * Writes an archive like the original one with another score in it. The other entries keep their
   * order and content.
   *
   * @param rootName the entry that the new score replaces
   * @param score the new score
   * @param what how messages call the original
   * @throws UnreadableScoreException if an entry is damaged or would unpack beyond the limits
   */
  static void copyWith(Path original, String rootName, byte[] score, OutputStream out, String what)
      throws IOException {
    try (ZipFile zip = open(original);
        ZipOutputStream copy = new ZipOutputStream(out, UTF_8)) {
      if (zip.getComment() != null) {
        copy.setComment(zip.getComment());
      }
      // Programs tell the kind of an archive by a stored mimetype at its very beginning.
      ZipEntry mimetype = zip.getEntry(MIMETYPE);
      if (mimetype != null) {
        putStored(copy, mimetype, unpack(zip, mimetype, what));
      }
      for (ZipEntry entry : entries(zip)) {
        if (entry.getName().equals(MIMETYPE)) {
          continue;
        }
        if (entry.isDirectory()) {
          putStored(copy, entry, new byte[0]);
        } else if (entry.getName().equals(rootName)) {
          put(copy, entry, score);
        } else {
          put(copy, entry, unpack(zip, entry, what));
        }
      }
    }
  }

  /** Writes a new archive around a score. */
  static void write(byte[] score, OutputStream out) throws IOException {
    String container =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <container>
          <rootfiles>
            <rootfile full-path="%s" media-type="application/vnd.recordare.musicxml+xml"/>
          </rootfiles>
        </container>
        """
            .formatted(NEW_ROOT);
    try (ZipOutputStream zip = new ZipOutputStream(out, UTF_8)) {
      put(zip, new ZipEntry(CONTAINER), container.getBytes(UTF_8));
      put(zip, new ZipEntry(NEW_ROOT), score);
    }
  }

  private static ZipFile open(Path archive) throws IOException {
    try {
      return new ZipFile(archive.toFile(), UTF_8);
    } catch (ZipException | IllegalArgumentException e) {
      // Old programs write entry names in the encoding of the first PCs.
      return new ZipFile(archive.toFile(), Charset.forName("IBM437"));
    }
  }

  private static List<ZipEntry> entries(ZipFile zip) {
    List<ZipEntry> entries = new ArrayList<>();
    zip.stream().forEach(entries::add);
    return entries;
  }

  private static void refuseRepeatedNames(ZipFile zip, String what) {
    Set<String> names = new HashSet<>();
    for (ZipEntry entry : entries(zip)) {
      if (!names.add(entry.getName())) {
        throw new UnreadableScoreException(
            "%s holds %s twice: export the score again from your notation program."
                .formatted(what, entry.getName()));
      }
    }
  }

  private static ZipEntry rootEntry(ZipFile zip, String what) throws IOException {
    ZipEntry container = zip.getEntry(CONTAINER);
    if (container == null) {
      return onlyScore(zip, what);
    }
    String containerCalled = "The file %s inside %s".formatted(CONTAINER, what);
    String xml = XmlEncoding.decode(unpack(zip, container, what), containerCalled).text();
    String path = firstRootFile(xml, containerCalled);
    ZipEntry root = zip.getEntry(path);
    if (root == null || root.isDirectory()) {
      throw new UnreadableScoreException(
          "%s should hold its score as '%s' but does not: export the score again from your notation program."
              .formatted(what, path));
    }
    return root;
  }

  private static String firstRootFile(String container, String called) {
    List<String> paths = new ArrayList<>();
    try {
      XmlCursor cursor = new XmlCursor(container);
      cursor.element(
          outer ->
              !outer.equals("rootfiles")
                  ? cursor.skip()
                  : cursor.element(
                      inner -> {
                        if (inner.equals("rootfile")) {
                          paths.add(cursor.attribute("full-path"));
                        }
                        return cursor.skip();
                      }));
    } catch (UnreadableScoreException e) {
      throw noRootFile(called, e);
    }
    if (paths.isEmpty() || paths.get(0).isEmpty()) {
      throw noRootFile(called, null);
    }
    return paths.get(0);
  }

  private static UnreadableScoreException noRootFile(String called, Throwable cause) {
    return new UnreadableScoreException(
        "%s does not say where the score is: export the score again from your notation program."
            .formatted(called),
        cause);
  }

  private static ZipEntry onlyScore(ZipFile zip, String what) {
    List<ZipEntry> scores = entries(zip).stream().filter(MxlContainer::looksLikeScore).toList();
    if (scores.size() != 1) {
      throw new UnreadableScoreException(
          "%s is an archive without %s and with %s: export the score as MusicXML from your notation program and use that file."
              .formatted(
                  what,
                  CONTAINER,
                  scores.isEmpty() ? "no MusicXML in it" : scores.size() + " XML files in it"));
    }
    return scores.get(0);
  }

  private static boolean looksLikeScore(ZipEntry entry) {
    String name = entry.getName();
    return !name.startsWith("META-INF/") && !name.startsWith("__MACOSX/") && hasXmlName(name);
  }

  /** Whether a file name ends as that of an uncompressed score does. */
  static boolean hasXmlName(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".xml") || lower.endsWith(".musicxml");
  }

  private static byte[] unpack(ZipFile zip, ZipEntry entry, String what) throws IOException {
    // The archive's own figure may lie, but no entry is packed in more bytes than the archive has.
    long packed = Math.min(entry.getCompressedSize(), Files.size(Path.of(zip.getName())));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    long size = 0;
    try (InputStream in = zip.getInputStream(entry)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        size += read;
        if (size > MAX_BYTES || (size > RATIO_FREE_BYTES && size > MAX_RATIO * packed)) {
          throw new UnreadableScoreException(
              "%s is refused because %s in it unpacks to more than %d MiB: use an archive that holds only the score."
                  .formatted(what, entry.getName(), size >> 20));
        }
        bytes.write(buffer, 0, read);
      }
    } catch (ZipException | EOFException e) {
      throw new UnreadableScoreException(
          "%s is damaged at %s inside it: export the score again from your notation program."
              .formatted(what, entry.getName()),
          e);
    }
    return bytes.toByteArray();
  }

  private static ZipEntry like(ZipEntry entry) {
    ZipEntry fresh = new ZipEntry(entry.getName());
    fresh.setTimeLocal(ENTRY_TIME);
    fresh.setComment(entry.getComment());
    return fresh;
  }

  private static void put(ZipOutputStream zip, ZipEntry entry, byte[] bytes) throws IOException {
    zip.putNextEntry(like(entry));
    zip.write(bytes);
    zip.closeEntry();
  }

  private static void putStored(ZipOutputStream zip, ZipEntry entry, byte[] bytes)
      throws IOException {
    CRC32 crc = new CRC32();
    crc.update(bytes);
    ZipEntry stored = like(entry);
    stored.setMethod(ZipEntry.STORED);
    stored.setSize(bytes.length);
    stored.setCrc(crc.getValue());
    zip.putNextEntry(stored);
    zip.write(bytes);
    zip.closeEntry();
  }
}
