package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.advice.LessonAdviser;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server ends half an hour after the last page was closed. */
class OpenPagesTest {
  private static final long HALF_HOUR = OpenPages.LONGEST_EMPTY.toSeconds();

  @TempDir Path folder;

  private final Visitor.SetClock clock = new Visitor.SetClock();
  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() {
    server = LocalServer.start(folder, new LessonAdviser(), clock);
    visitor = new Visitor(server);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private boolean endsAfter(long seconds) {
    clock.advance(seconds);
    server.pages().beat();
    return server.pages().ended();
  }

  /** Opens a stream as a page does, and reads its headers. */
  private Socket stream() throws IOException {
    Socket socket = visitor.connected();
    socket
        .getOutputStream()
        .write(
            "GET /events HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nCookie: %s\r\n\r\n"
                .formatted(server.port(), visitor.cookie())
                .getBytes(StandardCharsets.UTF_8));
    assertThat(lines(socket).readLine()).contains(" 200 ");
    return socket;
  }

  private static BufferedReader lines(Socket socket) throws IOException {
    socket.setSoTimeout(10_000);
    return new BufferedReader(
        new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
  }

  /** Looks at the streams until the server has noticed that they are closed. */
  private void awaitNumber(int number) throws Exception {
    for (int tries = 0; tries < 500 && server.pages().number() != number; tries++) {
      server.pages().beat();
      Thread.sleep(10);
    }
    assertThat(server.pages().number()).isEqualTo(number);
  }

  @Test
  void browserThatNeverComesCountsFromTheStart() throws Exception {
    assertThat(endsAfter(HALF_HOUR - 1)).isFalse();
    assertThat(endsAfter(1)).isTrue();
    server.awaitEnd();
  }

  @Test
  void strangersDoNotKeepTheServer() throws Exception {
    assertThat(visitor.get("/events").statusCode()).isEqualTo(403);
    clock.advance(HALF_HOUR);
    assertThat(visitor.get("/").statusCode()).isEqualTo(403);
    assertThat(endsAfter(0)).isTrue();
  }

  @Test
  void openPageKeepsTheServerAndTheHalfHourCountsFromItsEnd() throws Exception {
    visitor.enter(server.address());
    Socket page = stream();
    Socket other = stream();
    assertThat(endsAfter(10 * HALF_HOUR)).isFalse();
    page.close();
    awaitNumber(1);
    assertThat(endsAfter(HALF_HOUR)).isFalse();
    other.close();
    awaitNumber(0);
    assertThat(endsAfter(HALF_HOUR - 1)).isFalse();
    assertThat(endsAfter(1)).isTrue();
  }

  @Test
  void requestCountsAsUse() throws Exception {
    visitor.enter(server.address());
    clock.advance(HALF_HOUR - 1);
    assertThat(visitor.get("/").statusCode()).isEqualTo(200);
    assertThat(endsAfter(HALF_HOUR - 1)).isFalse();
    assertThat(server.running().open(fingering.web.running.Wanted.FIRST_PAGE)).isPresent();
    assertThat(endsAfter(HALF_HOUR - 1)).isFalse();
  }

  @Test
  void streamsLeaveThreadsForRequests() throws Exception {
    visitor.enter(server.address());
    List<Socket> streams = new ArrayList<>();
    for (int i = 0; i < OpenPages.MOST; i++) {
      streams.add(stream());
    }
    assertThat(visitor.get("/").statusCode()).isEqualTo(200);
    // Enough: a browser that gets this does not ask again.
    assertThat(visitor.get("/events").statusCode()).isEqualTo(204);
    for (Socket stream : streams) {
      stream.close();
    }
    awaitNumber(0);
  }

  @Test
  void serverThatEndsSaysSo() throws Exception {
    visitor.enter(server.address());
    try (Socket page = stream()) {
      server.close();
      assertThat(lines(page).lines().collect(Collectors.joining("\n"))).contains("event: end");
    }
  }
}
