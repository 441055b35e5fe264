package fingering.musicxml.file;

import static java.nio.charset.StandardCharsets.UTF_8;

import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlEncoding;
import fingering.musicxml.xml.XmlEncoding.Decoded;
import fingering.musicxml.xml.XmlText;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Reads and writes compressed MusicXML: a zip archive whose container.xml names the score. */
final class MxlContainer {

  /** The ratio of unpacked to packed size is checked only above this number of unpacked bytes. */
  static final long RATIO_FREE_BYTES = 64L << 20;

  private static final String CONTAINER = "META-INF/container.xml";
  // Absolute paths, drive letters, and "..".
  private static final Pattern OUTSIDE =
      Pattern.compile("^[/\\\\]|^[A-Za-z]:|(^|[/\\\\])\\.\\.([/\\\\]|$)");

  private static final String MIMETYPE = "mimetype";
  private static final String NEW_ROOT = "score.musicxml";

  // Fixed, so that the same score gives the same bytes. Not the earliest time in a zip: Java
  // would add a second time stamp, which depends on the time zone.
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  /**
   * The score inside an archive.
   *
   * @param name the name of its entry
   * @param score its content, decoded
   */
  record Root(String name, Decoded score) {}

  private MxlContainer() {}

  /** Returns whether a file that starts with these bytes is a zip archive. */
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
   * @param what the name of the archive in messages
   * @throws UnreadableScoreException if the archive is damaged, if it contains no XML score, or
   *     several without saying which, or if it exceeds the limits
   */
  static Root readRoot(Path archive, String what, ScoreLimits limits) {
    try (ZipFile zip = open(archive)) {
      refuseBadNames(zip, what, limits);
      ArchiveReader unpacking = new ArchiveReader(zip, what, limits);
      ZipEntry root = rootEntry(zip, unpacking, what);
      String name = "The score %s inside %s".formatted(XmlText.printable(root.getName()), what);
      return new Root(root.getName(), XmlEncoding.decode(unpacking.bytes(root), name));
    } catch (IOException e) {
      throw new UnreadableScoreException(
          "%s is a damaged or locked archive: export the score again from your notation program."
              .formatted(what),
          e);
    }
  }

  /**
   * Writes a copy of an archive with another score in it. The other entries keep their order and
   * content.
   *
   * @param rootName the entry that the new score replaces
   * @param score the new score
   * @throws UnreadableScoreException if an entry is damaged or exceeds the limits
   */
  static void copyWith(
      Path original, String rootName, byte[] score, OutputStream out, ScoreLimits limits)
      throws IOException {
    try (ZipFile zip = open(original);
        ZipOutputStream copy = new ZipOutputStream(out, UTF_8)) {
      ArchiveReader unpacking = new ArchiveReader(zip, original.toString(), limits);
      if (zip.getComment() != null) {
        copy.setComment(zip.getComment());
      }
      // Programs recognise the archive by an uncompressed mimetype entry at its very beginning.
      ZipEntry mimetype = zip.getEntry(MIMETYPE);
      if (mimetype != null) {
        putStored(copy, mimetype, unpacking.bytes(mimetype));
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
          put(copy, entry, unpacking.bytes(entry));
        }
      }
    }
  }

  /** Writes a new archive that contains a score. */
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
      // Old programs write entry names in the encoding of the first PCs, which fails as UTF-8.
      return new ZipFile(archive.toFile(), Charset.forName("IBM437"));
    }
  }

  // Nothing is unpacked to disk here, but copies keep the names, and others may unpack them.
  private static boolean leavesFolder(String name) {
    return OUTSIDE.matcher(name).find();
  }

  private static List<ZipEntry> entries(ZipFile zip) {
    List<ZipEntry> entries = new ArrayList<>();
    zip.stream().forEach(entries::add);
    return entries;
  }

  private static void refuseBadNames(ZipFile zip, String what, ScoreLimits limits) {
    limits.check(ScoreLimit.FILES, zip.size(), what);
    Set<String> names = new HashSet<>();
    for (ZipEntry entry : entries(zip)) {
      if (leavesFolder(entry.getName())) {
        throw new UnreadableScoreException(
            "%s is refused because its entry '%s' points outside the archive's folder: export the score again from your notation program."
                .formatted(what, XmlText.printable(entry.getName())));
      }
      if (!names.add(entry.getName())) {
        throw new UnreadableScoreException(
            "%s contains %s twice: export the score again from your notation program."
                .formatted(what, XmlText.printable(entry.getName())));
      }
    }
  }

  private static ZipEntry rootEntry(ZipFile zip, ArchiveReader unpacking, String what)
      throws IOException {
    ZipEntry container = zip.getEntry(CONTAINER);
    if (container == null) {
      return onlyScore(zip, what);
    }
    String containerName = "The file %s inside %s".formatted(CONTAINER, what);
    String xml = XmlEncoding.decode(unpacking.bytes(container), containerName).text();
    String path = firstRootFile(xml, containerName);
    ZipEntry root = zip.getEntry(path);
    if (root == null || root.isDirectory()) {
      throw new UnreadableScoreException(
          "%s should contain its score as '%s' but does not: export the score again from your notation program."
              .formatted(what, XmlText.printable(path)));
    }
    return root;
  }

  private static String firstRootFile(String container, String name) {
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
      throw new UnreadableScoreException(noRootFile(name), e);
    }
    if (paths.isEmpty() || paths.get(0).isEmpty()) {
      throw new UnreadableScoreException(noRootFile(name));
    }
    return paths.get(0);
  }

  private static String noRootFile(String name) {
    return "%s does not say where the score is: export the score again from your notation program."
        .formatted(name);
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

  /** Returns whether a file name has an ending of uncompressed MusicXML. */
  static boolean hasXmlName(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".xml") || lower.endsWith(".musicxml");
  }

  private static ZipEntry copyOf(ZipEntry entry) {
    ZipEntry copy = new ZipEntry(entry.getName());
    copy.setTimeLocal(ENTRY_TIME);
    copy.setComment(entry.getComment());
    return copy;
  }

  private static void put(ZipOutputStream zip, ZipEntry entry, byte[] bytes) throws IOException {
    zip.putNextEntry(copyOf(entry));
    zip.write(bytes);
    zip.closeEntry();
  }

  private static void putStored(ZipOutputStream zip, ZipEntry entry, byte[] bytes)
      throws IOException {
    CRC32 crc = new CRC32();
    crc.update(bytes);
    ZipEntry stored = copyOf(entry);
    stored.setMethod(ZipEntry.STORED);
    stored.setSize(bytes.length);
    stored.setCrc(crc.getValue());
    zip.putNextEntry(stored);
    zip.write(bytes);
    zip.closeEntry();
  }
}
