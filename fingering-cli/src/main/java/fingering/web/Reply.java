package fingering.web;

import com.google.common.collect.ImmutableMap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/**
 * An answer of the server.
 *
 * @param status the status of HTTP
 * @param type the media type of the body
 * @param body the body
 * @param headers further headers
 */
record Reply(int status, String type, String body, ImmutableMap<String, String> headers) {
  private static final String HTML = "text/html; charset=utf-8";
  private static final String EVENTS = "text/event-stream; charset=utf-8";
  private static final String FILE = "application/octet-stream";

  static final int DONE = 200;
  static final int CREATED = 201;
  static final int EMPTY = 204;
  static final int SEE_OTHER = 303;
  static final int UNUSABLE = 400;
  static final int FORBIDDEN = 403;
  static final int UNKNOWN = 404;
  static final int WRONG_METHOD = 405;
  static final int CONFLICT = 409;
  static final int TOO_LARGE = 413;
  static final int FAILED = 500;

  static Reply html(int status, String html) {
    return of(status, HTML, html);
  }

  static Reply of(int status, String type, String text) {
    return new Reply(status, type, text, ImmutableMap.of());
  }

  /** An answer that stays open: a stream of events. */
  static Reply events() {
    return of(DONE, EVENTS, "");
  }

  boolean staysOpen() {
    return type.equals(EVENTS);
  }

  /** A file to keep: its bytes are the characters of the body. */
  static Reply file(byte[] content, String name) {
    return of(DONE, FILE, new String(content, StandardCharsets.ISO_8859_1)).toKeep(name);
  }

  /** The same answer as a file to keep. */
  Reply toKeep(String name) {
    String plain = name.replaceAll("[^\\w.-]", "_");
    String full = URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    return with(
        "Content-Disposition", "attachment; filename=\"" + plain + "\"; filename*=UTF-8''" + full);
  }

  /** The body as it is sent. */
  byte[] bytes() {
    return body.getBytes(type.equals(FILE) ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
  }

  static Reply to(int status, String address) {
    return of(status, HTML, "").with("Location", address);
  }

  Reply with(String name, String value) {
    return new Reply(
        status,
        type,
        body,
        ImmutableMap.<String, String>builder().putAll(headers).put(name, value).buildKeepingLast());
  }
}
