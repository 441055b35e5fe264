package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.hash.Hashing;
import fingering.cli.Session;
import fingering.cli.advice.LessonAdviser;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The printed sheet and the saved part of a lesson. */
class SheetTest {
  @TempDir Path folder;

  private LocalServer server;
  private Visitor visitor;
  private String lesson;

  @BeforeEach
  void start() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.writeString(
        folder.resolve("lantern.yaml"),
        "score: demo.musicxml\npart: 1\nmeasures: 17-24\nplans: [{name: low, choose: first}]\n");
    server = LocalServer.start(folder, new LessonAdviser(), new Visitor.SetClock());
    visitor = new Visitor(server).at(server.address());
    lesson = visitor.get("/").body().replaceFirst("(?s).*(/open/[\\w-]+)\">lantern.*", "$1");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String saved(String form) throws Exception {
    HttpResponse<String> answer = visitor.post(lesson + "/part", form);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return answer.body();
  }

  private static String link(String answer) {
    return answer.replaceFirst("(?s).*href=\"([^\"]+)\".*", "$1");
  }

  @Test
  void sheetMayUseItsOwnStyleAndNoOther() throws Exception {
    HttpResponse<String> sheet = visitor.get(lesson + "/handout");
    String policy = sheet.headers().firstValue("Content-Security-Policy").orElseThrow();
    String style = sheet.body().replaceFirst("(?s).*<style>(.*)</style>.*", "$1");
    String hash =
        Base64.getEncoder()
            .encodeToString(Hashing.sha256().hashString(style, StandardCharsets.UTF_8).asBytes());

    assertThat(policy)
        .isEqualTo(
            Gate.HEADERS.get("Content-Security-Policy") + "; style-src 'sha256-" + hash + "'");
    assertThat(sheet.body())
        .doesNotContainPattern("\\sstyle=|\\son[a-z]+=|javascript:|https?://|<script(?! src=\"/)")
        .contains("fingers: 1st position", "size:A4", "<script src=\"/print.js\"");
    assertThat(visitor.get(lesson + "/handout?paper=letter").body()).contains("size:letter");
    assertThat(visitor.get("/print.js").body()).contains("window.print()");
  }

  @Test
  void sheetIsThatOfTheCommand() throws Exception {
    Session.of(
            "handout",
            "--lesson",
            folder.resolve("lantern.yaml"),
            "--output",
            folder.resolve("s.html"))
        .succeeded();
    assertThat(music(visitor.get(lesson + "/handout").body()))
        .isEqualTo(music(Files.readString(folder.resolve("s.html"))));
  }

  private static String music(String page) {
    return page.replaceFirst("(?s).*<main>(.*)</main>.*", "$1");
  }

  @Test
  void savedPartIsTheFileThatTheCommandWritesAndTheDownload() throws Exception {
    String answer = saved("extent=excerpt&fingers=all&words=yes");
    Path file = folder.resolve("lantern-excerpt.musicxml");
    assertThat(answer).contains("Saved as lantern-excerpt.musicxml in the folder " + folder);

    HttpResponse<String> download = visitor.get(link(answer));
    assertThat(download.body().getBytes(StandardCharsets.UTF_8))
        .isEqualTo(Files.readAllBytes(file));
    assertThat(download.headers().firstValue("Content-Disposition").orElseThrow())
        .startsWith("attachment; filename=\"lantern-excerpt.musicxml\"");

    Path typed = folder.resolve("typed.musicxml");
    Session.of(
            "plan",
            "--lesson",
            folder.resolve("lantern.yaml"),
            "--only",
            "excerpt",
            "--write",
            typed)
        .succeeded();
    assertThat(file).hasSameTextualContentAs(typed);
  }

  @Test
  void eachChoiceChangesTheFile() throws Exception {
    saved("extent=part&fingers=all");
    saved("extent=score&fingers=sparing&words=yes");
    String part = Files.readString(folder.resolve("lantern-part.musicxml"));
    String score = Files.readString(folder.resolve("lantern-score.musicxml"));
    assertThat(part).contains("<string>").doesNotContain("<part id=\"P2\">");
    assertThat(score).doesNotContain("<string>");
    assertThat(count(score)).isPositive().isLessThan(count(part));
  }

  private static int count(String score) {
    return score.split("<fingering", -1).length - 1;
  }

  @Test
  void copyOfTheProgramIsReplacedAndAnyOtherFileStays() throws Exception {
    saved("extent=part&fingers=sparing&words=yes");
    assertThat(saved("extent=part&fingers=all&words=yes")).contains("lantern-part.musicxml");
    assertThat(folder.resolve("lantern-part-2.musicxml")).doesNotExist();

    Path mine = folder.resolve("lantern-part.musicxml");
    String edited =
        Files.readString(mine).replace("</score-partwise>", "<!-- mine --></score-partwise>");
    Files.writeString(mine, edited);
    assertThat(saved("extent=part&fingers=all&words=yes")).contains("lantern-part-2.musicxml");
    assertThat(mine).hasContent(edited);
  }

  @Test
  void scoreOfTheLessonIsNeverReplaced() throws Exception {
    saved("extent=part&fingers=all&words=yes");
    String marked = Files.readString(folder.resolve("lantern-part.musicxml"));
    Files.writeString(folder.resolve("lantern.yaml"), "score: lantern-part.musicxml\n");
    assertThat(saved("extent=part&fingers=sparing&words=yes")).contains("lantern-part-2.musicxml");
    assertThat(folder.resolve("lantern-part.musicxml")).hasContent(marked);
  }

  @Test
  void onlyWhatWasSavedCanBeDownloaded() throws Exception {
    assertThat(visitor.get(lesson + "/part?file=../demo.musicxml").statusCode()).isEqualTo(400);
    String link = link(saved("extent=part"));
    Files.delete(folder.resolve("lantern-part.musicxml"));
    assertThat(visitor.get(link).body()).contains("no longer there: save the part again");
  }

  @Test
  void droppedScoreIsKeptInTheFolderWithItsPart() throws Exception {
    lesson =
        visitor
            .drop(
                "tune.abc", "X:1\nT:Second\nK:D clef=alto\nDEFG|".getBytes(StandardCharsets.UTF_8))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    assertThat(saved("extent=part&words=yes")).contains("tune-part.musicxml");
    assertThat(folder.resolve("tune.abc")).exists();
    assertThat(folder.resolve("tune-part.musicxml")).content().contains("<fingering");
  }
}
