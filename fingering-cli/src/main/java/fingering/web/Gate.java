package fingering.web;

import com.google.common.collect.ImmutableMap;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * All rules that keep others out. Other programs and pages on this computer can reach the server,
 * and any page in the browser can try.
 *
 * <p>The program opens an address with a token that is good once, and for a short time. It is
 * exchanged for a cookie, which everything else needs. The name of the cookie is random too, since
 * all servers on this computer share their cookies. A change also needs the token of a page, which
 * no other page can read.
 */
final class Gate {
  /** How long the token in the first address is good. */
  static final Duration TOKEN = Duration.ofSeconds(60);

  static final String PAGE = "X-Page";

  /** The headers of every answer. */
  static final ImmutableMap<String, String> HEADERS =
      ImmutableMap.of(
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Content-Security-Policy",
          "default-src 'self'; base-uri 'none'; object-src 'none'; frame-ancestors 'none'; form-action 'self'",
          "X-Content-Type-Options",
          "nosniff",
          "Cache-Control",
          "no-store",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Resource-Policy",
          "same-origin");

  private static final String PAGES = "page";

  private final Secrets secrets;
  private final Clock clock;
  private final String host;
  private final String cookieName;
  private final String cookie;
  private final Map<String, Instant> tokens = new ConcurrentHashMap<>();

  /**
   * Creates a gate.
   *
   * @param host the address and port of the server
   */
  Gate(String host, Secrets secrets, Clock clock) {
    this.host = host;
    this.secrets = secrets;
    this.clock = clock;
    cookieName = "f" + secrets.fresh();
    cookie = secrets.fresh();
  }

  /** A new token for the first address. */
  String token() {
    Instant now = clock.instant();
    tokens.values().removeIf(end -> !now.isBefore(end));
    String token = secrets.fresh();
    tokens.put(token, now.plus(TOKEN));
    return token;
  }

  /** The cookie to set for a token; empty if the token is unknown, used or too old. */
  Optional<String> cookieFor(String token) {
    return Optional.ofNullable(tokens.remove(token))
        .filter(clock.instant()::isBefore)
        .map(end -> cookieName + "=" + cookie + "; HttpOnly; SameSite=Strict; Path=/");
  }

  /** A new token for a page. */
  String pageToken() {
    String page = secrets.fresh();
    return page + "." + secrets.sign(PAGES, page);
  }

  /** Whether a request is meant for this server, and not sent by a page of another one. */
  boolean addressed(Request request) {
    return !request.address().isAbsolute()
        && request.header("Host").filter(host::equals).isPresent()
        && request
            .header("Sec-Fetch-Site")
            .map(site -> site.equals("same-origin") || site.equals("none"))
            .orElse(true);
  }

  /** Whether a request comes from a browser that had a token. */
  boolean known(Request request) {
    return request.cookie(cookieName).filter(value -> Secrets.same(value, cookie)).isPresent();
  }

  /** Whether a page of this server asks for a change. */
  boolean mayChange(Request request) {
    return request.header("Origin").filter(("http://" + host)::equals).isPresent()
        && request.header(PAGE).filter(this::isPageToken).isPresent();
  }

  private boolean isPageToken(String token) {
    int dot = token.indexOf('.');
    return dot > 0
        && Secrets.same(token.substring(dot + 1), secrets.sign(PAGES, token.substring(0, dot)));
  }
}
