package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.cli.advice.LessonAdviser;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedByInterruptException;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody holds a thread of the server by not reading its answer. */
class SendLimitTest {
  private final ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor();

  @AfterEach
  void stop() {
    watch.shutdownNow();
  }

  @Test
  void sendingThatIsStuckIsCutOff() throws Exception {
    Pipe pipe = Pipe.open();
    assertThatThrownBy(
            () ->
                SendLimit.within(
                    watch,
                    1,
                    () -> {
                      while (pipe.sink().isOpen()) {
                        pipe.sink().write(ByteBuffer.allocate(1 << 16));
                      }
                    }))
        .isInstanceOf(ClosedByInterruptException.class);
    assertThat(Thread.interrupted()).isTrue();
  }

  @Test
  void sendingInTimeIsNotDisturbed() throws Exception {
    SendLimit.within(watch, 0, () -> {});
    SendLimit.within(watch, 60, () -> {});
    watch.shutdown();
    assertThat(watch.isShutdown()).isTrue();
  }

  @Test
  void receiverThatStopsReadingLosesItsConnectionAndAStreamDoesNot(@TempDir Path folder)
      throws Exception {
    try (LocalServer server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
        Socket stuck = new Socket();
        Socket stream = new Socket()) {
      Visitor visitor = new Visitor(server);
      visitor.enter(server.address());
      stuck.setReceiveBufferSize(1 << 12);
      ask(stream, server, visitor, "/events", 1);
      ask(stuck, server, visitor, "/htmx.js", 500);
      assertThat(closedWithin(stuck, LocalServer.PATIENCE + 10)).isTrue();
      assertThat(server.pages().number()).isEqualTo(1);
      server.pages().beat();
      server.pages().beat();
      assertThat(server.pages().number()).isEqualTo(1);
    }
  }

  private static void ask(
      Socket socket, LocalServer server, Visitor visitor, String path, int times)
      throws IOException {
    socket.connect(
        new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), server.port()));
    String request =
        "GET %s HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nCookie: %s\r\n\r\n"
            .formatted(path, server.port(), visitor.cookie());
    socket.getOutputStream().write(request.repeat(times).getBytes(StandardCharsets.UTF_8));
  }

  /** Whether the other side closes the connection, from which nothing is read. */
  private static boolean closedWithin(Socket socket, int seconds) throws InterruptedException {
    for (int tries = 0; tries < 5 * seconds; tries++) {
      try {
        socket.getOutputStream().write('\r');
      } catch (IOException e) {
        return true;
      }
      Thread.sleep(200);
    }
    return false;
  }
}
