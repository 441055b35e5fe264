package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.tables.FingeringException;
import fingering.web.running.RunningServer;
import fingering.web.running.Wanted;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A second start of the program hands over what it wants to see. */
class HandOverTest {
  private static final Wanted DEMO = new Wanted(Optional.of(Session.DEMO), false);

  @TempDir Path folder;

  private final Visitor.SetClock clock = new Visitor.SetClock();
  private LocalServer server;

  @BeforeEach
  void start() {
    server = LocalServer.start(folder, new LessonAdviser(), clock);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String location(Optional<String> address) throws Exception {
    return new Visitor(server)
        .enter(address.orElseThrow())
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }

  @Test
  void runningServerOpensAScoreALessonAndTheFirstPage() throws Exception {
    Path lesson = Path.of("..", "docs", "examples", "imke-mill.yaml");
    assertThat(location(server.running().open(DEMO))).startsWith("/open/");
    assertThat(location(server.running().open(new Wanted(Optional.of(lesson), false))))
        .startsWith("/open/");
    assertThat(location(server.running().open(Wanted.FIRST_PAGE))).isEqualTo("/");
  }

  @Test
  void addressIsGoodOnceAndForAMinute() throws Exception {
    String once = server.running().open(DEMO).orElseThrow();
    location(Optional.of(once));
    assertThat(new Visitor(server).enter(once).statusCode()).isEqualTo(403);
    String late = server.running().open(DEMO).orElseThrow();
    clock.advance(60);
    assertThat(new Visitor(server).enter(late).statusCode()).isEqualTo(403);
  }

  @Test
  void fileThatCannotBeReadIsRefusedInASentence() throws Exception {
    Path wrong = Files.writeString(folder.resolve("wrong.musicxml"), "no score");
    assertThatThrownBy(() -> server.running().open(new Wanted(Optional.of(wrong), false)))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("wrong.musicxml");
  }

  @Test
  void onlyAStartThatKnowsTheSecretIsAnswered() throws Exception {
    for (String secret : new String[] {"", "guess", server.running().proof()}) {
      HttpResponse<String> answer =
          new Visitor(server)
              .with(RunningServer.SECRET, secret)
              .post(RunningServer.PATH, "file=" + Session.DEMO.toAbsolutePath());
      assertThat(answer.statusCode()).isEqualTo(403);
      assertThat(answer.headers().firstValue(RunningServer.PROOF)).isEmpty();
      assertThat(answer.body()).doesNotContain("token", "demo");
    }
    Visitor known = new Visitor(server).with(RunningServer.SECRET, server.running().secret());
    assertThat(known.get(RunningServer.PATH).statusCode()).isEqualTo(403);
    assertThat(known.post(RunningServer.PATH, "").statusCode()).isEqualTo(200);
    // A page of a browser, even one of this server, is no start of the program.
    assertThat(known.with("Origin", known.base()).post(RunningServer.PATH, "").statusCode())
        .isEqualTo(403);
    assertThat(
            known
                .without("Origin")
                .with("Sec-Fetch-Site", "cross-site")
                .post(RunningServer.PATH, "")
                .statusCode())
        .isEqualTo(403);
    assertThat(
            known.raw(
                "POST " + RunningServer.PATH + " HTTP/1.1",
                "Host: evil.example",
                RunningServer.SECRET + ": " + server.running().secret(),
                "Content-Length: 0"))
        .contains(" 403 ");
  }

  @Test
  void secretOpensNothingElse() throws Exception {
    Visitor known = new Visitor(server).with(RunningServer.SECRET, server.running().secret());
    assertThat(known.get("/").statusCode()).isEqualTo(403);
    assertThat(known.post("/demo", "").statusCode()).isEqualTo(403);
  }

  @Test
  void serverThatHasEndedIsNotFound() {
    server.close();
    assertThat(server.running().open(DEMO)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/enter?token=aaaaaaaaaaaaaaaaaaaaaaaa", "hello", ""})
  void otherProgramOnThePortIsNotTakenForTheServer(String said) throws IOException {
    byte[] body = said.getBytes(StandardCharsets.UTF_8);
    HttpServer other =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    other.createContext(
        "/",
        exchange -> {
          exchange.sendResponseHeaders(said.isEmpty() ? 400 : 200, 0);
          exchange.getResponseBody().write(body);
          exchange.close();
        });
    other.start();
    RunningServer stale =
        new RunningServer(
            "127.0.0.1:" + other.getAddress().getPort(), "s".repeat(24), "p".repeat(24));
    assertThat(stale.open(DEMO)).isEmpty();
    other.stop(0);
  }
}
