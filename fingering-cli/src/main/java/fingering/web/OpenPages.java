package fingering.web;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/**
 * The pages that are open. The pages of one browser keep one stream of events open between them
 * ({@code live.js}), since a browser opens no more than six connections to a server. A stream takes
 * no thread while nothing is sent.
 */
final class OpenPages implements Handler, AutoCloseable {
  static final String EVENTS = "/events";

  /** After this time without a page the server ends. */
  static final Duration LONGEST_EMPTY = Duration.ofMinutes(30);

  /** More browsers are not counted. */
  static final int MOST = 64;

  /** The browser tries again after a second if the stream breaks. */
  private static final String START = "retry: 1000\n\n";

  private static final String NOTHING = ":\n\n";
  private static final String END = "event: end\ndata:\n\n";

  private final Clock clock;
  private final CountDownLatch end = new CountDownLatch(1);
  private final List<HttpExchange> streams = new ArrayList<>();
  private Instant used;

  OpenPages(Clock clock) {
    this.clock = clock;
    used = clock.instant();
  }

  @Override
  public Optional<Reply> get(Request request) {
    if (!request.path().equals(EVENTS)) {
      return Optional.empty();
    }
    return Optional.of(number() < MOST ? Reply.events() : Reply.of(Reply.EMPTY, "text/plain", ""));
  }

  @Override
  public Optional<Reply> post(Request request) {
    return Optional.empty();
  }

  /** How many streams are open, or were when last looked at. */
  synchronized int number() {
    return streams.size();
  }

  /** Keeps a stream open whose headers are set. */
  synchronized void add(HttpExchange exchange) throws IOException {
    exchange.sendResponseHeaders(Reply.DONE, 0);
    if (sent(exchange, START)) {
      streams.add(exchange);
    }
  }

  /** Notes that somebody uses the server. */
  synchronized void used() {
    used = clock.instant();
  }

  /** Looks which streams are still open, and ends the server if none has been for long enough. */
  synchronized void beat() {
    streams.removeIf(stream -> !sent(stream, NOTHING));
    if (!streams.isEmpty()) {
      used();
    } else if (!clock.instant().isBefore(used.plus(LONGEST_EMPTY))) {
      end.countDown();
    }
  }

  private static boolean sent(HttpExchange stream, String event) {
    try {
      stream.getResponseBody().write(event.getBytes(StandardCharsets.UTF_8));
      stream.getResponseBody().flush();
      return true;
    } catch (IOException e) {
      stream.close();
      return false;
    }
  }

  /** Whether the server is no longer needed. */
  boolean ended() {
    return end.getCount() == 0;
  }

  void awaitEnd() throws InterruptedException {
    end.await();
  }

  /** Informs the pages that the server ends. */
  @Override
  public synchronized void close() {
    streams.forEach(
        stream -> {
          if (sent(stream, END)) {
            stream.close();
          }
        });
    streams.clear();
  }
}
