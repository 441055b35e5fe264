package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.page.LivePage;
import fingering.tables.FingeringException;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/** Checks requests, and finds the handler that answers. */
final class Routes {
  static final String ENTER = "/enter";

  private final Gate gate;
  private final Frames frames;
  private final OpenLessons lessons;
  private final HandOver handOver;
  private final ImmutableList<Handler> handlers;

  /**
   * Creates the routes.
   *
   * @param handOver answers a second start of the program, which has no cookie
   * @param handlers the first one that knows an address answers
   */
  Routes(
      Gate gate,
      Frames frames,
      OpenLessons lessons,
      HandOver handOver,
      ImmutableList<Handler> handlers) {
    this.gate = gate;
    this.frames = frames;
    this.lessons = lessons;
    this.handOver = handOver;
    this.handlers = handlers;
  }

  /**
   * Answers a request.
   *
   * @throws IOException if its body cannot be read
   */
  Reply answer(Request request) throws IOException {
    if (!gate.addressed(request)) {
      return refused(Reply.FORBIDDEN, text("gate.foreign"));
    }
    boolean reading = request.method().equals("GET");
    if (!reading && !request.method().equals("POST")) {
      return refused(Reply.WRONG_METHOD, text("gate.method"));
    }
    if (reading && request.path().equals(ENTER)) {
      return enter(request);
    }
    if (handOver.asked(request)) {
      return handOver.answer(request);
    }
    if (!gate.known(request)) {
      return refused(Reply.FORBIDDEN, text("gate.closed"));
    }
    if (!reading && !gate.mayChange(request)) {
      return refused(Reply.FORBIDDEN, text("gate.stranger"));
    }
    try {
      for (Handler handler : handlers) {
        Optional<Reply> reply = reading ? handler.get(request) : handler.post(request);
        if (reply.isPresent()) {
          return reply.get();
        }
      }
      return trouble(request, Reply.UNKNOWN, text("live.unknown"));
    } catch (FingeringException e) {
      return trouble(request, Reply.UNUSABLE, sentence(e));
    } catch (Request.TooLargeException e) {
      return trouble(request, Reply.TOO_LARGE, text("live.large"));
    }
  }

  private static Reply refused(int status, String sentence) {
    return Reply.of(status, "text/plain; charset=utf-8", sentence + "\n");
  }

  /** A message as a sentence; one that begins with the name of a file keeps its first letter. */
  static String sentence(FingeringException e) {
    String message = String.valueOf(e.getMessage()).replaceFirst("(?<=[^.?])$", ".");
    boolean name = message.split(" ", 2)[0].contains(".");
    return name ? message : message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
  }

  /** A sentence in the page that asks, or in one of its own if a reader asks for an address. */
  private Reply trouble(Request request, int status, String sentence) {
    boolean inPage = !request.page().isEmpty();
    return inPage
        ? Reply.html(status, LivePage.trouble(sentence))
            .with("HX-Retarget", "#trouble")
            .with("HX-Reswap", "innerHTML")
        : Reply.html(status, LivePage.say(frames.usual(), sentence));
  }

  /** Exchanges a token for the cookie, and goes on to an open score or the first page. */
  private Reply enter(Request request) {
    Optional<String> cookie =
        Optional.ofNullable(request.query().get("token")).flatMap(gate::cookieFor);
    if (cookie.isEmpty()) {
      return refused(Reply.FORBIDDEN, text("gate.used"));
    }
    String score = request.query().getOrDefault("score", "");
    String next = lessons.get(score).map(OpenLesson::address).orElse("/");
    return Reply.to(Reply.SEE_OTHER, next).with("Set-Cookie", cookie.get());
  }
}
