package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scales are shown with their fingerings, kept, and added to audition sheets. */
class ScalesTest {
  private static final String D = "tonic=D&kind=major&octaves=1&instrument=viola";
  private static final Pattern SHEET = Pattern.compile("<option value=\"([\\w-]{24})\">Lake");
  private static final Pattern STUDENT = Pattern.compile("<option value=\"([\\w-]{24})\">Imke");

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

  private String found(Pattern pattern) throws Exception {
    String page = visitor.get("/scales").body();
    Matcher matcher = pattern.matcher(page);
    assertThat(matcher.find()).as(page).isTrue();
    return matcher.group(1);
  }

  @Test
  void easiestFingeringIsDrawnAndTheOthersAreListed() throws Exception {
    assertThat(visitor.get("/scales").body())
        .contains("harmonic minor", "F♯", "in broken thirds", "any player");

    assertThat(visitor.get("/scales/ways?" + D).body())
        .contains("<h2>D major, 1 octave</h2>", "<svg", "Planned for any player, viola.")
        .contains(
            "value=\"\" checked> <strong>Easiest, from D3", "3rd position throughout, from D4");
    assertThat(visitor.get("/scales/ways?" + D + "&way=allow%3D3").body())
        .contains("value=\"allow=3\" checked");
    assertThat(visitor.get("/scales/ways?" + D.replace("octaves=1", "octaves=3")).body())
        .contains("Begins in 1st position, from D3");
  }

  @Test
  void whatCannotBePlayedIsSaid() throws Exception {
    assertThat(visitor.get("/scales/ways?" + D.replace("octaves=1", "octaves=5")).body())
        .contains("at most 4 octaves of D major");
    assertThat(visitor.get("/scales/ways?tonic=G%23&kind=major&octaves=1&instrument=viola").body())
        .contains("more than seven sharps");
    assertThat(visitor.get("/scales/ways?" + D + "&from=E4").body()).contains("start on D4");
    assertThat(visitor.get("/scales/ways?" + D + "&tempo=fast").statusCode()).isEqualTo(400);
  }

  @Test
  void keptScaleIsAScoreWithFingersAndALessonThatOpensWithThem() throws Exception {
    String kept = visitor.post("/scales/keep", D + "&way=allow%3D3").body();

    assertThat(kept).contains("Kept as D major 1 octave 3rd position.musicxml");
    assertThat(folder.resolve("D major 1 octave 3rd position.musicxml"))
        .content()
        .contains("<fingering>2</fingering>");
    Path lesson = folder.resolve("D major 1 octave 3rd position.yaml");
    assertThat(lesson).content().contains("allow: 3");
    assertThat(Session.of("plan", "--lesson", lesson).succeeded().out()).contains("3rd");
    Matcher address = Pattern.compile("href=\"(/open/[\\w-]{24})\"").matcher(kept);
    assertThat(address.find()).isTrue();
    assertThat(visitor.get(address.group(1)).statusCode()).isEqualTo(200);
    assertThat(visitor.get(address.group(1) + "/plans").body()).contains("mine");

    String before = Files.readString(lesson);
    assertThat(visitor.post("/scales/keep", D + "&way=allow%3D3").body())
        .contains("3rd position 2.musicxml");
    assertThat(lesson).hasContent(before);
  }

  @Test
  void scaleIsAddedToASheetOfItsInstrument() throws Exception {
    Path file = Files.writeString(folder.resolve("lake.yaml"), "title: Lake\ninstrument: viola\n");
    String sheet = "&sheet=" + found(SHEET);

    assertThat(visitor.post("/scales/add", D + "&way=allow%3D3&slur=4&even=yes" + sheet).body())
        .contains("D major, 1 octave is on the sheet ‘Lake’.");
    assertThat(file)
        .hasContent(
            """
            title: Lake
            instrument: viola
            scales:
              - scale: D major
                octaves: 1
                slur: 4
                even: yes
                allow: 3
            """);
    assertThat(Session.of("audition", file).succeeded().out()).contains("3rd position throughout");
    assertThat(visitor.post("/scales/add", D.replace("viola", "cello") + sheet).body())
        .contains("The sheet ‘Lake’ is for the viola");
    assertThat(visitor.post("/scales/add", D).body()).contains("Choose the audition sheet first.");
    assertThat(visitor.get("/scales?sheet=" + found(SHEET)).body())
        .contains("<option value=\"viola\" selected>");
  }

  @Test
  void scaleIsPlannedForAStudent() throws Exception {
    Files.createDirectories(folder.resolve("students"));
    Files.writeString(
        folder.resolve("students/imke.yaml"),
        "instrument: viola\npreset: beginner\npositions: 1\n");
    String student = "&student=" + found(STUDENT);

    assertThat(visitor.get("/scales/ways?" + D + "&way=allow%3D3" + student).body())
        .contains("Planned for Imke, viola.", "3rd position");
    assertThat(visitor.get("/scales/ways?" + D.replace("viola", "cello") + student).body())
        .contains("Imke does not play the cello");
    visitor.post("/scales/keep", D + student);
    assertThat(folder.resolve("D major 1 octave.yaml")).content().contains("student: imke");
  }
}
