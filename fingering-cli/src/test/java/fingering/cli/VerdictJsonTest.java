package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The verdict, and the price of each demand, in the JSON of plans. */
class VerdictJsonTest {
  private static String words(JsonNode json) {
    return Session.entries(json.at("/verdict/sentences")).stream()
        .map(JsonNode::asText)
        .collect(Collectors.joining(" "));
  }

  @Test
  void verdictIsThatOfTheText() {
    for (String command : new String[] {"compare", "plan"}) {
      JsonNode json = Session.of(command, DEMO, "--format", "json").json();
      String text = Session.of(command, DEMO).succeeded().out().replaceAll("\\s+", " ");
      assertThat(text).contains(words(json));
    }
  }

  @Test
  void verdictNamesThePlanTheRivalAndTheReason() {
    JsonNode compared = Session.of("compare", DEMO, "--format", "json").json();
    JsonNode verdict = compared.get("verdict");
    assertThat(Session.texts(compared.get("plans"), "name"))
        .contains(verdict.get("plan").asText(), verdict.get("rival").asText());
    assertThat(verdict.get("reason").asText())
        .isEqualTo(verdict.get("reason").asText().toLowerCase(Locale.ROOT))
        .doesNotContain("_");
    JsonNode alone = Session.of("plan", DEMO, "--format", "json").json().get("verdict");
    assertThat(alone.get("reason").asText()).isEqualTo("only");
    assertThat(alone.has("rival")).isFalse();
  }

  // Each price is the difference of two totals that 'plan' prints.
  @Test
  void priceOfADemandIsTheDifferenceOfTwoPlans() {
    JsonNode both = plan("--show", "2=8", "--avoid", "open-strings");
    JsonNode demand =
        Session.entries(both.get("demands")).stream()
            .filter(one -> one.get("demand").asText().contains("2nd position"))
            .findFirst()
            .orElseThrow();
    assertThat(demand.get("alone").asLong())
        .isEqualTo(total(plan("--show", "2=8")) - total(plan()));
    assertThat(demand.get("dropping").asLong())
        .isEqualTo(total(both) - total(plan("--avoid", "open-strings")));
  }

  @Test
  void auditionHasThePricesToo() {
    Path hearing = DEMO.resolveSibling("hearing.yaml");
    JsonNode answer = Session.of("audition", hearing, "--format", "json").json();
    JsonNode third = answer.at("/pieces/2");
    assertThat(third.at("/plan/demands/0/dropping").asLong())
        .isEqualTo(third.get("extra").asLong())
        .isPositive();
  }

  private static long total(JsonNode plan) {
    return plan.at("/cost/total").asLong();
  }

  private static JsonNode plan(Object... more) {
    Object[] words = new Object[more.length + 4];
    words[0] = "plan";
    words[1] = DEMO;
    words[2] = "--format";
    words[3] = "json";
    System.arraycopy(more, 0, words, 4, more.length);
    return Session.of(words).json();
  }
}
