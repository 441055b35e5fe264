package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What keeps other programs, other pages and other computers away from the local page. */
class GateTest {
  @TempDir Path folder;

  private final Visitor.SetClock clock = new Visitor.SetClock();
  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() throws IOException {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    server = LocalServer.start(folder, new LessonAdviser(), clock);
    visitor = new Visitor(server);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static void assertRefused(HttpResponse<String> answer, int status) {
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(answer.body().strip()).hasLineCount(1).endsWith(".").doesNotContain("demo");
  }

  @Test
  void addressLeadsToThePageAndGivesACookieThatScriptsCannotRead() throws Exception {
    HttpResponse<String> entered = visitor.enter(server.address());

    assertThat(entered.statusCode()).isEqualTo(303);
    assertThat(entered.headers().firstValue("Location")).contains("/");
    assertThat(entered.headers().firstValue("Set-Cookie").orElseThrow())
        .matches("f[\\w-]{24}=[\\w-]{24}; HttpOnly; SameSite=Strict; Path=/");
    assertThat(visitor.get("/").body()).contains("demo.musicxml");
  }

  @Test
  void everyAnswerForbidsOtherSources() throws Exception {
    for (HttpResponse<String> answer :
        List.of(visitor.get("/"), visitor.enter(server.address()), visitor.get("/"))) {
      assertThat(answer.headers().firstValue("Content-Security-Policy"))
          .contains(
              "default-src 'self'; base-uri 'none'; object-src 'none'; frame-ancestors 'none'; form-action 'self'");
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
      assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");
      assertThat(answer.headers().firstValue("Referrer-Policy")).contains("no-referrer");
      assertThat(answer.headers().firstValue("Cross-Origin-Resource-Policy"))
          .contains("same-origin");
      assertThat(answer.headers().firstValue("Cross-Origin-Opener-Policy")).contains("same-origin");
    }
  }

  @Test
  void tokenIsGoodOnce() throws Exception {
    String address = server.address();
    visitor.enter(address);

    assertRefused(new Visitor(server).enter(address), 403);
  }

  @Test
  void tokenIsGoodForAMinute() throws Exception {
    String inTime = server.address();
    String late = server.address();
    clock.advance(59);
    assertThat(visitor.enter(inTime).statusCode()).isEqualTo(303);
    clock.advance(1);
    assertRefused(new Visitor(server).enter(late), 403);
  }

  @Test
  void missingOrGuessedTokenOpensNothing() throws Exception {
    server.address();
    assertRefused(visitor.get("/enter"), 403);
    assertRefused(visitor.get("/enter?token="), 403);
    assertRefused(visitor.get("/enter?token=aaaaaaaaaaaaaaaaaaaaaaaa"), 403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/style.css",
        "/music.js",
        "/live.js",
        "/events",
        "/type",
        "/type.js",
        "/notes.js",
        "/htmx.js",
        "/favicon.ico",
        "/none"
      })
  void nothingIsShownWithoutTheCookie(String path) throws Exception {
    assertRefused(visitor.get(path), 403);
    visitor.enter(server.address());
    String name = visitor.cookie().replaceFirst("=.*", "");
    assertRefused(new Visitor(server).with("Cookie", name + "=guess").get(path), 403);
  }

  @ParameterizedTest
  @ValueSource(strings = {"evil.example", "localhost", "127.0.0.1", "127.0.0.1:1", ""})
  void foreignHostIsRefused(String host) throws Exception {
    visitor.enter(server.address());
    String cookie = "Cookie: " + visitor.cookie();

    assertThat(visitor.raw("GET / HTTP/1.1", "Host: " + host, cookie)).contains(" 403 ");
    String own = "Host: 127.0.0.1:" + server.port();
    assertThat(visitor.raw("GET / HTTP/1.1", own, cookie, "Connection: close")).contains(" 200 ");
    assertThat(visitor.raw("GET / HTTP/1.1", own, "Host: " + host, cookie)).contains(" 403 ");
    assertThat(visitor.raw("GET http://evil.example/ HTTP/1.1", own, cookie)).contains(" 403 ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"cross-site", "same-site", "nonsense"})
  void pagesOfOtherSitesReadNothing(String site) throws Exception {
    visitor.enter(server.address());
    assertThat(visitor.with("Sec-Fetch-Site", "same-origin").get("/").statusCode()).isEqualTo(200);
    assertRefused(visitor.with("Sec-Fetch-Site", site).get("/"), 403);
    assertRefused(new Visitor(server).with("Sec-Fetch-Site", site).enter(server.address()), 403);
  }

  @Test
  void onlyAPageOfTheServerMayChangeAnything() throws Exception {
    visitor.at(server.address());
    byte[] demo = Files.readAllBytes(Session.DEMO);
    String token = visitor.get("/").body().replaceFirst("(?s).*data-token=\"([^\"]+)\".*", "$1");
    assertThat(visitor.drop("a.musicxml", demo).statusCode()).isEqualTo(201);

    for (String origin :
        List.of(
            "http://evil.example",
            "null",
            "http://127.0.0.1",
            "https://127.0.0.1:" + server.port(),
            "http://127.0.0.1:1",
            "http://localhost:" + server.port())) {
      assertRefused(visitor.with("Origin", origin).drop("a.musicxml", demo), 403);
    }
    assertRefused(visitor.without("Origin").drop("a.musicxml", demo), 403);
    visitor.with("Origin", visitor.base());
    for (String wrong : List.of("", ".", "a.b", token + "x", token.replaceFirst("\\..*", "."))) {
      assertRefused(visitor.with("X-Page", wrong).drop("a.musicxml", demo), 403);
    }
    assertRefused(visitor.without("X-Page").drop("a.musicxml", demo), 403);
    assertThat(visitor.with("X-Page", token).drop("a.musicxml", demo).statusCode()).isEqualTo(201);
    assertRefused(visitor.with("Sec-Fetch-Site", "cross-site").drop("a.musicxml", demo), 403);
  }

  @Test
  void tokenOfAnotherServerIsWorthless() throws Exception {
    visitor.at(server.address());
    try (LocalServer other = LocalServer.start(folder, new LessonAdviser(), clock)) {
      Visitor stranger = new Visitor(other);
      assertRefused(
          stranger.enter(server.address().replace(":" + server.port(), ":" + other.port())), 403);
      assertRefused(stranger.with("Cookie", visitor.cookie()).get("/"), 403);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "HEAD", "OPTIONS", "TRACE"})
  void otherMethodsAreRefused(String method) throws Exception {
    visitor.enter(server.address());
    assertThat(
            visitor.raw(
                method + " / HTTP/1.1",
                "Host: 127.0.0.1:" + server.port(),
                "Cookie: " + visitor.cookie()))
        .contains(" 405 ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/open/../demo.musicxml",
        "/open/..%2f..%2fdemo.musicxml",
        "/open/demo.musicxml",
        "/open/aaaaaaaaaaaaaaaaaaaaaaaa",
        "/open/aaaaaaaaaaaaaaaaaaaaaaa%00",
        "/style.css/",
        "/META-INF/MANIFEST.MF",
        "/%2e%2e/demo.musicxml"
      })
  void namesOfFilesLeadNowhere(String path) throws Exception {
    visitor.enter(server.address());
    HttpResponse<String> answer = visitor.get(path);
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body()).contains("There is no such page").doesNotContain("score-partwise");
  }

  @Test
  void linksOutOfTheFolderAreNotOpened(@TempDir Path outside) throws Exception {
    Path secret = Files.copy(Session.DEMO, outside.resolve("secret.musicxml"));
    Files.createSymbolicLink(folder.resolve("link.musicxml"), secret);
    Files.createSymbolicLink(folder.resolve("inner.musicxml"), folder.resolve("demo.musicxml"));

    visitor.enter(server.address());
    String home = visitor.get("/").body();
    assertThat(home)
        .contains(">demo.musicxml</a>", ">inner.musicxml</a>")
        .contains("link.musicxml is a link that leads out of the folder")
        .doesNotContain(">link.musicxml</a>");
  }

  @Test
  void linkThatIsLaidAfterwardsIsNotFollowed(@TempDir Path outside) throws Exception {
    Path secret = Files.copy(Session.DEMO, outside.resolve("secret.musicxml"));
    visitor.enter(server.address());
    String address = visitor.get("/").body().replaceFirst("(?s).*?(/open/[\\w-]+).*", "$1");
    Files.delete(folder.resolve("demo.musicxml"));
    Files.createSymbolicLink(folder.resolve("demo.musicxml"), secret);

    assertThat(visitor.get(address).statusCode()).isEqualTo(404);
  }

  @Test
  void fileOfMoreThan64MbIsRefusedInASentence() throws Exception {
    visitor.at(server.address());
    HttpResponse<String> answer = visitor.drop("large.musicxml", new byte[65 << 20]);
    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.body()).contains("larger than 64 MB");
    assertThat(visitor.get("/").statusCode()).isEqualTo(200);
  }

  @Test
  void requestThatTakesTooLongIsCutOff() throws Exception {
    visitor.at(server.address());
    String head = "POST /scores HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\n";
    Instant before = Instant.now();
    try (Socket slowHead = visitor.connected();
        Socket slowBody = visitor.connected()) {
      slowHead.getOutputStream().write(head.getBytes(StandardCharsets.UTF_8));
      String rest = "Cookie: %s\r\nContent-Length: 100\r\n\r\n<".formatted(visitor.cookie());
      slowBody.getOutputStream().write((head + rest).getBytes(StandardCharsets.UTF_8));
      // The server still answers others.
      assertThat(visitor.get("/").statusCode()).isEqualTo(200);
      assertThat(ended(slowHead)).isTrue();
      assertThat(ended(slowBody)).isTrue();
    }
    assertThat(Duration.between(before, Instant.now()))
        .isLessThan(Duration.ofSeconds(LocalServer.PATIENCE + 10));
  }

  /** Reads until the server closes the connection. */
  private static boolean ended(Socket socket) throws IOException {
    socket.setSoTimeout(1000 * (LocalServer.PATIENCE + 10));
    try {
      socket.getInputStream().readAllBytes();
    } catch (SocketException e) {
      // Closed without an answer.
      return true;
    }
    return true;
  }

  @Test
  void otherComputersDoNotReachTheServer() throws Exception {
    for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(card.getInetAddresses())) {
        if (!address.isLoopbackAddress()) {
          try (Socket socket = new Socket()) {
            assertThat(reached(socket, address)).as(address.toString()).isFalse();
          }
        }
      }
    }
  }

  private boolean reached(Socket socket, InetAddress address) {
    try {
      socket.connect(new InetSocketAddress(address, server.port()), 2000);
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
