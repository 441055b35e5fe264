package fingering.musicxml.file;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.UnwritableScoreException;
import fingering.musicxml.marking.MarkerTexts;
import fingering.musicxml.marking.ScoreMarker;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreFileTest {

  private static final String SCORE = "<score-partwise><!-- é -->\r\n</score-partwise>\n";

  @TempDir private Path folder;

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private static byte[] join(byte[] first, byte[] second) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(first);
    out.write(second);
    return out.toByteArray();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8, UTF-8, false",
    "UTF-8, '', false",
    "UTF-8, UTF-8, true",
    "UTF-8, ISO-8859-1, true",
    "UTF-16LE, UTF-16, true",
    "UTF-16BE, UTF-16, true",
    "UTF-16LE, UTF-16, false",
    "UTF-16BE, UTF-8, false",
    "UTF-32LE, UTF-32, true",
    "ISO-8859-1, ISO-8859-1, false",
    "windows-1252, Windows-1252, false",
    "x-MacRoman, x-MacRoman, false",
  })
  void textIsDecodedAsDeclaredAndWrittenBackByteForByte(
      String charset, String declared, boolean mark) throws IOException {
    String text =
        (declared.isEmpty() ? "" : "<?xml version='1.0' encoding = \"" + declared + "\"?>\r\n")
            + SCORE;
    Charset encoding = Charset.forName(charset);
    byte[] bytes = ((mark ? "\uFEFF" : "") + text).getBytes(encoding);

    ScoreFile score = ScoreFile.read(file("a.xml", bytes));
    score.writeMarked(score.text(), folder.resolve("b.musicxml"));

    assertThat(score.text()).isEqualTo(text);
    assertThat(score.compressed()).isFalse();
    assertThat(folder.resolve("b.musicxml")).hasBinaryContent(bytes);
    assertThat(names()).containsExactly("a.xml", "b.musicxml");
  }

  @Test
  void charactersThatTheEncodingLacksAreWrittenAsReferences() throws IOException {
    String text = "<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><a>é</a>";
    ScoreFile score = ScoreFile.read(file("a.xml", text.getBytes(ISO_8859_1)));

    score.writeMarked(text.replace("é", "é – \uD834\uDD1E"), folder.resolve("b.xml"));

    assertThat(folder.resolve("b.xml"))
        .hasBinaryContent(text.replace("é", "é &#8211; &#119070;").getBytes(ISO_8859_1));
  }

  @Test
  void markedTextSurvivesUtf16WithByteOrderMarkAndWindowsLineEnds() throws IOException {
    String text =
        "<?xml version=\"1.0\" encoding=\"UTF-16\"?>\r\n"
            + MarkerTexts.measure("\r\n\t<note>\r\n\t\t<rest/>\r\n\t</note>\r\n");
    byte[] bytes = ("\uFEFF" + text).getBytes(Charset.forName("UTF-16LE"));
    ScoreFile score = ScoreFile.read(file("a.xml", bytes));
    String marked = ScoreMarker.mark(score.text(), List.of(MarkerTexts.words(0, "½")));

    score.writeMarked(marked, folder.resolve("b.xml"));

    ScoreFile again = ScoreFile.read(folder.resolve("b.xml"));
    assertThat(again.text()).isEqualTo(marked);
    assertThat(marked.replaceAll("(?s)<direction .*</direction>\r\n\t", "")).isEqualTo(text);
    assertThat(Files.readAllBytes(folder.resolve("b.xml"))).startsWith(0xFF, 0xFE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<?xml version='1.0' encoding='klingon'?><a/> | declares an unknown character encoding, 'klingon'",
        "<?xml version='1.0' encoding='no such!'?><a/> | declares an unknown character encoding, 'no such!'",
        "<?xml version='1.0' encoding=''?><a/> | declares an unknown character encoding, ''",
        "<?xml version='1.0' encoding='UTF-16'?><a/> | declares the encoding UTF-16",
        "<?xml version='1.0' encoding='IBM037'?><a/> | declares the encoding IBM037",
        "Dear diary | is not MusicXML",
        "'  ' | is not MusicXML",
      })
  void filesWithFalseDeclarationsAreRefused(String content, String message) throws IOException {
    Path file = file("a.xml", content.getBytes(UTF_8));

    assertThatThrownBy(() -> ScoreFile.read(file))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining(file.toString())
        .hasMessageContaining(message)
        .hasMessageContaining("export the score")
        .hasMessageNotContaining("Exception");
  }

  @Test
  void invalidBytesAreRefusedWithTheirLine() throws IOException {
    Path file = file("a.xml", SCORE.replace("\r\n", "\r\né").getBytes(ISO_8859_1));
    Path late = file("b.xml", "<a>\n\n<b>é</b></a>".getBytes(ISO_8859_1));
    Path cut = file("c.xml", join("<a>\n".getBytes(UTF_8), new byte[] {(byte) 0xC3}));
    Path image = file("d.xml", new byte[] {(byte) 0x89, 'P', 'N', 'G'});

    assertThatThrownBy(() -> ScoreFile.read(file))
        .hasMessageContaining("is not valid UTF-8 at line 1");
    assertThatThrownBy(() -> ScoreFile.read(late))
        .hasMessageContaining("is not valid UTF-8 at line 3");
    assertThatThrownBy(() -> ScoreFile.read(cut))
        .hasMessageContaining("is not valid UTF-8 at line 2");
    assertThatThrownBy(() -> ScoreFile.read(image)).hasMessageContaining("is not MusicXML");
  }

  @Test
  void missingEmptyAndUnfitFilesAreRefused() throws IOException {
    Path empty = file("empty.xml", new byte[0]);
    Path onlyMark = file("mark.xml", "\uFEFF".getBytes(UTF_8));

    assertThatThrownBy(() -> ScoreFile.read(folder.resolve("none.xml")))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("There is no file");
    assertThatThrownBy(() -> ScoreFile.read(folder))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("is a folder");
    assertThatThrownBy(() -> ScoreFile.read(empty)).hasMessageContaining("is empty");
    assertThatThrownBy(() -> ScoreFile.read(onlyMark)).hasMessageContaining("is not MusicXML");
  }

  @Test
  void theOriginalAndExistingFilesAreNeverOverwritten() throws IOException {
    byte[] bytes = SCORE.getBytes(UTF_8);
    Path original = file("a.xml", bytes);
    Path other = file("b.xml", new byte[] {1});
    Path link = Files.createSymbolicLink(folder.resolve("link.xml"), original);
    Path dangling = Files.createSymbolicLink(folder.resolve("gone.xml"), folder.resolve("nil"));
    ScoreFile score = ScoreFile.read(original);

    for (Path same : List.of(original, link, folder.resolve(".").resolve("a.xml"))) {
      assertThatThrownBy(() -> score.writeMarked("<b/>", same))
          .isInstanceOf(UnwritableScoreException.class)
          .hasMessageContaining("is the score that was read");
    }
    for (Path taken : List.of(other, dangling)) {
      assertThatThrownBy(() -> score.writeMarked("<b/>", taken))
          .isInstanceOf(UnwritableScoreException.class)
          .hasMessageContaining("already exists");
    }
    assertThat(original).hasBinaryContent(bytes);
    assertThat(other).hasBinaryContent(new byte[] {1});
    assertThat(names()).containsExactly("a.xml", "b.xml", "gone.xml", "link.xml");
  }

  @ParameterizedTest
  @ValueSource(strings = {"b.pdf", "b", "mxl", "b.xml.gz"})
  void otherEndingsAreRefused(String name) throws IOException {
    ScoreFile score = ScoreFile.read(file("a.xml", SCORE.getBytes(UTF_8)));

    assertThatThrownBy(() -> score.writeMarked(SCORE, folder.resolve(name)))
        .isInstanceOf(UnwritableScoreException.class)
        .hasMessageContaining(".mxl, .musicxml or .xml");
  }

  @Test
  void aStagedScoreIsMovedOnceOrDeleted() throws IOException {
    ScoreFile score = ScoreFile.read(file("a.xml", SCORE.getBytes(UTF_8)));

    try (StagedScore moved = score.stage("<b/>", folder.resolve("b.xml"))) {
      moved.moveIntoPlace();
      assertThatIllegalStateException().isThrownBy(moved::moveIntoPlace);
    }
    StagedScore closed = score.stage("<c/>", folder.resolve("c.xml"));
    assertThat(names()).hasSize(3);
    closed.close();
    assertThatIllegalStateException().isThrownBy(closed::moveIntoPlace);

    assertThat(names()).containsExactly("a.xml", "b.xml");
  }

  @Test
  void aTemporaryFileIsHiddenInTheFolderOfItsTarget() {
    Path temporary = ScoreFile.temporarySibling(folder.resolve("b.xml"));

    assertThat(temporary.getParent()).isEqualTo(folder);
    assertThat(temporary).doesNotExist();
    assertThat(temporary.getFileName().toString()).matches("\\..{36}\\.part");
  }

  @Test
  void aFailedWriteLeavesNoFileBehind() throws IOException {
    ScoreFile score = ScoreFile.read(file("a.xml", SCORE.getBytes(UTF_8)));

    assertThatThrownBy(() -> score.writeMarked(SCORE, folder.resolve("none/b.xml")))
        .isInstanceOf(UnwritableScoreException.class)
        .hasMessageContaining("there is no folder");
    assertThatThrownBy(() -> score.writeMarked("<a>\uD834</a>", folder.resolve("b.xml")))
        .isInstanceOf(UnwritableScoreException.class)
        .hasMessageContaining("half a character");
    assertThat(names()).containsExactly("a.xml");
  }
}
