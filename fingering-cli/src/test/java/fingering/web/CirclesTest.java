package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to circle is chosen on the page, and kept in the lesson. */
class CirclesTest {
  private static final String RING = "class=\"ring\"";

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String lesson;
  private int revision;

  @BeforeEach
  void start() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.writeString(folder.resolve("lantern.yaml"), "score: demo.musicxml\npart: 1\n");
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    visitor = new Visitor(server).at(server.address());
    lesson = visitor.get("/").body().replaceFirst("(?s).*(/open/[\\w-]+)\">lantern.*", "$1");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String post(String what, String form) throws Exception {
    HttpResponse<String> answer =
        visitor.post(lesson + "/" + what, "revision=" + revision++ + "&window=1200&" + form);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    assertThat(answer.headers().firstValue("HX-Trigger")).contains("replanned");
    return answer.body();
  }

  private String text() throws Exception {
    return Files.readString(folder.resolve("lantern.yaml"));
  }

  private String list() throws Exception {
    return visitor.get(lesson + "/circles").body();
  }

  private static String name(String list, String kind) {
    return list.replaceFirst("(?s).*?name=\"name\" value=\"([\\w.]+ " + kind + ")\".*", "$1");
  }

  /** The rings; those of a line are drawn in one path. */
  private static long rings(String page) {
    return Pattern.compile("<path class=\"ring\" d=\"([^\"]*)")
        .matcher(page)
        .results()
        .flatMapToInt(path -> path.group(1).chars())
        .filter(command -> command == 'M')
        .count();
  }

  private long printed() throws Exception {
    return rings(visitor.get(lesson + "/handout").body());
  }

  @Test
  void ringsAreHiddenUntilTheyAreSwitchedOn() throws Exception {
    assertThat(visitor.get(lesson + "/plans?window=1200").body()).doesNotContain(RING);
    assertThat(list()).contains("Show the rings in the music", "Shifts (", "id=\"ring-shift\"");

    assertThat(post("rings", "on=yes")).contains(RING);
    assertThat(text()).endsWith("circles: {shown: yes}\n");
    assertThat(post("rings", "")).doesNotContain(RING);
    assertThat(text()).doesNotContain("circles");
  }

  @Test
  void untickedThingLosesItsRingAndGetsItBack() throws Exception {
    String all = post("rings", "on=yes");
    long rings = printed();
    String name = name(list(), "sudden");
    String sent = "name=" + URLEncoder.encode(name, StandardCharsets.UTF_8);

    assertThat(post("ring", sent)).isNotEqualTo(all);
    assertThat(text()).endsWith("circles: {shown: yes, not: " + name + "}\n");
    assertThat(printed()).isEqualTo(rings - 1);

    post("ring", sent + "&on=yes");
    assertThat(text()).endsWith("circles: {shown: yes}\n");
    assertThat(printed()).isEqualTo(rings);
    post("undo", "");
    assertThat(text()).contains("not: " + name);
  }

  @Test
  void wholeKindIsLeftOutAndOneOfItComesBack() throws Exception {
    post("ring", "name=shift");
    assertThat(text()).endsWith("circles: {shown: yes, not: shift}\n");
    assertThat(list()).contains("Shifts (0 of ");

    String name = name(list(), "shift");
    post("ring", "on=yes&name=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
    assertThat(list()).contains("Shifts (1 of ");
    assertThat(text()).doesNotContain(name + ",").doesNotContain(" shift,\n");
    post("ring", "on=yes&name=shift");
    assertThat(text()).endsWith("circles: {shown: yes}\n");
  }

  @Test
  void onlyWhatIsInThePartCanBeChosen() throws Exception {
    HttpResponse<String> answer =
        visitor.post(lesson + "/ring", "revision=0&name=99.1+dynamic&on=yes");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("not in the part any more");
  }

  @Test
  void commandsCircleWhatTheLessonCircles() throws Exception {
    Path file = folder.resolve("lantern.yaml");
    String all = Session.of("marks", "--lesson", file).succeeded().out();
    assertThat(all).contains("Accents", "Other dynamics");
    Files.writeString(file, "score: demo.musicxml\npart: 1\ncircles: {not: [accent, dynamic]}\n");
    assertThat(Session.of("marks", "--lesson", file).succeeded().out())
        .isNotEmpty()
        .doesNotContain("Accents", "Other dynamics");

    Session.of("handout", "--lesson", file, "--output", folder.resolve("few.html")).succeeded();
    Session.of("handout", Session.DEMO, "--output", folder.resolve("all.html")).succeeded();
    assertThat(rings(Files.readString(folder.resolve("few.html"))))
        .isPositive()
        .isLessThan(rings(Files.readString(folder.resolve("all.html"))));
  }
}
