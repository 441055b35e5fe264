package fingering.web;

import com.google.common.io.Resources;
import fingering.page.LivePage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The style sheet and the scripts of all pages. */
final class ResourceHandler implements Handler {
  private static final String SCRIPT = "text/javascript; charset=utf-8";
  private static final String STYLE = "text/css; charset=utf-8";
  private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js";

  @Override
  public Optional<Reply> get(Request request) {
    return switch (request.path()) {
      case "/style.css" -> Optional.of(Reply.of(Reply.DONE, STYLE, LivePage.style()));
      case "/music.js" -> Optional.of(script("/fingering/page/music.js"));
      case "/live.js" -> Optional.of(script("/fingering/page/live.js"));
      case "/type.js" -> Optional.of(script("/fingering/page/type.js"));
      case "/print.js" -> Optional.of(script("/fingering/page/print.js"));
      case "/notes.js" -> Optional.of(script("/fingering/page/notes.js"));
      case "/player.js" -> Optional.of(script("/fingering/page/player.js"));
      case "/htmx.js" -> Optional.of(script(HTMX));
      case "/favicon.ico" -> Optional.of(Reply.of(Reply.EMPTY, "image/x-icon", ""));
      default -> Optional.empty();
    };
  }

  @Override
  public Optional<Reply> post(Request request) {
    return Optional.empty();
  }

  private static Reply script(String name) {
    try {
      return Reply.of(
          Reply.DONE,
          SCRIPT,
          Resources.toString(
              Resources.getResource(ResourceHandler.class, name), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
