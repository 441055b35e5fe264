package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** A teacher who has more pages open than the program keeps in memory works on in each of them. */
class ManyLessonsTest extends ServedFolder {
  private static final int PAGES = 14;

  private String dropped(String name) throws Exception {
    HttpResponse<String> answer = visitor.drop(name, Files.readAllBytes(Session.DEMO));
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private void openMore() throws Exception {
    for (int i = 1; i < PAGES; i++) {
      dropped("other" + i + ".musicxml");
    }
  }

  @Test
  void aSavedLessonOfTheFirstPageIsChangedAfterManyOthers() throws Exception {
    String first = dropped("demo.musicxml");
    visitor.get(first + "/plans");
    visitor.post(first + "/choice", "revision=0&measures=17-24");
    openMore();

    HttpResponse<String> answer = visitor.post(first + "/plan", "revision=1&plan=third");

    assertThat(answer.statusCode()).isEqualTo(Reply.DONE);
    assertThat(answer.body()).contains("measures 17–24").doesNotContain("another window");
    assertThat(folder.resolve("demo.yaml")).content().contains("measures: 17-24", "choose: third");
  }

  @Test
  void aScoreThatNobodyHasChangedIsShownAfterManyOthers() throws Exception {
    String first = dropped("demo.musicxml");
    openMore();

    assertThat(visitor.get(first + "/plans").body()).contains("Lanterns on the Millrace");
    assertThat(visitor.post(first + "/choice", "revision=0&measures=17-24").statusCode())
        .isEqualTo(Reply.DONE);
  }

  @Test
  void aCopyThatWasNeverSavedIsNotTakenForItsScore() throws Exception {
    String first = dropped("demo.musicxml");
    visitor.get(first + "/plans");
    visitor.post(first + "/choice", "revision=0&measures=17-24");
    String copy =
        visitor
            .post(first + "/copy", "revision=1")
            .headers()
            .firstValue("HX-Redirect")
            .orElseThrow();
    openMore();

    assertThat(visitor.get(copy).statusCode()).isEqualTo(Reply.UNKNOWN);
    assertThat(visitor.get(copy).statusCode()).isEqualTo(Reply.UNKNOWN);
  }
}
