package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.io.Resources;
import fingering.page.LivePage;
import fingering.page.view.HomeView;
import fingering.page.view.LiveFrame;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which address answers with what. Requests have passed no check before they come here. */
final class Routes {
  static final String ENTER = "/enter";

  private static final Pattern SCORE = Pattern.compile("/open/([A-Za-z0-9_-]{24})(/plans)?");
  private static final String SCRIPT = "text/javascript; charset=utf-8";
  private static final String STYLE = "text/css; charset=utf-8";
  private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js";

  private final Gate gate;
  private final TeachersFolder folder;
  private final DroppedFiles dropped;
  private final OpenScores scores;
  private final ScorePages pages;

  Routes(
      Gate gate, TeachersFolder folder, DroppedFiles dropped, OpenScores scores, ScorePages pages) {
    this.gate = gate;
    this.folder = folder;
    this.dropped = dropped;
    this.scores = scores;
    this.pages = pages;
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
    if (!gate.known(request)) {
      return refused(Reply.FORBIDDEN, text("gate.closed"));
    }
    if (!reading && !gate.mayChange(request)) {
      return refused(Reply.FORBIDDEN, text("gate.stranger"));
    }
    try {
      return reading ? get(request) : post(request);
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
  private static String sentence(FingeringException e) {
    String message = String.valueOf(e.getMessage()).replaceFirst("(?<=[^.?])$", ".");
    boolean name = message.split(" ", 2)[0].contains(".");
    return name ? message : message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
  }

  /** A sentence in the page that asks, or in one of its own if a reader asks for an address. */
  private Reply trouble(Request request, int status, String sentence) {
    boolean inPage = request.header(Gate.PAGE).isPresent();
    return inPage
        ? Reply.html(status, LivePage.trouble(sentence))
            .with("HX-Retarget", "#trouble")
            .with("HX-Reswap", "innerHTML")
        : Reply.html(status, LivePage.say(frame(), sentence));
  }

  private LiveFrame frame() {
    return new LiveFrame(text("live.title"), gate.pageToken());
  }

  /** Exchanges a token for the cookie, and goes on to an open score or the first page. */
  private Reply enter(Request request) {
    Optional<String> cookie =
        Optional.ofNullable(request.query().get("token")).flatMap(gate::cookieFor);
    if (cookie.isEmpty()) {
      return refused(Reply.FORBIDDEN, text("gate.used"));
    }
    String score = request.query().getOrDefault("score", "");
    String next = scores.get(score).map(OpenScore::address).orElse("/");
    return Reply.to(Reply.SEE_OTHER, next).with("Set-Cookie", cookie.get());
  }

  private Reply get(Request request) {
    return switch (request.path()) {
      case "/" -> home();
      case "/style.css" -> Reply.of(Reply.DONE, STYLE, LivePage.style());
      case "/music.js" -> Reply.of(Reply.DONE, SCRIPT, resource("/fingering/page/music.js"));
      case "/htmx.js" -> Reply.of(Reply.DONE, SCRIPT, resource(HTMX));
      case "/favicon.ico" -> Reply.of(Reply.EMPTY, "image/x-icon", "");
      default -> score(request);
    };
  }

  private Reply home() {
    TeachersFolder.Listing listing = folder.list();
    HomeView view =
        new HomeView(
            folder.path().toString(),
            entries(listing, false),
            entries(listing, true),
            listing.problems());
    return Reply.html(Reply.DONE, LivePage.home(frame(), view));
  }

  private static ImmutableList<HomeView.Entry> entries(
      TeachersFolder.Listing listing, boolean lessons) {
    return listing.entries().stream()
        .filter(entry -> entry.lesson() == lessons)
        .map(entry -> new HomeView.Entry("/open/" + entry.id(), entry.name()))
        .collect(ImmutableList.toImmutableList());
  }

  private Reply score(Request request) {
    Matcher address = SCORE.matcher(request.path());
    if (!address.matches()) {
      return trouble(request, Reply.UNKNOWN, text("live.unknown"));
    }
    Optional<OpenScore> open = opened(address.group(1));
    if (open.isEmpty()) {
      return trouble(request, Reply.UNKNOWN, text("live.unknown"));
    }
    return address.group(2) == null
        ? ScorePages.page(open.get(), gate.pageToken())
        : pages.plans(open.get(), request.query(), request.header(Gate.PAGE).orElse(""));
  }

  /** An open score, or one of the folder that is opened now. */
  private Optional<OpenScore> opened(String id) {
    return scores
        .get(id)
        .or(
            () ->
                folder
                    .file(id)
                    .map(file -> scores.open(id, file, String.valueOf(file.getFileName()))));
  }

  private Reply post(Request request) throws IOException {
    String page = request.header(Gate.PAGE).orElse("");
    if (request.path().equals("/scores")) {
      return drop(request);
    }
    Matcher address = SCORE.matcher(request.path());
    Optional<OpenScore> open =
        address.matches() && address.group(2) == null ? opened(address.group(1)) : Optional.empty();
    return open.isPresent()
        ? pages.change(open.get(), request.form(), page)
        : trouble(request, Reply.UNKNOWN, text("live.unknown"));
  }

  /** Takes a file that was dropped on the page. */
  private Reply drop(Request request) throws IOException {
    byte[] body = request.body();
    String name = Request.decoded(request.header("X-Name").orElse(""));
    ScoreName kind = ScoreName.of(name);
    if (!kind.readable()) {
      throw new FingeringException(kind.advice());
    }
    DroppedFiles.Dropped file = dropped.keep(name, body);
    OpenScore open = scores.open(file.id(), file.path(), file.name());
    return Reply.to(Reply.CREATED, open.address());
  }

  /** Opens a file that the program was started with; returns the query that leads to it. */
  String open(Path file, String id) {
    return scores.open(id, file, file.toString()).id();
  }

  private static String resource(String name) {
    try {
      return Resources.toString(Resources.getResource(Routes.class, name), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
