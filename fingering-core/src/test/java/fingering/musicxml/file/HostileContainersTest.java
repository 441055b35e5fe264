package fingering.musicxml.file;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.violin;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.Refusal;
import fingering.musicxml.UnreadableScoreException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Archives that are made to do harm. */
@Timeout(60)
class HostileContainersTest {
  private static final String SCORE = violin(measure("1", START, note("D5", 16)));
  private static final int CENTRAL_ENTRY = 0x02014b50;
  private static final int SIZE = 24;

  @TempDir private Path folder;

  private Path zip(String... namesAndTexts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (int i = 0; i < namesAndTexts.length; i += 2) {
        zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
        zip.write(namesAndTexts[i + 1].getBytes(UTF_8));
      }
    }
    return Files.write(folder.resolve("a.mxl"), bytes.toByteArray());
  }

  private static String container(String path) {
    return "<container><rootfiles><rootfile full-path='" + path + "'/></rootfiles></container>";
  }

  private static final String CONTAINER = "META-INF/container.xml";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../s.xml",
        "in/../../s.xml",
        "/etc/s.xml",
        "..\\s.xml",
        "C:\\s.xml",
        "c:s.xml",
        "in/..",
        "\\\\host\\s.xml"
      })
  void namesOutsideTheArchiveAreRefused(String name) throws IOException {
    Path beside = zip(CONTAINER, container("s.xml"), "s.xml", SCORE, name, "harm");
    assertThat(Refusal.of(() -> ScoreFile.read(beside))).contains("outside the archive's folder");

    Path score = zip(CONTAINER, container(name), name, SCORE);
    assertThat(Refusal.of(() -> ScoreFile.read(score))).contains("outside the archive's folder");
  }

  @Test
  void aContainerThatPointsOutsideTheArchiveIsRefused() throws IOException {
    Files.writeString(folder.resolve("outside.xml"), SCORE);
    Path file = zip(CONTAINER, container("../outside.xml"), "s.xml", SCORE);

    assertThat(Refusal.of(() -> ScoreFile.read(file)))
        .contains("should contain its score as '../outside.xml' but does not");
  }

  @Test
  void entitiesOfAContainerAreNotExpanded() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "s.xml");
    String doctype = "<!DOCTYPE container [<!ENTITY x SYSTEM '" + secret.toUri() + "'>]>";
    Path file = zip(CONTAINER, doctype + container("&x;"), "s.xml", SCORE);

    assertThat(Refusal.of(() -> ScoreFile.read(file))).contains("does not say where the score is");
  }

  @Test
  void dotsWithinNamesAreAllowed() throws IOException {
    Path file = zip(CONTAINER, container("a..b/s...xml"), "a..b/s...xml", SCORE);

    assertThat(ScoreFile.read(file).text()).isEqualTo(SCORE);
  }

  @Test
  void aStatedSizeOfTwoGigabytesTakesNoMemory() throws IOException {
    byte[] bytes = Files.readAllBytes(zip(CONTAINER, container("s.xml"), "s.xml", SCORE));
    ByteBuffer archive = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < bytes.length - SIZE - 4; i++) {
      if (archive.getInt(i) == CENTRAL_ENTRY) {
        archive.putInt(i + SIZE, Integer.MAX_VALUE);
      }
    }
    Path file = Files.write(folder.resolve("claims.mxl"), bytes);
    long before = used();

    try {
      assertThat(ScoreFile.read(file).text()).isEqualTo(SCORE);
    } catch (UnreadableScoreException e) {
      assertThat(Refusal.of(() -> ScoreFile.read(file))).contains("damaged");
    }
    assertThat(used() - before).isLessThan(200L << 20);
  }

  private static long used() {
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  @Test
  void unpackedContentAboveTheLimitIsRefused() throws IOException {
    ScoreLimits small = ScoreLimits.DEFAULT.with("unpacked=1M");
    Path file = zip(CONTAINER, container("s.xml"), "s.xml", SCORE + " ".repeat(2 << 20));

    assertThat(ScoreFile.read(file).text()).startsWith(SCORE);
    assertThat(Refusal.of(() -> ScoreFile.read(file, small)))
        .contains("more than 1048576 bytes when unpacked", "raise the limit 'unpacked'");
  }

  @Test
  void manyFilesBesideTheScoreCountTogether() throws IOException {
    String big = " ".repeat(700 << 10);
    Path file = zip(CONTAINER, container("s.xml"), "s.xml", SCORE, "a.bin", big, "b.bin", big);
    ScoreFile score = ScoreFile.read(file, ScoreLimits.DEFAULT.with("unpacked=1M"));
    Path target = folder.resolve("b.mxl");

    assertThat(Refusal.of(() -> score.writeMarked(SCORE, target))).contains("when unpacked");
    assertThat(target).doesNotExist();
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void anArchiveOfThousandsOfFilesIsRefused() throws IOException {
    String[] entries = new String[4_000];
    for (int i = 0; i < entries.length; i += 2) {
      entries[i] = "n" + i + ".xml";
      entries[i + 1] = "";
    }
    Path file = zip(entries);

    assertThat(Refusal.of(() -> ScoreFile.read(file))).contains("more than 1000 files in it");
  }

  @Test
  void anArchiveInAnArchiveIsNotAScore() throws IOException {
    byte[] inner = Files.readAllBytes(zip(CONTAINER, container("s.xml"), "s.xml", SCORE));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("s.xml"));
      zip.write(inner);
    }
    Path file = Files.write(folder.resolve("a.mxl"), bytes.toByteArray());

    assertThat(Refusal.of(() -> ScoreFile.read(file))).contains("is not MusicXML");
  }

  @Test
  void aFileThatIsLargerThanTheLimitIsRefused() throws IOException {
    Path plain = Files.writeString(folder.resolve("a.xml"), SCORE + " ".repeat(5_000));
    Path packed = zip("s.xml", SCORE);
    ScoreLimits small = ScoreLimits.DEFAULT.with("bytes=100");

    for (Path file : new Path[] {plain, packed}) {
      assertThat(Refusal.of(() -> ScoreFile.read(file, small)))
          .contains("more than 100 bytes", "raise the limit 'bytes'");
    }
  }
}
