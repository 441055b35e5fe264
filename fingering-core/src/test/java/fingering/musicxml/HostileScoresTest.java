package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.violin;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Scores that are made to do harm, and scores with false encodings. */
@Timeout(60)
class HostileScoresTest {
  private static final String SECRET = "the key under the mat";
  private static final String MUSIC = measure("1", START, note("D5", 16));

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("a.musicxml"), text);
  }

  private Score read(String text) throws IOException {
    return ScoreReader.read(ScoreFile.read(file(text)));
  }

  private static String withDoctype(String doctype, String title) {
    return violin(MUSIC).replace("?>", "?>" + doctype).replace("Study", title);
  }

  // XML 1.0, 4.4.3: a processor that does not validate need not include external entities.
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!DOCTYPE score-partwise [<!ENTITY x SYSTEM 'FILE'>]>",
        "<!DOCTYPE score-partwise [<!ENTITY % x SYSTEM 'FILE'> %x;]>",
        "<!DOCTYPE score-partwise SYSTEM 'FILE'>",
        "<!DOCTYPE score-partwise PUBLIC 'x' 'FILE' [<!ENTITY x SYSTEM 'FILE'>]>"
      })
  void aFileNamedByAnEntityIsNeverRead(String doctype) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), SECRET);
    Score score = read(withDoctype(doctype.replace("FILE", secret.toUri().toString()), "A&x;B"));

    assertThat(score.title()).isEqualTo("AB");
    assertThat(score.passage(PassageRequest.WHOLE).notes()).hasSize(1);
    assertThat(score.remarks()).singleElement().asString().contains("entities", "&x;");
  }

  @Test
  void entitiesOfTheFileAreNotReadAndNamed() throws IOException {
    Score score = read(withDoctype("<!DOCTYPE score-partwise [<!ENTITY x 'Viola'>]>", "A&x;B"));

    assertThat(score.remarks())
        .containsExactly(
            "the score abbreviates text by entities, which are not read (&x;): replace them by their text in the file");
  }

  @Test
  void noAddressInAScoreIsEverContacted() throws IOException {
    List<String> asked = Collections.synchronizedList(new ArrayList<>());
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.add(exchange.getRequestURI().toString());
          byte[] entity = "<!ENTITY x 'harm'>".getBytes(UTF_8);
          exchange.sendResponseHeaders(200, entity.length);
          exchange.getResponseBody().write(entity);
          exchange.close();
        });
    server.start();
    try {
      String address = "http://localhost:" + server.getAddress().getPort();
      String score =
          withDoctype(
                  "<!DOCTYPE score-partwise PUBLIC 'x' 'AT/d.dtd' [<!ENTITY % p SYSTEM 'AT/p'>"
                      + "%p;<!ENTITY x SYSTEM 'AT/x'>]>",
                  "A&x;B")
              .replace("AT", address)
              .replace(
                  "<score-partwise ",
                  "<score-partwise xmlns:xi=\"http://www.w3.org/2001/XInclude\""
                      + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
                      + " xsi:noNamespaceSchemaLocation=\""
                      + address
                      + "/schema\" ")
              .replace("<part-list>", "<xi:include href=\"" + address + "/inc\"/><part-list>");

      ScoreFile read = ScoreFile.read(file(score));
      Passage passage = ScoreReader.read(read).passage(PassageRequest.WHOLE);
      ScoreMarker.mark(read.text(), List.of());

      assertThat(passage.notes()).hasSize(1);
      assertThat(asked).isEmpty();
    } finally {
      server.stop(0);
    }
  }

  @Test
  void entitiesThatMultiplyAreNotExpanded() throws IOException {
    StringBuilder entities = new StringBuilder("<!DOCTYPE score-partwise [<!ENTITY e0 'ha'>");
    for (int i = 1; i <= 30; i++) {
      String before = "&e" + (i - 1) + ";";
      entities.append("<!ENTITY e").append(i).append(" '").append(before.repeat(10)).append("'>");
    }
    String bomb = withDoctype(entities + "]>", "Laugh &e30;");

    assertThat(read(bomb).title()).isEqualTo("Laugh");
    assertThat(ScoreMarker.mark(bomb, List.of())).isEqualTo(bomb);
  }

  @Test
  void anEntityThatRefersToItselfDoesNoHarm() throws IOException {
    String loop = "<!DOCTYPE score-partwise [<!ENTITY a '&b;'><!ENTITY b '&a;'>]>";

    assertThat(read(withDoctype(loop, "Round&a;")).title()).isEqualTo("Round");
  }

  @Test
  void anEntityInAnAttributeIsLeftOut() throws IOException {
    String score =
        withDoctype("<!DOCTYPE score-partwise [<!ENTITY x 'harm'>]>", "A")
            .replace("measure number=\"1\"", "measure number=\"&x;7\"");

    assertThat(read(score).passage(PassageRequest.WHOLE).measures().get(0).number()).isEqualTo("7");
  }

  @Test
  void aDocumentTypeOfMegabytesIsSkipped() throws IOException {
    String padding = "<!-- " + "x".repeat(4_000_000) + " -->";

    assertThat(read(withDoctype("<!DOCTYPE score-partwise [" + padding + "]>", "A")).title())
        .isEqualTo("A");
  }

  @Test
  void deeplyNestedElementsAreRefused() {
    String deep = "<x>".repeat(200_000) + "</x>".repeat(200_000);
    String score = violin(measure("1", START, deep, note("D5", 16)));

    assertThat(Refusal.of(() -> read(score))).contains("more than 100 levels of nested elements");
  }

  @Test
  void anElementWithThousandsOfAttributesIsRefused() {
    StringBuilder attributes = new StringBuilder();
    for (int i = 0; i < 5_000; i++) {
      attributes.append(" a").append(i).append("='1'");
    }
    String score = violin(MUSIC).replace("<part id", "<part" + attributes + " id");

    assertThat(Refusal.of(() -> read(score))).startsWith("The score");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32", "ISO-8859-1", "IBM037"})
  void aScoreWithAFalseEncodingDeclarationIsReadOrRefused(String named) throws IOException {
    String text = violin(MUSIC).replace("\"1.0\"", "\"1.0\" encoding=\"" + named + "\"");
    for (String own : List.of("UTF-8", "UTF-16LE", "UTF-32BE", "windows-1252", "IBM037")) {
      byte[] bytes = text.replace("Study", "Étude").getBytes(Charset.forName(own));
      Path file = Files.write(folder.resolve("a.musicxml"), bytes);
      try {
        assertThat(ScoreReader.read(ScoreFile.read(file)).title()).endsWith("tude");
      } catch (UnreadableScoreException e) {
        assertThat(Refusal.of(() -> ScoreReader.read(ScoreFile.read(file))))
            .containsAnyOf("but does not use it", "is not valid", "is not MusicXML");
      }
    }
  }

  @Test
  void namesOfSeveralLinesStayOnOneLineOfAMessage() throws IOException {
    String name = "Violin\n\n\u0085 of \u202E the\t" + "very ".repeat(5_000) + "first";
    String rests = measure("1", START, ScoreText.rest(16));

    Score score = read(ScoreText.score(ScoreText.part(name, "", rests)));

    assertThat(score.parts().get(0).name()).startsWith("Violin of the very").hasSizeLessThan(70);
    assertThat(Refusal.of(() -> score.passage(PassageRequest.WHOLE))).contains("has no note");
    assertThat(Refusal.of(() -> score.part("x\n" + "y".repeat(900)))).contains("has no part 'x y");
  }

  @Test
  void titlesDoNotControlTheTerminal() throws IOException {
    // U+009B opens a control sequence, and XML 1.0 lets it stand in a text.
    Score score = read(violin(MUSIC).replace("Study", "A\u009B2J\u202E study \u00A0\n in\tred"));

    assertThat(score.title()).isEqualTo("A 2J study in red");
  }

  @Test
  void theNameOfAnotherRootIsCutShort() {
    String root = "q".repeat(5_000);

    assertThat(Refusal.of(() -> read("<" + root + "/>"))).contains("but contains <qqq");
  }
}
