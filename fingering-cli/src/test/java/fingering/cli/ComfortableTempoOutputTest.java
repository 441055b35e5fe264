package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.entries;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The output of the highest comfortable tempo. */
final class ComfortableTempoOutputTest {
  private static final Pattern UP_TO = Pattern.compile("up to quarter = (\\d+) \\(planned: 96\\)");

  @TempDir Path folder;

  private static String text(Session session) {
    return session.succeeded().out().replaceAll("\\s+", " ");
  }

  /** One command line: an array counts as its words. */
  private static Object[] words(Object... parts) {
    return Stream.of(parts)
        .flatMap(part -> part instanceof String[] words ? Stream.of(words) : Stream.of(part))
        .toArray();
  }

  private static int figure(String text) {
    Matcher matcher = UP_TO.matcher(text);
    assertThat(matcher.find()).as(text).isTrue();
    return Integer.parseInt(matcher.group(1));
  }

  @Test
  void everyPlanHasAComfortableTempoAndThreeLimits() {
    String text = text(Session.of("compare", DEMO, "--with-second", "--costs"));
    String section = text.substring(text.indexOf("Comfortable tempo"), text.indexOf("Next"));
    assertThat(section).contains("1st position: up to", "3rd position: up to", "1st to 3rd: up to");
    for (String plan : section.split(": up to ", -1)) {
      assertThat(plan.split("m\\. \\d", -1).length - 1).isIn(0, 3);
    }
  }

  @Test
  void sameLimitOfAllPlansIsNamed() {
    String same = "with every plan (planned: 96); measures 13–14 set the limit";
    String[] from = {"--measures", "13-32"};
    String[] two = {"--plan", "low=allow 1", "--plan", "high=show 3=8"};
    assertThat(text(Session.of(words("compare", DEMO, from, two)))).contains(same);
    assertThat(text(Session.of(words("compare", DEMO, from)))).contains(same);
    assertThat(Session.of(words("compare", DEMO, from, "--format", "html")).succeeded().out())
        .contains(same);
    assertThat(text(Session.of("compare", DEMO))).doesNotContain("with every plan");
    assertThat(text(Session.of("plan", DEMO))).doesNotContain("with every plan");
    assertThat(text(Session.of("compare", DEMO, "--preset", "advanced")))
        .doesNotContain("with every plan");
  }

  @Test
  void fasterPlayerHasAHigherTempo() {
    List<Integer> figures =
        List.of("beginner", "intermediate", "common-practice").stream()
            .map(preset -> figure(text(Session.of("plan", DEMO, "--preset", preset))))
            .toList();
    assertThat(figures).isSorted().doesNotHaveDuplicates();
    assertThat(text(Session.of("plan", DEMO, "--preset", "advanced")))
        .contains("comfortable well above quarter = 96.");
  }

  @Test
  void levelCanBeChosenSeparatelyFromTheRules() {
    JsonNode quick = Session.of("plan", DEMO, "--level", "advanced", "--format", "json").json();
    JsonNode usual = Session.of("plan", DEMO, "--format", "json").json();
    assertThat(quick.get("notes")).isEqualTo(usual.get("notes"));
    assertThat(quick.at("/comfortableTempo/level").asText()).isEqualTo("advanced");
    assertThat(quick.at("/comfortableTempo/factor").asDouble())
        .isGreaterThan(usual.at("/comfortableTempo/factor").asDouble());
    Session unknown = Session.of("plan", DEMO, "--level", "wizard");
    assertThat(unknown.code()).isEqualTo(2);
    assertThat(unknown.err()).contains("there is no level 'wizard'").hasLineCount(1);
  }

  @Test
  void adviceIsPrintedIfThePlannedTempoIsTooFast() {
    String care = "Raise the tempo in small steps.";
    assertThat(text(Session.of("plan", DEMO, "--tempo", "quarter=200"))).contains(care);
    assertThat(text(Session.of("plan", DEMO, "--tempo", "quarter=40"))).doesNotContain(care);
  }

  /** Notes planned at half the tempo have the same comfortable tempo, apart from rounding. */
  @Test
  void jsonHasTheSameTempoWithItsLimits() {
    JsonNode plan =
        Session.of("plan", DEMO, "--choose", "first", "--tempo", "half=24", "--format", "json")
            .json();
    JsonNode tempo = plan.get("comfortableTempo");
    assertThat(tempo.get("level").asText()).isEqualTo("common-practice");
    assertThat(tempo.get("marked").asText()).isEqualTo("half=24");
    double factor = tempo.get("factor").asDouble();
    int figure = Integer.parseInt(tempo.get("tempo").asText().replace("half=", ""));
    assertThat((double) figure).isBetween(24 * factor - 1, 24 * factor + 0.1);
    assertThat(entries(tempo.get("limits"))).hasSize(3);
    double before = 0;
    for (JsonNode limit : entries(tempo.get("limits"))) {
      JsonNode note = plan.get("notes").get(limit.get("note").asInt());
      assertThat(note.get("measure")).isEqualTo(limit.get("measure"));
      assertThat(limit.get("says").asText()).isNotBlank();
      assertThat(limit.get("cause").asText()).matches("[a-z-]+");
      double ratio = limit.get("free").asDouble() / limit.get("needed").asDouble();
      assertThat(limit.get("factor").asDouble()).isBetween(ratio - 0.0011, ratio);
      assertThat(limit.get("factor").asDouble()).isGreaterThanOrEqualTo(before);
      before = limit.get("factor").asDouble();
    }
    assertThat(tempo.at("/limits/0/factor")).isEqualTo(tempo.get("factor"));
  }

  @Test
  void singleNoteIsComfortableAtAnyTempo() throws IOException {
    Path score = TinyScore.titled("One").part("Viola", "A4").in(folder);
    assertThat(text(Session.of("plan", score))).contains("It is comfortable at any tempo.");
    JsonNode tempo = Session.of("plan", score, "--format", "json").json().get("comfortableTempo");
    assertThat(tempo.has("tempo")).isFalse();
    assertThat(tempo.has("factor")).isFalse();
    assertThat(tempo.get("limits")).isEmpty();
  }
}
