package fingering.musicxml.file;

import com.google.common.collect.ImmutableList;
import com.google.common.io.ByteSource;
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
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * A score file as it lies on disk: plain MusicXML, or compressed MusicXML (.mxl). Which of the two
 * it is, its content decides and not its name. A score that was put into MusicXML from something
 * else lies nowhere, and can be written all the same.
 */
public final class ScoreFile {

  private static final int ZIP_MAGIC_BYTES = 4;

  /** Where a score lies; of a compressed one, the name of the score inside. */
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
   * A score that lies in no file.
   *
   * @param text the text of the score in MusicXML
   * @param remarks what was assumed in putting it into MusicXML, a sentence each
   */
  public static ScoreFile of(String text, ImmutableList<String> remarks) {
    return of(text, remarks, ScoreLimits.USUAL);
  }

  /**
   * A score that lies in no file, of which no more is read than the limits allow.
   *
   * @param text the text of the score in MusicXML
   * @param remarks what was assumed in putting it into MusicXML, a sentence each
   */
  public static ScoreFile of(String text, ImmutableList<String> remarks, ScoreLimits limits) {
    XmlEncoding utf8 = new XmlEncoding(StandardCharsets.UTF_8, false);
    return new ScoreFile(Optional.empty(), decoded(utf8, text), remarks, limits);
  }

  /**
   * Reads a score file within the usual limits.
   *
   * @throws UnreadableScoreException as {@link #read(Path, ScoreLimits)} does
   */
  public static ScoreFile read(Path file) {
    return read(file, ScoreLimits.USUAL);
  }

  /**
   * Reads a score file. A score ordered by measures (score-timewise) is put into the usual order.
   *
   * @param file the file; its name may end as it likes
   * @param limits how much it may hold
   * @throws UnreadableScoreException if there is no such file, it cannot be read, it holds no XML
   *     score, or more than the limits allow; whether the XML is well formed is not looked at,
   *     unless it has to be put into order
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
    } catch (NoSuchFileException e) {
      throw new UnreadableScoreException(
          "There is no file %s: check the name and the folder.".formatted(what), e);
    } catch (AccessDeniedException e) {
      throw new UnreadableScoreException(
          "You are not allowed to read %s: change its permissions, or use a copy.".formatted(what),
          e);
    } catch (IOException e) {
      throw new UnreadableScoreException(
          "%s could not be read from its disk: copy it elsewhere and try again.".formatted(what),
          e);
    }
  }

  private static void refuseUnfit(Path file, String what) throws IOException {
    if (Files.isDirectory(file)) {
      throw new UnreadableScoreException(
          "%s is a folder: name the score file inside it.".formatted(what));
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new UnreadableScoreException(
          "%s is a device and no file: save the score to a file first.".formatted(what));
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

  // Counted while it is read: some files, and all that grow, are longer than they say.
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
   * The XML text of the score, decoded, without byte order mark, line ends as they are; of a score
   * ordered by measures, the text ordered by parts.
   */
  public String text() {
    return score.text();
  }

  /** The same as bytes in UTF-8, where it lies on disk so. */
  public Optional<ByteSource> utf8() {
    return score.utf8();
  }

  /** Whether the file is compressed MusicXML. */
  public boolean compressed() {
    return origin.flatMap(Origin::rootName).isPresent();
  }

  /** Whether {@link #text} has the lines that an editor shows of the file. */
  public boolean asOnDisk() {
    return origin.isPresent() && !compressed() && remarks.isEmpty();
  }

  /** What was assumed or changed before the score was read, a sentence each. */
  public ImmutableList<String> remarks() {
    return remarks;
  }

  /** How much of it may be read. */
  public ScoreLimits limits() {
    return limits;
  }

