package fingering.musicxml.file;

import com.google.common.collect.ImmutableList;
import com.google.common.io.ByteSource;
import fingering.files.FileProblem;
import fingering.files.TextFiles;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.UnwritableScoreException;
import fingering.musicxml.file.MxlContainer.Root;
import fingering.musicxml.xml.XmlEncoding;
import fingering.musicxml.xml.XmlEncoding.Decoded;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The text of a score: read from a file with plain or compressed (.mxl) MusicXML, or made in
 * memory. The content of a file decides which of the two it is, not its name. Immutable and
 * thread-safe; files are never overwritten.
 */
public final class ScoreFile {

  private static final int ZIP_MAGIC_BYTES = 4;

  /**
   * The file that a score was read from; if compressed, with the name of the entry that holds the
   * score.
   */
  private record Origin(Path path, FileTime modified, Optional<String> rootName) {}

  private final Optional<Origin> origin;
  private final Decoded score;
  private final ImmutableList<String> remarks;
  private final ScoreLimits limits;

  private ScoreFile(
      Optional<Origin> origin, Decoded score, ImmutableList<String> remarks, ScoreLimits limits) {
    this.origin = origin;
    this.score = score;
    this.remarks = remarks;
    this.limits = limits;
  }

  /**
   * Returns a score that was made in memory, with the default limits.
   *
   * @param text the score as score-partwise MusicXML; it is parsed only when it is read
   * @param remarks assumptions made in its conversion to MusicXML, one sentence each
   */
  public static ScoreFile of(String text, ImmutableList<String> remarks) {
    return of(text, remarks, ScoreLimits.DEFAULT);
  }

  /**
   * Returns a score that was made in memory.
   *
   * @param text the score as score-partwise MusicXML; it is parsed only when it is read
   * @param remarks assumptions made in its conversion to MusicXML, one sentence each
   * @param limits limits on what it may contain
   */
  public static ScoreFile of(String text, ImmutableList<String> remarks, ScoreLimits limits) {
    XmlEncoding utf8 = new XmlEncoding(StandardCharsets.UTF_8, false);
    return new ScoreFile(Optional.empty(), decoded(utf8, text), remarks, limits);
  }

  /**
   * Reads a score file with the default limits.
   *
   * @throws UnreadableScoreException as {@link #read(Path, ScoreLimits)} does
   */
  public static ScoreFile read(Path file) {
    return read(file, ScoreLimits.DEFAULT);
  }

  /**
   * Reads a score file. A score ordered by measures (score-timewise) is converted to the usual
   * order.
   *
   * @param file the file, with any name
   * @param limits limits on what it may contain
   * @throws UnreadableScoreException if the file does not exist or cannot be read, is not an XML
   *     file, or exceeds the limits. The XML is not parsed yet, unless it has to be converted.
   */
  public static ScoreFile read(Path file, ScoreLimits limits) {
    String what = file.toString();
    try {
      refuseUnfit(file, what);
      Path path = file.toAbsolutePath();
      FileTime modified = Files.getLastModifiedTime(path);
      if (MxlContainer.isZip(head(path))) {
        limits.check(ScoreLimit.BYTES, Files.size(path), what);
        Root root = MxlContainer.readRoot(path, what, limits);
        return of(new Origin(path, modified, Optional.of(root.name())), root.score(), limits);
      }
      return of(
          new Origin(path, modified, Optional.empty()),
          XmlEncoding.decode(bytes(path, what, limits), what),
          limits);
    } catch (IOException e) {
      throw new UnreadableScoreException(FileProblem.reading(file, e), e);
    }
  }

  private static void refuseUnfit(Path file, String what) throws IOException {
    if (Files.isDirectory(file)) {
      throw new UnreadableScoreException(
          "%s is a folder: name the score file inside it.".formatted(what));
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new UnreadableScoreException(
          "%s is a device, not a file: save the score to a file first.".formatted(what));
    }
  }

  private static ScoreFile of(Origin origin, Decoded score, ScoreLimits limits) {
    boolean timewise = TimewiseScore.is(score.head());
    return new ScoreFile(
        Optional.of(origin),
        timewise ? decoded(score.encoding(), TimewiseScore.partwise(score.text(), limits)) : score,
        timewise ? ImmutableList.of(TimewiseScore.REMARK) : ImmutableList.of(),
        limits);
  }

  private static Decoded decoded(XmlEncoding encoding, String text) {
    return new Decoded(encoding, Optional.empty(), text, () -> text);
  }

