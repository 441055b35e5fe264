package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Audition sheets are put together on the local page. */
class AuditionSheetsTest {
  private static final Pattern SHEET = Pattern.compile("/audition/[\\w-]{24}");
  private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"(\\w*)\"");
  private static final String LAKE = "title: Lake\ninstrument: viola\n";

  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;

  @BeforeEach
  void start() throws Exception {
    server = LocalServer.start(folder, new LessonAdviser(), new Visitor.SetClock());
    visitor = new Visitor(server).at(server.address());
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static String found(Pattern pattern, String html, int group) {
    Matcher matcher = pattern.matcher(html);
    assertThat(matcher.find()).as(html).isTrue();
    return matcher.group(group);
  }

  private Path written(String text) throws IOException {
    return Files.writeString(folder.resolve("lake.yaml"), text);
  }

  private String address() throws Exception {
    return found(SHEET, visitor.get("/audition").body(), 0);
  }

  private HttpResponse<String> changed(String kind, String fields) throws Exception {
    String seen = found(SEEN, visitor.get(address()).body(), 1);
    return visitor.post(address() + "/" + kind, "seen=" + seen + "&" + fields);
  }

  private String choice(String name) throws Exception {
    return found(
        Pattern.compile("value=\"([\\w-]{24})\">" + name + "<"), visitor.get(address()).body(), 1);
  }

  private String plans() throws Exception {
    return visitor.get(address() + "/plans").body();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Test
  void emptyListSaysWhatToDoAndSoDoesAnEmptySheet() throws Exception {
    assertThat(visitor.get("/").body()).contains("href=\"/audition\"", "href=\"/scales\"");
    assertThat(visitor.get("/audition").body()).contains("no audition sheets in", "add the first");

    HttpResponse<String> made = visitor.post("/audition", "name=By+the+lake&instrument=viola");

    assertThat(made.headers().firstValue("HX-Redirect")).contains(address());
    assertThat(folder.resolve("By the lake.yaml"))
        .hasContent("title: By the lake\ninstrument: viola");
    assertThat(plans()).contains("Add what is played");
    assertThat(visitor.post("/audition", "name=by+the+Lake&instrument=viola").body())
        .contains("There is a file by the Lake.yaml already");
    assertThat(visitor.post("/audition", "name=../x&instrument=viola").body())
        .contains("Write a name of letters");
    // A sheet without pieces is no mistake of the folder.
    assertThat(visitor.get("/").body()).doesNotContain("By the lake");
  }

  @Test
  void newSheetIsForTheInstrumentOfTheStudents() throws Exception {
    assertThat(visitor.get("/audition").body()).doesNotContain("selected");
    Files.createDirectories(folder.resolve("students"));
    Files.writeString(folder.resolve("students/imke.yaml"), "instrument: viola\n");
    assertThat(visitor.get("/audition").body())
        .contains("<option value=\"viola\" selected>Viola</option>");
  }

  @Test
  void piecesAreMovedAndEditedInPlaceAndChangesAreUndone() throws Exception {
    String text =
        """
        title: Lake
        instrument: viola
        # two scales
        scales:
          - {scale: C major, octaves: 2, allow: "1, 3"}
          - {scale: G major, octaves: 1}
        """;
    Path file = written(text);
    assertThat(visitor.get(address()).body())
        .contains(
            "id=\"up-0\"", "aria-label=\"Move C major up\" disabled", "id=\"sheet-undo\" disabled");

    String moved = changed("down", "piece=0").body();
    assertThat(moved).contains("aria-label=\"Move G major up\" disabled");
    assertThat(scales(file)).containsExactly("G major", "C major");
    changed("down", "piece=1");
    assertThat(scales(file)).as("the last stays").containsExactly("G major", "C major");

    String edited =
        changed("change", "piece=1&scale=D+major&octaves=2&tempo=quarter%3D60&slur=").body();
    assertThat(edited).contains("D major", "quarter = 60");
    assertThat(Files.readString(file)).contains("1, 3").doesNotContain("C major");
    assertThat(changed("change", "piece=1&scale=H+major").body()).contains("H");
    assertThat(scales(file)).as("what cannot be used stays").containsExactly("G major", "D major");

    changed("remove", "piece=0");
    changed("undo", "");
    assertThat(scales(file)).containsExactly("G major", "D major");
    changed("undo", "");
    changed("undo", "");
    assertThat(scales(file)).containsExactly("C major", "G major");
    assertThat(visitor.get(address()).body()).contains("id=\"sheet-undo\" disabled");
  }

  private static List<String> scales(Path file) throws IOException {
    return Pattern.compile("scale: ([A-Z] major)")
        .matcher(Files.readString(file))
        .results()
        .map(scale -> scale.group(1))
        .toList();
  }

  @Test
  void changeElsewhereIsNotUndone() throws Exception {
    Path file =
        written("title: Lake\ninstrument: viola\nscales: [{scale: C major}, {scale: G major}]\n");
    changed("down", "piece=0");
    Files.writeString(file, "title: Lake\ninstrument: viola\nscales: [{scale: F major}]\n");
    assertThat(changed("undo", "").statusCode()).isEqualTo(404);
    assertThat(scales(file)).containsExactly("F major");
  }

  @Test
  void teacherAsksForPositionsAndAddsAScaleAnExcerptAndALesson() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Path mill = Session.DEMO.resolveSibling("../examples/mill.musicxml");
    Files.copy(mill, folder.resolve("mill.musicxml"));
    Files.writeString(
        folder.resolve("mill.yaml"),
        "score: mill.musicxml\npart: Viola\nplans: [{name: mine, stay: 3@1-2}]\n");
    Path file = written(LAKE);

    changed(
        "settings",
        "title=Lake&instrument=viola&positions-2=on&positions-4=on&positions-6=on&notes=8");
    changed("ask", "ask=show-shift%3Aup&amount=2");
    changed("excerpt", "music=" + choice("demo.musicxml") + "&measures=A+to+32&tempo=quarter%3D96");
    changed("excerpt", "music=" + choice("mill.yaml"));
    String answer = changed("scale", "tonic=F%23&kind=melodic+minor&octaves=1&slur=4").body();

    assertThat(answer)
        .contains("Saved in lake.yaml", "hx-swap-oob", "demo.musicxml</a>", "F# melodic minor")
        .contains("show a shift upward, 2 times");
    assertThat(file)
        .hasContent(
            """
            title: Lake
            instrument: viola
            positions: [1, 2, 3]
            show-shift: up=2
            excerpts:
              - file: demo.musicxml
                measures: A to 32
                tempo: quarter=96
              - lesson: mill.yaml
            scales:
              - scale: "F# melodic minor"
                octaves: 1
                slur: 4
            """);
    assertThat(folder.resolve("lake.yaml.2026-12-01~")).hasContent(LAKE);
    String plans = plans();
    assertThat(plans)
        .contains("Everything asked for is shown", "2nd position in 8 stopped notes", "<td>shown")
        .contains(
            "Pieces that could show it alone, the easiest first:",
            "href=\"#piece3\"",
            "id=\"piece3\"")
        .contains("Planned for any player, viola.", "<svg");
    assertThat(found(Pattern.compile("href=\"(/open/[\\w-]{24})\">Open it"), plans, 1))
        .isNotEmpty();
    String verdict = found(Pattern.compile("<strong>(.*?)</strong>"), plans, 1);
    assertThat(Session.of("audition", file).succeeded().out().replace("\n", " ")).contains(verdict);

    changed("remove", "piece=0");
    changed("drop", "key=show-shift&value=up%3D2");
    assertThat(file).content().doesNotContain("demo.musicxml", "show-shift");
  }

  @Test
  void missingPositionIsSaidWithAScaleThatShowsIt() throws Exception {
    Path file =
        written(LAKE + "positions: [7]\nscales: [{scale: C major, octaves: 1, allow: 1}]\n");

    String plans = plans();
    assertThat(plans)
        .contains("<td class=\"missing\">MISSING", "None of these pieces can show it.")
        .contains("would show it, played in 7th position throughout.");
    String scale = found(Pattern.compile("name=\"scale\" value=\"([^\"]+)\""), plans, 1);

    changed("advised", "scale=" + encoded(scale) + "&octaves=1&allow=7");

    assertThat(file).content().contains("allow: 7");
    assertThat(plans()).contains("Everything asked for is shown").doesNotContain("MISSING");
  }

  @Test
  void pieceThatCannotBePlayedIsNotAdded() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Path file = written(LAKE);

    HttpResponse<String> scale = changed("scale", "tonic=C&kind=major&octaves=5");
    assertThat(scale.statusCode()).isEqualTo(400);
    assertThat(scale.body()).contains("The viola has at most 4 octaves of C major");
    assertThat(changed("excerpt", "music=" + choice("demo.musicxml") + "&measures=900").body())
        .contains("900");
    assertThat(changed("excerpt", "music=none").body()).contains("Choose a lesson or a score.");
    assertThat(changed("settings", "title=&instrument=viola").body())
        .contains("Give the sheet a name");
    assertThat(changed("settings", "title=L&instrument=viola&notes=many").body())
        .contains("'many' is not a number of notes");
    assertThat(changed("ask", "ask=").body()).contains("Choose what to show.");
    assertThat(file).hasContent(LAKE);
  }

  @Test
  void sheetChangedElsewhereIsShownAndNotReplaced() throws Exception {
    Path file = written(LAKE);
    String address = address();
    String seen = found(SEEN, visitor.get(address).body(), 1);
    Files.writeString(file, LAKE + "positions: 3=12\n");

    String answer =
        visitor.post(address + "/settings", "seen=" + seen + "&title=X&instrument=viola").body();

    assertThat(answer).contains("was changed in another window", "id=\"settings\"", "value=\"12\"");
    assertThat(file).hasContent(LAKE + "positions: 3=12");
  }

  @Test
  void differentNumbersOfNotesAndKeysOfOthersStay() throws Exception {
    Path file = written(LAKE + "positions: [half, 1=4, 3]\ncounted: in-one-piece\n");
    assertThat(visitor.get(address()).body()).contains("1st (4 notes)", "3rd (8 notes)");

    changed(
        "settings",
        "title=Lake&instrument=viola&counted=in-one-piece&positions-1=on&positions-2=on&positions-8=on&notes=");

    assertThat(file).hasContent(LAKE + "positions: [half, 1=4, 4]\ncounted: in-one-piece");
  }

  @Test
  void studentOfTheSheetIsPlannedFor() throws Exception {
    Files.createDirectories(folder.resolve("students"));
    Files.writeString(
        folder.resolve("students/imke.yaml"),
        "instrument: viola\npreset: beginner\npositions: 1\n");
    Path file = written(LAKE + "scales: [{scale: D major}]\n");

    changed("settings", "title=Lake&instrument=viola&student=imke&notes=8");

    assertThat(file).content().contains("student: imke");
    assertThat(visitor.get(address()).body()).contains("<option value=\"imke\" selected>Imke");
    assertThat(plans()).contains("Planned for Imke, viola.");
  }

  @Test
  void otherFilesAreNotSheets() throws Exception {
    Files.writeString(folder.resolve("imke.yaml"), "instrument: viola\npositions: 1\n");
    Files.writeString(folder.resolve("mill.yaml"), "score: mill.musicxml\n");
    written(LAKE + "positions: fist\n");

    assertThat(visitor.get("/audition").body())
        .contains("lake.yaml, line 3: 'fist' is not a position")
        .doesNotContain("imke", "mill", "href=\"/audition/");
  }
}
