package fingering.musicxml.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.UnwritableScoreException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MxlFileTest {

  private static final String SCORE = "<score-partwise>\u00e9</score-partwise>";
  private static final String CONTAINER = "META-INF/container.xml";
  private static final String MIMETYPE = "application/vnd.recordare.musicxml";

  @TempDir private Path folder;

  private static String container(String... rootFiles) {
    return "<container><rootfiles>" + String.join("", rootFiles) + "</rootfiles></container>";
  }

  private Path zip(String name, Map<String, byte[]> entries, Charset charset) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, charset)) {
      for (Map.Entry<String, byte[]> each : entries.entrySet()) {
        ZipEntry entry = new ZipEntry(each.getKey());
        if (each.getKey().equals("mimetype")) {
          CRC32 crc = new CRC32();
          crc.update(each.getValue());
          entry.setMethod(ZipEntry.STORED);
          entry.setSize(each.getValue().length);
          entry.setCrc(crc.getValue());
        }
        zip.putNextEntry(entry);
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
    return Files.write(folder.resolve(name), bytes.toByteArray());
  }

  private Path zip(String... namesAndTexts) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      entries.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(UTF_8));
    }
    return zip("a.mxl", entries, UTF_8);
  }

  private static List<String> contents(Path archive) throws IOException {
    List<String> contents = new ArrayList<>();
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        String text = new String(zip.getInputStream(entry).readAllBytes(), UTF_8);
        String stored = entry.getMethod() == ZipEntry.STORED ? " stored" : "";
        contents.add(entry.getName() + stored + ": " + text);
      }
    }
    return contents;
  }

  @Test
  void theFirstRootFileIsTheScoreUnderAnyName() throws IOException {
    Path file =
        zip(
            "other.xml",
            "<other/>",
            CONTAINER,
            container("<rootfile full-path='in/s.xml'/>", "<rootfile full-path='other.xml'/>"),
            "in/s.xml",
            SCORE);
    Path renamed = Files.move(file, folder.resolve("score.xml"));

    ScoreFile score = ScoreFile.read(renamed);

    assertThat(score.text()).isEqualTo(SCORE);
    assertThat(score.compressed()).isTrue();
  }

  @Test
  void withoutContainerTheOnlyXmlFileIsTheScore() throws IOException {
    assertThat(ScoreFile.read(zip("__MACOSX/s.xml", "", "p.png", "", "s.MusicXML", SCORE)).text())
        .isEqualTo(SCORE);
  }

  @Test
  void aMarkedArchiveKeepsEverythingElseInOrder() throws IOException {
    String container = container("<rootfile full-path=\"s.xml\"/>");
    Path file =
        zip(
            "mimetype",
            MIMETYPE,
            CONTAINER,
            container,
            "i/",
            "",
            "s.xml",
            SCORE,
            "i/x.png",
            "\u0001");
    byte[] before = Files.readAllBytes(file);
    ScoreFile score = ScoreFile.read(file);

    score.writeMarked("<marked/>", folder.resolve("b.MXL"));
    score.writeMarked("<marked/>", folder.resolve("c.mxl"));
    score.writeMarked("<marked/>", folder.resolve("d.xml"));

    assertThat(contents(folder.resolve("b.MXL")))
        .containsExactly(
            "mimetype stored: " + MIMETYPE,
            CONTAINER + ": " + container,
            "i/ stored: ",
            "s.xml: <marked/>",
            "i/x.png: \u0001");
    assertThat(folder.resolve("c.mxl")).hasSameBinaryContentAs(folder.resolve("b.MXL"));
    assertThat(folder.resolve("d.xml")).hasContent("<marked/>");
    assertThat(file).hasBinaryContent(before);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(4);
    }
  }

  @Test
  void aPlainScoreBecomesAnArchiveWithAContainer() throws IOException {
    Path file = Files.writeString(folder.resolve("a.xml"), SCORE);

    ScoreFile.read(file).writeMarked("<marked>\u00e9</marked>", folder.resolve("b.mxl"));

    ScoreFile again = ScoreFile.read(folder.resolve("b.mxl"));
    assertThat(again.text()).isEqualTo("<marked>\u00e9</marked>");
    assertThat(again.compressed()).isTrue();
    assertThat(contents(folder.resolve("b.mxl")).get(0)).startsWith(CONTAINER);
  }

  @Test
  void entryNamesOfOldProgramsAreRead() throws IOException {
    Map<String, byte[]> entries = Map.of("\u00e9tude.xml", SCORE.getBytes(UTF_8));
    Path file = zip("a.mxl", entries, Charset.forName("IBM437"));

    ScoreFile.read(file).writeMarked("<marked/>", folder.resolve("b.mxl"));

    assertThat(contents(folder.resolve("b.mxl"))).containsExactly("\u00e9tude.xml: <marked/>");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<container><rootfiles><rootfile full-path='x.xml'/></rootfiles></container> | should contain its score as 'x.xml'",
        "<container><rootfiles/></container> | does not say where the score is",
        "<container><rootfiles><rootfile/></rootfiles></container> | does not say where the score is",
        "<container><rootfiles> | does not say where the score is",
        "nothing | is not MusicXML",
      })
  void containersWithoutAValidRootFileAreRefused(String container, String message)
      throws IOException {
    Path file = zip(CONTAINER, container, "s.xml", SCORE);

    assertThatThrownBy(() -> ScoreFile.read(file))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining(file.toString())
        .hasMessageContaining(message);
  }

  @Test
  void archivesWithoutExactlyOneScoreAreRefused() throws IOException {
    Path none = Files.move(zip("readme.txt", "hello"), folder.resolve("none.mxl"));
    Path two = Files.move(zip("a.xml", SCORE, "b.xml", SCORE), folder.resolve("two.mxl"));
    Path empty = Files.move(zip("a.xml", ""), folder.resolve("empty.mxl"));

    assertThatThrownBy(() -> ScoreFile.read(none)).hasMessageContaining("no MusicXML in it");
    assertThatThrownBy(() -> ScoreFile.read(two)).hasMessageContaining("2 XML files in it");
    assertThatThrownBy(() -> ScoreFile.read(empty))
        .hasMessageContaining("a.xml inside")
        .hasMessageContaining("is empty");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 0.9})
  void damagedArchivesAreRefused(double share) throws IOException {
    byte[] whole = Files.readAllBytes(zip("s.xml", SCORE.repeat(50)));
    Path cut = folder.resolve("cut.mxl");
    Files.write(cut, Arrays.copyOf(whole, (int) (whole.length * share)));
    byte[] spoiled = whole.clone();
    Arrays.fill(spoiled, 36, 60, (byte) 0xFF);
    Path bad = Files.write(folder.resolve("bad.mxl"), spoiled);

    assertThatThrownBy(() -> ScoreFile.read(cut))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("damaged or locked archive");
    assertThatThrownBy(() -> ScoreFile.read(bad))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("the entry s.xml is damaged");
  }

  @Test
  void anEntryWithAnExcessiveRatioIsRefused() throws IOException {
    byte[] spaces = new byte[(int) MxlContainer.RATIO_FREE_BYTES + 1];
    byte[] fits = new byte[1 << 20];
    Arrays.fill(fits, (byte) ' ');
    byte[] score = SCORE.getBytes(UTF_8);
    System.arraycopy(score, 0, fits, 0, score.length);
    Path bomb = zip("bomb.mxl", Map.of("s.xml", spaces), UTF_8);
    Path small = zip("small.mxl", Map.of("s.xml", fits), UTF_8);
    Map<String, byte[]> beside = new LinkedHashMap<>();
    beside.put("s.xml", score);
    beside.put("big.bin", spaces);
    ScoreFile besideBomb = ScoreFile.read(zip("beside.mxl", beside, UTF_8));

    assertThat(ScoreFile.read(small).text()).startsWith(SCORE);
    assertThatThrownBy(() -> ScoreFile.read(bomb))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("its entry s.xml unpacks to more than 200 times its packed size");
    assertThatThrownBy(() -> besideBomb.writeMarked("<a/>", folder.resolve("b.mxl")))
        .isInstanceOf(UnwritableScoreException.class)
        .hasMessageContaining("its entry big.bin unpacks");
    assertThat(folder.resolve("b.mxl")).doesNotExist();
  }

  @Test
  void anArchiveChangedSinceItWasReadIsNotCopied() throws IOException {
    Path file = zip("s.xml", SCORE);
    ScoreFile score = ScoreFile.read(file);
    Files.setLastModifiedTime(file, FileTime.fromMillis(0));

    assertThatThrownBy(() -> score.writeMarked(SCORE, folder.resolve("b.mxl")))
        .isInstanceOf(UnwritableScoreException.class)
        .hasMessageContaining("has changed since it was read");
    assertThat(folder.resolve("b.mxl")).doesNotExist();
  }
}
