package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.web.running.RunningServer;
import fingering.wide.Figures;
import fingering.wide.Scores;
import java.io.IOException;
import java.net.Socket;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every address of the local page on every string part of the scores of {@code -Dscores}. None may
 * fail. The figures name the slowest.
 */
@Tag("wide")
class EveryRouteOnScoresTest {
  private static final Path HANDLERS = Path.of("src", "main", "java", "fingering", "web");

  private static final Pattern REVISION = Pattern.compile("id=\"revision\" value=\"(\\d+)\"");
  private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"(\\w*)\"");
  private static final Pattern WAY = Pattern.compile("name=\"way\" value=\"([^\"]+)\"");
  private static final Pattern RING = Pattern.compile("name=\"name\" value=\"([^\"]+)\"");
  private static final Pattern PLACE = Pattern.compile("name=\"place\" value=\"([^\"]+)\"");
  private static final Pattern FILE = Pattern.compile("href=\"([^\"]+part\\?file=[^\"]+)\"");
  private static final Pattern SHEET = Pattern.compile("/audition/[\\w-]{24}");
  private static final Pattern STUDENT = Pattern.compile("/students/([\\w-]{24})");
  private static final Pattern MUSIC = Pattern.compile("value=\"([\\w-]{24})\">demo.musicxml<");

  /** What the handlers name: words in a choice, words after a slash, whole addresses. */
  private static final List<Pattern> NAMED =
      List.of(
          Pattern.compile("case \"([a-z]+)\""),
          Pattern.compile("\\(/([a-z]+)\\)"),
          Pattern.compile("\"(/(?!fingering)[a-z]+(?:[./][a-z]+)*)\""));

  private static final Pattern CHOICE = Pattern.compile("\\(([a-z]+(?:\\|[a-z]+)+)\\)");

  @TempDir Path folder;

  private final Figures figures = new Figures("every route");
  private final StringBuilder visited = new StringBuilder();
  private LocalServer server;
  private Visitor visitor;
  private String lesson = "";
  private String revision = "0";

  @BeforeEach
  void start() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  private String judged(String what, Set<Integer> allowed, Figures.Work<HttpResponse<String>> work)
      throws Exception {
    visited.append(what).append('\n');
    HttpResponse<String> answer = figures.timed(what, work);
    figures.check(
        allowed.contains(answer.statusCode()),
        what + ": status " + answer.statusCode() + " " + answer.body().strip());
    figures.check(
        !answer.body().matches("(?s).*(Exception|\\tat fingering).*"), what + ": " + answer.body());
    return answer.body();
  }

  private String get(String path) throws Exception {
    return judged(path, Set.of(200, 204, 303), () -> visitor.get(path));
  }

  private String post(String path, String form) throws Exception {
    // Not everything can be asked of every part; then the page says why.
    return judged(
        path + " " + form, Set.of(200, 201, 204, 400, 409), () -> visitor.post(path, form));
  }

  private String ask(String what, String form) throws Exception {
    String answer = post(lesson + "/" + what, "revision=" + revision + "&window=1200&" + form);
    revision = first(REVISION, answer, revision);
    return answer;
  }

  private static String first(Pattern pattern, String text, String otherwise) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find() ? matcher.group(matcher.groupCount()) : otherwise;
  }

  @Test
  void everyAddressAnswersForEveryPart() throws Exception {
    List<Path> files = Scores.files();
    assertThat(files).isNotEmpty();
    folderPages();
    int parts = 0;
    for (Path file : files) {
      Score score = ScoreReader.read(ScoreFile.read(file));
      byte[] content = Files.readAllBytes(file);
      String name = String.valueOf(file.getFileName());
      HttpResponse<String> dropped =
          figures.timed("drop " + name, () -> visitor.drop(name, content));
      figures.check(dropped.statusCode() == 201, "drop " + name + ": " + dropped.body());
      lesson = dropped.headers().firstValue("Location").orElseThrow();
      revision = "0";
      for (PartInfo part : score.parts()) {
        if (part.isString() && score.hasNotes(part)) {
          parts++;
          lessonPages(part.number(), parts);
        }
      }
    }
    visited.append("/scores");
    figures.print(files.size() + " scores, " + parts + " string parts");
    assertThat(figures.failures()).isEmpty();
    assertThat(named()).isNotEmpty().allMatch(word -> visited.indexOf(word) >= 0);
  }

  /** The words of addresses and choices in the code of the handlers. */
  private static Set<String> named() throws IOException {
    Set<String> words = new TreeSet<>();
    try (Stream<Path> files = Files.list(HANDLERS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String code = Files.readString(file);
        if (code.contains("implements Handler")) {
          NAMED.forEach(
              pattern -> pattern.matcher(code).results().forEach(r -> words.add(r.group(1))));
          CHOICE
              .matcher(code)
              .results()
              .forEach(r -> words.addAll(Splitter.on('|').splitToList(r.group(1))));
        }
      }
    }
    return words;
  }

  private void folderPages() throws Exception {
    for (String page :
        List.of("/", "/students", "/students/new", "/audition", "/scales", "/type")) {
      get(page);
    }
    for (String file :
        List.of(
            "/style.css",
            "/music.js",
            "/live.js",
            "/type.js",
            "/print.js",
            "/notes.js",
            "/player.js",
            "/htmx.js",
            "/favicon.ico")) {
      get(file);
    }
    // The stream of events stays open: only its head is read.
    visited.append(OpenPages.EVENTS + "\n");
    String events = "";
    try (Socket socket = visitor.connected()) {
      String host = visitor.base().replace("http://", "");
      socket
          .getOutputStream()
          .write(
              "GET /events HTTP/1.1\r\nHost: %s\r\nCookie: %s\r\n\r\n"
                  .formatted(host, visitor.cookie())
                  .getBytes(StandardCharsets.UTF_8));
      byte[] head = new byte["HTTP/1.1 200".length()];
      int read = socket.getInputStream().readNBytes(head, 0, head.length);
      events = new String(head, 0, read, StandardCharsets.UTF_8);
    }
    figures.check(events.contains("200"), "/events: " + events);
    post("/students/new/form", "seen=&name=Ada&instrument=viola");
    post("/students/new", "seen=&name=Ada&instrument=viola&level=intermediate");
    String student = first(STUDENT, get("/students"), "");
    get("/students/" + student);
    sheets();
    get("/scales/ways?tonic=D&kind=major&octaves=1&instrument=viola&student=" + student);
    post("/scales/keep", "tonic=D&kind=major&octaves=1&instrument=viola&way=allow%3D3");
    post("/demo", "");
    typed();
    HttpResponse<String> handed =
        new Visitor(server)
            .with(RunningServer.SECRET, server.running().secret())
            .post(RunningServer.PATH, "");
    figures.check(handed.statusCode() == 200, RunningServer.PATH + ": " + handed.body());
  }

  private void typed() throws Exception {
    HttpResponse<String> begun = visitor.get("/type");
    String page = begun.headers().firstValue("Location").orElseThrow();
    get(page);
    String tune = "text=" + encoded("X:1\nT:Rain\nL:1/8\nK:G clef=treble\nGABc d2B2|A4 G4|]\n");
    post(page + "/draw", tune + "&width=700");
    post(page + "/save", tune + "&name=Rain");
  }

  private void sheets() throws Exception {
    post("/audition", "name=By+the+lake&instrument=viola");
    String sheet = first(Pattern.compile("(" + SHEET + ")"), get("/audition"), "");
    String music = first(MUSIC, get(sheet), "");
    for (String change :
        List.of(
            "settings title=Lake&instrument=viola&positions-2=on&notes=8",
            "ask ask=show-shift%3Aup&amount=2",
            "excerpt music=" + music + "&measures=A+to+32&tempo=quarter%3D96",
            "scale tonic=F%23&kind=melodic+minor&octaves=1&slur=4",
            "advised scale=D+major&octaves=1&allow=3",
            "up piece=1",
            "down piece=0",
            "change piece=0&name=Rain",
            "undo ",
            "remove piece=2",
            "drop key=show&value=shift%3Aup")) {
      List<String> kind = Splitter.on(' ').limit(2).splitToList(change);
      String seen = first(SEEN, get(sheet), "");
      post(sheet + "/" + kind.get(0), "seen=" + seen + "&" + kind.get(1));
    }
    get(sheet + "/plans");
    get("/scales?sheet=" + sheet.substring(sheet.lastIndexOf('/') + 1));
    post(
        "/scales/add",
        "tonic=D&kind=major&octaves=1&instrument=viola&sheet="
            + sheet.substring(sheet.lastIndexOf('/') + 1));
  }

  private void lessonPages(int part, int turn) throws Exception {
    ask("choice", "part=" + part);
    get(lesson);
    revision = first(REVISION, get(lesson + "/plans?window=1200"), revision);
    for (String page :
        List.of(
            "rest",
            "locked",
            "demands",
            "sound",
            "handout?paper=letter",
            "practice",
            "ladder",
            "circles",
            "students",
            "check",
            "check/found?level=beginner")) {
      get(lesson + "/" + page);
    }
    // The longest parts are refused.
    judged(lesson + "/gift", Set.of(200, 400), () -> visitor.get(lesson + "/gift"));
    String student = first(STUDENT, get("/students"), "");
    // The student plays the viola, so the other parts are refused.
    String rows = lesson + "/students/rows?student-" + student + "=on";
    judged(rows, Set.of(200, 400), () -> visitor.get(rows));
    // A short part may not have the note.
    String moment = lesson + "/note?moment=" + turn;
    String note = judged(moment, Set.of(200, 400), () -> visitor.get(moment));
    ask("fix", "moment=" + turn + "&way=" + encoded(first(WAY, note, "1/4")));
    ask("free", "moment=" + turn);
    ask("demand", "from=4&to=7&key=stay&value=" + (turn % 2 == 0 ? "1" : "3"));
    ask("drop", "key=stay&value=" + (turn % 2 == 0 ? "1" : "3") + "%404-7");
    ask("clear", "from=3&to=8");
    ask("slur", "moment=" + turn + "&to=" + (turn + 2));
    ask("separate", "moment=" + turn);
    ask("printed", "place=" + encoded(first(PLACE, get(lesson + "/demands"), "1.1")));
    ask("below", "below=" + (turn % 2 == 0 ? "third" : ""));
    ask("plan", "plan=" + (turn % 2 == 0 ? "first" : "third"));
    ask("undo", "");
    ask("redo", "");
    ask("rings", "on=yes");
    ask("ring", "on=yes&name=" + encoded(first(RING, get(lesson + "/circles"), "shift")));
    ask("hearing", "date=2027-03-12&tempo=quarter%3D" + (72 + turn % 40));
    ask("clean", "clean=quarter%3D50");
    ask("back", "");
    ask("bad", "note=");
    String extent = List.of("excerpt", "part", "score").get(turn % 3);
    String saved = ask("part", "extent=" + extent + "&fingers=sparing");
    get(first(FILE, saved, lesson).replace("&amp;", "&"));
    revision = first(REVISION, get(lesson + "/plans?window=1200"), revision);
    if (turn % 4 == 0) {
      ask("copy", "");
      ask("choice", "part=" + part + "&instrument=" + (turn % 8 == 0 ? "cello" : "violin"));
      ask("choice", "part=" + part);
    }
  }
}
