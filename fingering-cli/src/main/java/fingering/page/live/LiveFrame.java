package fingering.page.live;

/**
 * The frame of a page of the local server.
 *
 * @param title the title, not empty
 * @param token what the page must send with every change
 */
public record LiveFrame(String title, String token) {

  /** The header that carries the token, as a value of {@code hx-headers}. */
  public String headers() {
    return "{\"X-Page\":\"" + token + "\"}";
  }
}
