package fingering.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A visitor of a local server who sends what a browser would send, or something else. */
final class Visitor {
  private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");

  private final HttpClient client = HttpClient.newHttpClient();
  private final String base;
  private final Map<String, String> headers = new HashMap<>();

  Visitor(LocalServer server) {
    base = "http://127.0.0.1:" + server.port();
  }

  /** A clock that a test sets, on a computer where the day begins long before it does in UTC. */
  static final class SetClock extends Clock {
    private final AtomicReference<Instant> now =
        new AtomicReference<>(Instant.parse("2026-11-30T20:00:00Z"));

    void advance(long seconds) {
      now.updateAndGet(instant -> instant.plusSeconds(seconds));
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.ofHours(14);
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now.get();
    }
  }

  String base() {
    return base;
  }

  Visitor with(String name, String value) {
    headers.put(name, value);
    return this;
  }

  Visitor without(String name) {
    headers.remove(name);
    return this;
  }

  /** Follows the first address, as the browser does, and keeps the cookie. */
  HttpResponse<String> enter(String address) throws Exception {
    HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(address)));
    answer
        .headers()
        .firstValue("Set-Cookie")
        .ifPresent(cookie -> with("Cookie", cookie.replaceFirst(";.*", "")));
    return answer;
  }

  /** Enters, opens a page, and takes its token and origin for changes. */
  Visitor at(String address) throws Exception {
    HttpResponse<String> entered = enter(address);
    String page = get(entered.headers().firstValue("Location").orElseThrow()).body();
    Matcher token = TOKEN.matcher(page);
    if (!token.find()) {
      throw new IOException("the page has no token: " + page);
    }
    return with("X-Page", token.group(1)).with("Origin", base);
  }

  HttpResponse<String> get(String path) throws Exception {
    return send(HttpRequest.newBuilder(URI.create(base + path)));
  }

  HttpResponse<String> post(String path, String form) throws Exception {
    return post(path, form.getBytes(StandardCharsets.UTF_8));
  }

  HttpResponse<String> post(String path, byte[] body) throws Exception {
    return send(
        HttpRequest.newBuilder(URI.create(base + path))
            .POST(HttpRequest.BodyPublishers.ofByteArray(body)));
  }

  /** Drops a file on the page. */
  HttpResponse<String> drop(String name, byte[] content) throws Exception {
    with("X-Name", URLEncoder.encode(name, StandardCharsets.UTF_8));
    return post("/scores", content);
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    headers.forEach(request::header);
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Sends lines as they are, and returns the first line of the answer. */
  String raw(String... lines) throws IOException {
    try (Socket socket = connected()) {
      String text = String.join("\r\n", List.of(lines)) + "\r\n\r\n";
      socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .findFirst()
          .orElse("");
    }
  }

  /** A connection on which nothing is sent yet. */
  Socket connected() throws IOException {
    byte[] loopback = {127, 0, 0, 1};
    return new Socket(InetAddress.getByAddress(loopback), URI.create(base).getPort());
  }

  String cookie() {
    return headers.getOrDefault("Cookie", "");
  }
}