  /**
   * Writes a changed text of this score to a new file, in the encoding of this one. A target ending
   * in .mxl becomes compressed MusicXML that keeps everything else this file holds; one ending in
   * .xml or .musicxml becomes plain MusicXML. The target appears complete or not at all.
   *
   * @param text the text to write, without byte order mark
   * @param target the file to make; it must not exist
   * @throws UnwritableScoreException if the target exists or is this file, has another ending, or
   *     cannot be written
   */
  public void writeMarked(String text, Path target) {
    try (StagedScore unfinished = unfinished(text, target)) {
      unfinished.appear();
    }
  }

  /**
   * Writes a changed text of this score as {@link #writeMarked} does, but leaves it beside its
   * place until it is told to appear, so that several files can appear together.
   *
   * @param text the text to write, without byte order mark
   * @param target the file to make; it must not exist
   * @throws UnwritableScoreException as above
   */
  public StagedScore unfinished(String text, Path target) {
    Path place = target.toAbsolutePath();
    String name = String.valueOf(place.getFileName()).toLowerCase(Locale.ROOT);
    boolean compress = name.endsWith(".mxl");
    if (!compress && !MxlContainer.hasXmlName(name)) {
      throw new UnwritableScoreException(
          "%s is no name for a score: let it end in .mxl, .musicxml or .xml.".formatted(target));
    }
    refuseExisting(place, target);
    byte[] bytes = encoded(text, target);
    // Without the name itself, which may be as long as the disk allows.
    Path beside = place.resolveSibling("." + UUID.randomUUID() + ".part");
    boolean written = false;
    try {
      try {
        try (OutputStream out =
            new BufferedOutputStream(
                Files.newOutputStream(beside, StandardOpenOption.CREATE_NEW))) {
          if (compress) {
            writeArchive(bytes, out, target);
          } else {
            out.write(bytes);
          }
        }
        written = true;
        return new StagedScore(this, target, beside);
      } finally {
        if (!written) {
          Files.deleteIfExists(beside);
        }
      }
    } catch (IOException e) {
      throw unwritable(target, e);
    }
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
          "%s was not written because %s has changed meanwhile: run the command again."
              .formatted(target, path));
    }
    try {
      MxlContainer.copyWith(path, rootName, score, out, limits);
    } catch (UnreadableScoreException e) {
      throw new UnwritableScoreException(String.valueOf(e.getMessage()), e);
    }
  }

  private void refuseExisting(Path place, Path target) {
    if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (isThisFile(place)) {
      throw new UnwritableScoreException(
          "%s is the score that was read, and is never written over: choose another name."
              .formatted(target));
    }
    throw new UnwritableScoreException(
        "%s exists already and is not written over: choose another name, or move it away first."
            .formatted(target));
  }

  private boolean isThisFile(Path place) {
    try {
      return origin.isPresent() && Files.isSameFile(place, origin.get().path());
    } catch (IOException e) {
      // One of the two has gone, so they are not one.
      return false;
    }
  }

  private byte[] encoded(String text, Path target) {
    try {
      return score.encoding().encode(text);
    } catch (CharacterCodingException e) {
      throw new UnwritableScoreException(
          "%s was not written because the text holds half a character: mend the words to be printed."
              .formatted(target),
          e);
    }
  }

  /** Moves what was written beside a target into its place. */
  void move(Path from, Path target) {
    Path place = target.toAbsolutePath();
    refuseExisting(place, target);
    try {
      try {
        Files.move(from, place, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(from, place);
      }
    } catch (IOException e) {
      throw unwritable(target, e);
    }
  }

  static UnwritableScoreException unwritable(Path target, IOException e) {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return new UnwritableScoreException(
          "%s cannot be written because there is no folder %s: make it first, or choose another."
              .formatted(target, folder),
          e);
    }
    if (e instanceof AccessDeniedException) {
      return new UnwritableScoreException(
          "You are not allowed to write %s: choose another folder.".formatted(target), e);
    }
    return new UnwritableScoreException(
        "%s could not be written: see that the disk is not full and the name not too long, or choose another folder."
            .formatted(target),
        e);
  }
}
