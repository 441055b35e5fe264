package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import fingering.lesson.StoredLesson;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import org.junit.jupiter.api.Test;

/**
 * What of a lesson is on disk: what the page saves and reads again, and what others change there.
 */
class LessonOnDiskTest extends OpenedDemo {
  @Test
  void undoGoesOnAfterARestart() throws Exception {
    post("fix", "moment", "12", "way", other(12));
    post("plan", "plan", "third");
    post("undo");
    stopServing();
    serve();
    address = link("demo.yaml");
    revision = "0";

    post("undo");
    assertThat(saved()).doesNotContain("mine");
    post("redo");
    assertThat(saved()).contains("name: mine");
    post("redo");
    assertThat(saved()).contains("choose: third");
  }

  @Test
  void historyThatIsDamagedCostsNothing() throws Exception {
    post("plan", "plan", "third");
    stopServing();
    Files.writeString(folder.resolve(".undo").resolve("demo.yaml"), "--- # past\nnot a lesson");
    serve();
    address = link("demo.yaml");

    assertThat(visitor.get(address + "/plans").body()).contains("value=\"third\" checked");
  }

  @Test
  void droppedScoreIsCopiedWithItsFirstChangeAndNothingIsReplaced() throws Exception {
    assertThat(files()).isEmpty();
    Files.writeString(folder.resolve("demo.yaml"), "another file\n");
    Files.writeString(folder.resolve("demo.musicxml"), "another score\n");
    post("plan", "plan", "first");

    assertThat(files())
        .contains("demo.yaml", "demo.musicxml", "demo-2.musicxml")
        .anyMatch(name -> name.matches("demo-2(-2)?\\.yaml"));
    assertThat(folder.resolve("demo.yaml")).hasContent("another file\n");
    assertThat(folder.resolve("demo.musicxml")).hasContent("another score\n");
    assertThat(folder.resolve("demo-2.musicxml")).hasSameBinaryContentAs(Session.DEMO);
    assertThat(StoredLesson.read(folder.resolve("demo-2.yaml")).lesson().score())
        .isEqualTo("demo-2.musicxml");
  }

  @Test
  void savedLessonIsTheSameOnTheCommandLine() throws Exception {
    post("fix", "moment", "12", "way", other(12));
    String plan = Session.of("plan", "--lesson", folder.resolve("demo.yaml")).succeeded().out();
    String line = post("free", "moment", "999").body();

    assertThat(line).isNotEmpty();
    assertThat(plan).contains("4: II 2 0 ↓half 4");
  }

  @Test
  void lessonEditedByHandWinsAndThePageSaysSo() throws Exception {
    post("plan", "plan", "first");
    Files.writeString(folder.resolve("demo.yaml"), saved() + "measures: 1-8\n");
    String answer = post("plan", "plan", "third").body();

    assertThat(answer).contains("demo.yaml was changed outside this page", "measures 1–8");
    assertThat(saved()).contains("measures: 1-8", "choose: first");
    post("undo");
    assertThat(saved()).doesNotContain("measures:");
  }

  @Test
  void partKeepsTheNameThatItHasInTheFile() throws Exception {
    post("plan", "plan", "first");
    assertThat(saved()).contains("part: Viola\n");
    Files.writeString(
        folder.resolve("demo.yaml"), saved().replace("part: Viola", "part: vio # the low one"));
    post("plan", "plan", "third");
    post("plan", "plan", "third");
    assertThat(saved()).contains("part: vio # the low one", "choose: third");

    Path score = folder.resolve("demo.musicxml");
    Files.writeString(score, Files.readString(score).replace(">Viola<", ">Alto<"));
    post("plan", "plan", "first");
    post("plan", "plan", "first");
    assertThat(saved()).contains("part: Alto", "choose: first");
  }

  @Test
  void lessonWithAMistakeIsNotReplaced() throws Exception {
    post("plan", "plan", "first");
    Files.writeString(folder.resolve("demo.yaml"), "score: demo.musicxml\nplan: x\n");
    HttpResponse<String> answer = post("plan", "plan", "third");

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("demo.yaml");
    assertThat(saved()).isEqualTo("score: demo.musicxml\nplan: x\n");
  }

  @Test
  void deletedLessonIsSavedAgain() throws Exception {
    post("plan", "plan", "first");
    Files.delete(folder.resolve("demo.yaml"));
    post("plan", "plan", "third");

    assertThat(saved()).contains("choose: third");
  }

  @Test
  void scoreChangedOnDiskIsReadAgain() throws Exception {
    post("plan", "plan", "first");
    Path score = folder.resolve("demo.musicxml");
    Files.writeString(
        score, Files.readString(score).replace("Lanterns on the Millrace", "Lanterns Again"));

    assertThat(visitor.get(address + "/plans").body()).contains("Lanterns Again");
  }

  @Test
  void lessonThatIsOpenedTwiceIsOneLesson() throws Exception {
    post("plan", "plan", "first");
    assertThat(
            REVISION
                .matcher(visitor.get(link("demo.yaml")).body())
                .results()
                .map(MatchResult::group)
                .findFirst())
        .contains("id=\"revision\" value=\"1\"");
  }
}
