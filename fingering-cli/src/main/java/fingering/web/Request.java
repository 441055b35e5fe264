package fingering.web;

import com.google.common.base.Splitter;
import com.google.common.base.Strings;
import com.google.common.collect.ImmutableMap;
import com.google.common.io.ByteStreams;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A request, whose body is not read before someone asks for it. */
final class Request {
  /** The largest body that is used: 64 MB. */
  static final long MOST = 64L << 20;

  /** A little more is read and dropped, so that the sender gets the answer. */
  private static final long DROPPED = 2 * MOST;

  /** The largest form of fields, in bytes. */
  private static final int FORM = 16 << 10;

  private final HttpExchange exchange;

  Request(HttpExchange exchange) {
    this.exchange = exchange;
  }

  /** Signals a body that is larger than a limit. */
  static final class TooLargeException extends IOException {
    private static final long serialVersionUID = 1;

    TooLargeException() {
      super("the body is too large");
    }
  }

  String method() {
    return exchange.getRequestMethod();
  }

  /** The address; absolute only if the sender takes this server for a proxy. */
  URI address() {
    return exchange.getRequestURI();
  }

  String path() {
    return Strings.nullToEmpty(address().getRawPath());
  }

  /** The only header of this name; empty if there is none or several. */
  Optional<String> header(String name) {
    List<String> values = exchange.getRequestHeaders().getOrDefault(name, List.of());
    return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
  }

  /** The token of the page that asks; empty if a reader asks. */
  String page() {
    return header(Gate.PAGE).orElse("");
  }

  /** The value of a cookie; empty if there is none. */
  Optional<String> cookie(String name) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Splitter.on(';').trimResults().splitToStream(line))
        .filter(cookie -> cookie.startsWith(name + "="))
        .map(cookie -> cookie.substring(name.length() + 1))
        .findFirst();
  }

  /** The fields after the question mark. */
  ImmutableMap<String, String> query() {
    return fields(Strings.nullToEmpty(address().getRawQuery()));
  }

  /**
   * The fields of a form in the body.
   *
   * @throws IOException if the body cannot be read
   */
  ImmutableMap<String, String> form() throws IOException {
    return form(FORM);
  }

  /**
   * The fields of a form in the body.
   *
   * @param most the largest form, in bytes
   * @throws IOException if the body cannot be read
   */
  ImmutableMap<String, String> form(int most) throws IOException {
    byte[] body = ByteStreams.limit(exchange.getRequestBody(), most + 1L).readAllBytes();
    if (body.length > most) {
      throw new TooLargeException();
    }
    return fields(new String(body, StandardCharsets.UTF_8));
  }

  /**
   * The body.
   *
   * @throws IOException if it cannot be read
   */
  byte[] body() throws IOException {
    InputStream in = exchange.getRequestBody();
    byte[] body = ByteStreams.limit(in, MOST + 1).readAllBytes();
    if (body.length > MOST) {
      ByteStreams.exhaust(ByteStreams.limit(in, DROPPED - MOST));
      throw new TooLargeException();
    }
    return body;
  }

  private static ImmutableMap<String, String> fields(String text) {
    Map<String, String> fields = new HashMap<>();
    for (String field : Splitter.on('&').omitEmptyStrings().split(text)) {
      int equals = field.indexOf('=');
      if (equals > 0) {
        fields.put(decoded(field.substring(0, equals)), decoded(field.substring(equals + 1)));
      }
    }
    return ImmutableMap.copyOf(fields);
  }

  /** Text as addresses and forms write it; unchanged if it is written wrongly. */
  static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      return text;
    }
  }
}