  // Counted while reading: a file that grows is longer than its stated size.
  private static byte[] bytes(Path file, String what, ScoreLimits limits) throws IOException {
    limits.check(ScoreLimit.BYTES, Files.size(file), what);
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(1 + (int) limits.of(ScoreLimit.BYTES));
      limits.check(ScoreLimit.BYTES, bytes.length, what);
      return bytes;
    }
  }

  private static byte[] head(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(ZIP_MAGIC_BYTES);
    }
  }

  /**
   * Returns the XML text of the score without byte order mark, with its original line ends. A score
   * ordered by measures is returned ordered by parts.
   */
  public String text() {
    return score.text();
  }

  /** Returns the same text as UTF-8 bytes if the file is in UTF-8; otherwise empty. */
  public Optional<ByteSource> utf8() {
    return score.utf8();
  }

  /** Returns whether the score was read from compressed MusicXML. */
  public boolean compressed() {
    return origin.flatMap(Origin::rootName).isPresent();
  }

  /** Returns whether line numbers in {@link #text} are those of the file in an editor. */
  public boolean asOnDisk() {
    return origin.isPresent() && !compressed() && remarks.isEmpty();
  }

  /** Returns assumptions and changes made before parsing, one sentence each, without full stop. */
  public ImmutableList<String> remarks() {
    return remarks;
  }

  /** Returns the limits that apply when the score is parsed. */
  public ScoreLimits limits() {
    return limits;
  }

  /**
   * Writes a changed text of this score to a new file, in the encoding of this one. A target ending
   * in .mxl becomes compressed MusicXML that keeps all other entries of this file; one ending in
   * .xml or .musicxml becomes plain MusicXML. The target appears complete or not at all.
   *
   * @param text the text to write, without byte order mark; usually {@link #text} with marks
   * @param target the file to create; it must not exist
   * @throws UnwritableScoreException if the target exists or is this file, has another ending, or
   *     cannot be written
   */
  public void writeMarked(String text, Path target) {
    try (StagedScore staged = stage(text, target)) {
      staged.moveIntoPlace();
    }
  }

  /**
   * Writes a changed text of this score to a temporary file in the folder of its target. This
   * allows several files to appear together. The caller must {@linkplain StagedScore#moveIntoPlace
   * move it into place} and {@linkplain StagedScore#close close} it.
   *
   * @param text the text to write, without byte order mark
   * @param target the file to create; it must not exist
   * @throws UnwritableScoreException as {@link #writeMarked} does
   */
  public StagedScore stage(String text, Path target) {
    return stage(text, target, existing -> false);
  }

  /**
   * Writes a changed text of this score to a temporary file in the folder of its target, which may
   * replace some files.
   *
   * @param text the text to write, without byte order mark
   * @param target the file to create or replace; never this file
   * @param replaceable whether an existing file may be replaced, asked now and before the move
   * @throws UnwritableScoreException as {@link #writeMarked} does, except for a replaceable target
   */
  public StagedScore stage(String text, Path target, Predicate<Path> replaceable) {
    Path place = target.toAbsolutePath();
    String name = String.valueOf(place.getFileName()).toLowerCase(Locale.ROOT);
    boolean compress = name.endsWith(".mxl");
    if (!compress && !MxlContainer.hasXmlName(name)) {
      throw new UnwritableScoreException(
          "%s is not a name for a score: use a name that ends in .mxl, .musicxml or .xml."
              .formatted(target));
    }
    refuseExisting(place, target, replaceable);
    byte[] bytes = encoded(text, target);
    Path temporary = temporarySibling(place);
    boolean written = false;
    try {
      try {
        try (OutputStream out =
            new BufferedOutputStream(
                Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW))) {
          if (compress) {
            writeArchive(bytes, out, target);
          } else {
            out.write(bytes);
          }
        }
        written = true;
        TextFiles.deleteStale(temporary);
        return new StagedScore(this, target, temporary, replaceable);
      } finally {
        if (!written) {
          Files.deleteIfExists(temporary);
        }
      }
    } catch (IOException e) {
      throw unwritable(target, e);
    }
  }

  /**
   * Returns a new name for a temporary file in the target's folder. The name is hidden, ends in
   * {@code .part}, and does not contain the target's own name, which may be as long as the disk
   * allows. Unlike a temporary file of the system, a file created under this name gets the usual
   * permissions. If the program is interrupted, Java deletes the file; for that it remembers the
   * name, some hundred bytes, until the program ends.
   */
  public static Path temporarySibling(Path target) {
    return TextFiles.temporarySibling(target);
  }

  private void writeArchive(byte[] score, OutputStream out, Path target) throws IOException {
    if (!compressed()) {
      MxlContainer.write(score, out);
      return;
    }
    Path path = origin.orElseThrow().path();
    FileTime modified = origin.orElseThrow().modified();
    String rootName = origin.flatMap(Origin::rootName).orElseThrow();
    if (!Files.exists(path) || !Files.getLastModifiedTime(path).equals(modified)) {
      throw new UnwritableScoreException(
          "%s was not written because %s has changed since it was read: run the command again."
              .formatted(target, path));
    }
    try {
      MxlContainer.copyWith(path, rootName, score, out, limits);
    } catch (UnreadableScoreException e) {
      throw new UnwritableScoreException(String.valueOf(e.getMessage()), e);
    }
  }

  private void refuseExisting(Path place, Path target, Predicate<Path> replaceable) {
    if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (isThisFile(place)) {
      throw new UnwritableScoreException(
          "%s is the score that was read and is never overwritten: choose another name."
              .formatted(target));
    }
    if (replaceable.test(place)) {
      return;
    }
    throw new UnwritableScoreException(
        "%s already exists and is not overwritten: choose another name, or move the file away first."
            .formatted(target));
  }

  private boolean isThisFile(Path place) {
    try {
      return origin.isPresent() && Files.isSameFile(place, origin.get().path());
    } catch (IOException e) {
      // One of the two no longer exists, so they are not the same file.
      return false;
    }
  }

  private byte[] encoded(String text, Path target) {
    try {
      return score.encoding().encode(text);
    } catch (CharacterCodingException e) {
      throw new UnwritableScoreException(
          "%s was not written because the words to print contain half a character (an unpaired surrogate): correct them."
              .formatted(target),
          e);
    }
  }

  /** Moves a temporary file to its target. */
  void move(Path from, Path target, Predicate<Path> replaceable) {
    Path place = target.toAbsolutePath();
    refuseExisting(place, target, replaceable);
    try {
      try {
        Files.move(from, place, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        if (Files.exists(place)) {
          Files.move(from, place, StandardCopyOption.REPLACE_EXISTING);
        } else {
          Files.move(from, place);
        }
      }
    } catch (IOException e) {
      throw unwritable(target, e);
    }
  }

  static UnwritableScoreException unwritable(Path target, IOException e) {
    return new UnwritableScoreException(FileProblem.writing(target, e), e);
  }
}
