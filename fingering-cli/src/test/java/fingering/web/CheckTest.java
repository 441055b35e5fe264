package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What players cannot play in an open score. */
class CheckTest {
  private static final Path LANTERNS = Session.DEMO.resolveSibling("../examples/lanterns.musicxml");

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() {
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String open(Path score) throws Exception {
    return visitor.enter(server.addressOf(score)).headers().firstValue("Location").orElseThrow();
  }

  @Test
  void pageOfAScoreLeadsToTheCheckAndBack() throws Exception {
    String open = open(LANTERNS);

    assertThat(visitor.get(open).body())
        .contains("<a href=\"" + open + "/check\">Can my players play this score?</a>");
    assertThat(visitor.get(open + "/check").body())
        .contains("Lanterns on the Weir: can it be played?", "<a href=\"" + open + "\">")
        .containsPattern("<option value=\"common-practice\" selected[^>]*>advanced students<")
        .contains("<option value=\"section\"", "<option value=\"one-player\"");
  }

  @Test
  void findingsAreThoseOfTheCommandLine() throws Exception {
    String open = open(LANTERNS);

    String found = visitor.get(open + "/check/found?level=intermediate").body();

    assertThat(found)
        .contains("Lanterns on the Weir: 2 notes cannot be played (Violoncello, m. 12; Contrabass")
        .contains("8 risky places; difficulty 7 of 10 at most (Violin I).")
        .contains("m. 6, beat 1:", "Write it an octave lower, or add an easier ossia.")
        .contains("each part is assumed to be for a section, as in an orchestra")
        .contains("lanterns.musicxml", "<svg class=\"music\" role=\"img\"")
        .doesNotContain("--played-by", "style=\"", folder.toString());
    assertThat(visitor.get(open + "/check/found?level=intermediate&by=one-player").body())
        .contains("chord", "Leave out B3.")
        .doesNotContain("is assumed to be for");
  }

  @Test
  void whatCannotBeCheckedIsSaidInASentence() throws Exception {
    HttpResponse<String> none = visitor.get(open(LANTERNS) + "/check/found?level=virtuoso");
    assertThat(none.statusCode()).isEqualTo(Reply.UNUSABLE);
    assertThat(none.body()).contains("There is no level ");
    String flute =
        Files.readString(LANTERNS)
            .replaceAll("(?s)<score-part id=\"P[2-9]\">.*?</score-part>", "")
            .replaceAll("(?s)<part id=\"P[2-9]\">.*?</part>", "");
    Path score = Files.writeString(folder.resolve("flute.musicxml"), flute);
    assertThat(visitor.get(open(score) + "/check/found").body())
        .contains("no part for violin, viola, cello or double bass");
    assertThat(visitor.get("/open/AAAAAAAAAAAAAAAAAAAAAAAA/check").statusCode())
        .isEqualTo(Reply.UNKNOWN);
  }
}
