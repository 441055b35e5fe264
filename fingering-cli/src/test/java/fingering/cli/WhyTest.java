package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fingering.cli.terminal.Screen;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class WhyTest {
  @TempDir Path folder;

  @Test
  void whyIsAnsweredInSentences() {
    Session why = Session.of("plan", DEMO, "--why", "3.1.5").succeeded();

    assertThat(why.lines().get(0)).isEqualTo("Lanterns on the Millrace");
    assertThat(why.out())
        .contains("In measure 3, beat 1.5, 'free choice' plays ")
        .containsPattern("The next best fingering is [^:]+: the\\s+best")
        .contains("Other fingerings: ");
    int columns = Math.max(80, Screen.columns());
    assertThat(why.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(columns));
  }

  @ParameterizedTest
  @ValueSource(strings = {"free", "first", "third", "second"})
  void reasonsAddUpForEveryPlan(String choice) {
    JsonNode plan =
        Session.of("plan", DEMO, "--choose", choice, "--why", "3.1.5", "--format", "json").json();

    JsonNode why = plan.get("why");
    assertThat(why.get("measure").asText()).isEqualTo("3");
    assertThat(why.get("beat").asText()).isEqualTo("1.5");
    assertThat(plan.get("notes").get(why.at("/notes/0").asInt()).get("measure").asText())
        .isEqualTo("3");
    assertThat(entries(why.get("alternatives"))).isNotEmpty();
    for (JsonNode other : entries(why.get("alternatives"))) {
      long more = entries(other.get("rules")).stream().mapToLong(r -> r.get("more").asLong()).sum();
      assertThat(other.get("more").asLong()).isEqualTo(more);
      assertThat(other.get("total").asLong() - plan.at("/cost/total").asLong()).isEqualTo(more);
      assertThat(other.at("/taken/0/note")).isEqualTo(why.at("/notes/0"));
    }
  }

  @Test
  void noteWithOneFingeringHasNoAlternative() throws IOException {
    Path score = TinyScore.titled("Low").part("Viola", "C3", "D3").in(folder);

    Session why = Session.of("plan", score, "--why", "1.1").succeeded();

    assertThat(why.out())
        .contains("plays C3 open on IV.", "The plan allows no other fingering here");
    JsonNode json = Session.of("plan", score, "--why", "1.1", "--format", "json").json();
    assertThat(entries(json.at("/why/alternatives"))).isEmpty();
  }

  @Test
  void missingMomentIsRejectedWithTheNearestAndNothingIsWritten() throws IOException {
    Path score = TinyScore.titled("Low").part("Viola", "C3", "D3").in(folder);
    Path marked = folder.resolve("marked.musicxml");

    String err = Session.of("plan", score, "--why", "7.2", "--write", marked).refused(2).err();

    assertThat(err).contains("measure 7, beat 2; the nearest note begins in measure 2, beat 1.");
    assertThat(marked).doesNotExist();
  }
}
